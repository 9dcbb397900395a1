import type { Unit } from '../../base/unit.ts';
import type { Cell, Format, Question } from '../../workbook/document.ts';
import { readEntry } from '../../workbook/entry.ts';
import { questionFaults } from '../../workbook/question.ts';
import { showValue } from '../../workbook/show.ts';
import { wordCommandFault, wordQuestionFault } from '../../workbook/wording.ts';

/** A question as it is being written: every field as typed. */
export interface QuestionDraft {
  readonly asks: string;
  readonly least: string;
  readonly most: string;
  readonly why: string;
  readonly help: string;
  /** One a line. */
  readonly choices: string;
  readonly usual: string;
  readonly mayBeBlank: boolean;
}

export function draftOf(
  question: Question | null,
  unit: Unit | undefined,
  format: Format | undefined,
): QuestionDraft {
  const say = (value: number | string | boolean | undefined) =>
    value === undefined ? '' : fullText(value, unit, format);
  return {
    asks: question?.asks ?? '',
    least: say(question?.least),
    most: say(question?.most),
    why: question?.why ?? '',
    help: question?.help ?? '',
    choices: (question?.choices ?? []).join('\n'),
    usual: say(question?.usual),
    mayBeBlank: question?.mayBeBlank ?? false,
  };
}

/** The question that was written, and everything that keeps it from being asked. */
export function questionFrom(
  draft: QuestionDraft,
  unit: Unit | undefined,
  format: Format | undefined,
): { readonly question: Question; readonly faults: readonly string[] } {
  const faults: string[] = [];
  const read = (name: string, typed: string): Cell['content'] => {
    const entry = readEntry(typed, blank(unit, format));
    if (entry.ok) return entry.value.content;
    faults.push(`${name}: ${wordCommandFault(entry.fault)}`);
    return null;
  };
  const choices = draft.choices
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const limit = (name: string, typed: string): number | undefined => {
    const content = read(name, typed);
    if (typeof content === 'number') return content;
    if (content === null) return undefined;
    // Without a unit nothing is read as a number; that there is none is told with the question.
    return Number(content) || 0;
  };
  const least = limit('Least', draft.least);
  const most = limit('Most', draft.most);
  const usual = choices.length > 0 ? draft.usual.trim() || null : read('Usual value', draft.usual);
  const question: Question = {
    asks: draft.asks.trim(),
    ...(least === undefined ? {} : { least }),
    ...(most === undefined ? {} : { most }),
    ...(draft.why.trim() === '' ? {} : { why: draft.why.trim() }),
    ...(draft.help.trim() === '' ? {} : { help: draft.help.trim() }),
    ...(choices.length === 0 ? {} : { choices }),
    ...(usual === null || typeof usual === 'object' ? {} : { usual }),
    ...(draft.mayBeBlank ? { mayBeBlank: true } : {}),
  };
  const unsound = questionFaults(question, unit).map(wordQuestionFault);
  return { question, faults: [...faults, ...unsound] };
}

function blank(unit: Unit | undefined, format: Format | undefined): Cell {
  return { content: null, role: 'given', ...(unit ? { unit } : {}), ...(format ? { format } : {}) };
}

/** As it is shown where that reads back to the very same, else in full. */
export function fullText(
  value: number | string | boolean,
  unit: Unit | undefined,
  format: Format | undefined,
): string {
  const { text } = showValue(value, unit, format);
  if (typeof value !== 'number') return text;
  const entry = readEntry(text, blank(unit, format));
  if (entry.ok && entry.value.content === value) return text;
  return unit === 'in' ? `${value}″` : unit === 'ft' ? `${value}′` : String(value);
}
