import { done, failed, type Outcome } from '../base/outcome.ts';
import { type Unit, units } from '../base/unit.ts';
import type { TapeFault } from '../trade/tape/fault.ts';
import { readTape } from '../trade/tape/read.ts';
import { type Cell, type Content, type Format, isFormula, type Question } from './document.ts';

/** What a person typed, read by the cell's unit. */
export interface Entry {
  readonly content: Content;
  /** The text as typed, where the content alone would not give it back. */
  readonly typed?: string;
  /** Set when an entry brings its own unit to a cell that had none: `12' 4"` in an empty cell. */
  readonly unit?: Unit;
}

/** Why an entry is not taken; what was typed stays in the editor. Wording: `wording.ts`. */
export type EntryFault =
  | { readonly code: 'not_a_length'; readonly fault: TapeFault; readonly typed: string }
  | { readonly code: 'not_a_number'; readonly typed: string; readonly unit: Unit }
  | { readonly code: 'not_whole'; readonly got: number; readonly unit: Unit }
  | {
      readonly code: 'out_of_range';
      readonly got: number;
      readonly question: Question;
      readonly unit: Unit | undefined;
      readonly format: Format | undefined;
    }
  | { readonly code: 'not_a_choice'; readonly typed: string; readonly choices: readonly string[] }
  | { readonly code: 'figured_cell' }
  | { readonly code: 'too_long'; readonly got: number; readonly most: number };

const longestText = 2000;

/** Reads what was typed into a cell (null: a cell nobody has set up). The formula itself is not checked here. */
export function readEntry(typed: string, cell: Cell | null): Outcome<Entry, EntryFault> {
  const text = typed.trim();
  if (text === '') return done({ content: null });
  if (text.startsWith('=')) return done({ content: { formula: text.slice(1).trim() } });
  // A formula in a given is an answer like any other, so another answer takes its place.
  if (cell && isFormula(cell.content) && cell.role !== 'given') return failed({ code: 'figured_cell' });
  if (text.length > longestText) return failed({ code: 'too_long', got: text.length, most: longestText });
  if (cell?.question?.choices) return readChoice(text, cell.question.choices);
  if (cell?.unit) return readMeasured(text, cell, cell.unit);
  return done(cell?.role === 'given' || cell?.role === 'heading' ? { content: text } : readFreely(text));
}

function readChoice(text: string, choices: readonly string[]): Outcome<Entry, EntryFault> {
  const wanted = text.toLowerCase();
  // The beginning of a choice is enough where only one begins so.
  const begun = choices.filter((one) => one.toLowerCase().startsWith(wanted));
  const found =
    choices.find((one) => one.toLowerCase() === wanted) ?? (begun.length === 1 ? begun[0] : undefined);
  return found === undefined
    ? failed({ code: 'not_a_choice', typed: text, choices })
    : done({ content: found });
}

function readMeasured(text: string, cell: Cell, unit: Unit): Outcome<Entry, EntryFault> {
  const number = readNumber(text, unit, cell.format);
  if (!number.ok) return number;
  const content = number.value;
  const fault = numberFault(content, cell, unit);
  if (fault) return failed(fault);
  return done(String(content) === text ? { content } : { content, typed: text });
}

/** Why a number cannot stand in a cell of this unit and question; null when it can. */
function numberFault(got: number, { question, format }: Cell, unit: Unit): EntryFault | null {
  const wholeOnly = unit === 'count' || unit === 'gauge';
  if (wholeOnly && !Number.isInteger(got)) return { code: 'not_whole', got, unit };
  if (question && (got < (question.least ?? -Infinity) || got > (question.most ?? Infinity))) {
    return { code: 'out_of_range', got, question, unit, format };
  }
  return null;
}

/** Why what stands in a given could not have been typed there; null when it could. */
export function givenFault(cell: Cell): EntryFault | null {
  const { content, unit, question } = cell;
  if (content === null || isFormula(content)) return null;
  if (question?.choices && !question.choices.includes(String(content))) {
    return { code: 'not_a_choice', typed: String(content), choices: question.choices };
  }
  if (!unit || question?.choices) return null;
  return typeof content === 'number'
    ? numberFault(content, cell, unit)
    : { code: 'not_a_number', typed: String(content), unit };
}

function readNumber(written: string, unit: Unit, format: Format | undefined): Outcome<number, EntryFault> {
  const text = ungrouped(written);
  if (unit === 'in' || unit === 'ft') {
    const bare = format?.type === 'millimetres' ? 'mm' : format?.type === 'metres' ? 'm' : unit;
    const length = readTape(text, bare);
    if (!length.ok) return failed({ code: 'not_a_length', fault: length.fault, typed: written });
    return done(unit === 'ft' ? length.value / 12 : length.value);
  }
  const number = plainNumber(withoutMark(text, unit));
  if (number === null) return failed({ code: 'not_a_number', typed: written, unit });
  return done(unit === 'percent' ? number / 100 : number);
}

/** `12,345.5` → `12345.5`: a comma between thousands, as the page shows them. */
function ungrouped(text: string): string {
  return text.replace(/(?<![\d.,])\d{1,3}(,\d{3})+(?![\d,])/, (number) => number.replaceAll(',', ''));
}

/** A number may stand with the mark of its cell, as the page shows it: `$12`, `10 %`, `26 ga`. */
function withoutMark(text: string, unit: Unit): string {
  if (unit === 'money') return text.replace(/^([-+]?)\$\s*/, '$1');
  const { label } = units[unit];
  const isMarked = label !== '' && text.toLowerCase().endsWith(label.toLowerCase());
  return isMarked ? text.slice(0, -label.length).trimEnd() : text;
}

/** A cell nobody has set up takes what the entry looks like: a length with foot or inch marks, a number, yes or no, or text. */
function readFreely(text: string): Entry {
  for (const unit of ['money', 'percent'] as const) {
    const isMarked = unit === 'money' ? /^[-+]?\$/.test(text) : text.endsWith('%');
    const number = isMarked ? readNumber(text, unit, undefined) : null;
    if (number?.ok) return { content: number.value, typed: text, unit };
  }
  const whole = plainNumber(ungrouped(text));
  if (whole !== null && text.includes(',')) return { content: whole, typed: text };
  const number = plainNumber(text);
  if (number !== null)
    return String(number) === text ? { content: number } : { content: number, typed: text };
  if (/^(true|false)$/i.test(text)) return { content: text.toLowerCase() === 'true' };
  if (/[0-9½¼¾⅛⅜⅝⅞]\s*['′’"″”]/.test(text)) {
    const length = readTape(text, 'in');
    if (length.ok) return { content: length.value, typed: text, unit: 'in' };
  }
  return { content: text };
}

/** No number that a person means has more signs; what was typed is kept, and a file takes no more than 500. */
const longestNumber = 60;

function plainNumber(text: string): number | null {
  if (text.length > longestNumber || !/^[-+]?(\d+(\.\d*)?|\.\d+)(e[-+]?\d{1,3})?$/i.test(text)) return null;
  const number = Number(text);
  return Number.isFinite(number) ? number : null;
}
