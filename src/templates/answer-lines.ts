import { done, failed, type Outcome } from '../base/outcome.ts';
import type { Workbook } from '../workbook/document.ts';
import { type AnswerFault, answered } from './answers.ts';
import { placeIn } from './place.ts';
import { type AskedGiven, questionsOf } from './questions.ts';
import { wordAnswerFault } from './wording.ts';

/** Why one line of answers is not taken. */
export type AnswerLineFault =
  | AnswerFault
  | { readonly code: 'asked_of_several'; readonly places: readonly string[] }
  | { readonly code: 'answered_twice' }
  | { readonly code: 'too_many_fields'; readonly got: number };

export interface FaultOfLine {
  /** In the file, counted from 1; null where the file says nothing of the given. */
  readonly line: number | null;
  /** What the line begins with, or the place of the given that has no answer. */
  readonly about: string;
  readonly fault: AnswerLineFault;
}

/** Fills a template from lines of two fields: a place such as `Pieces!B4`, a question, or what the sheet calls the given,
 *  and its answer. All faults are told at once; a first line of headings is passed over. */
export function answeredByLines(
  template: Workbook,
  rows: readonly (readonly string[])[],
): Outcome<Workbook, readonly FaultOfLine[]> {
  const asked = questionsOf(template).flatMap((sheet) => sheet.asked);
  const faults: FaultOfLine[] = [];
  const answers = new Map<string, string>();
  const lines = new Map<string, number>();
  for (const [index, [about = '', typed = '', ...more]] of rows.entries()) {
    const name = about.trim();
    if (name === '' && typed.trim() === '') continue;
    if (index === 0 && /^(place|cell|question|given)s?$/i.test(name)) continue;
    const at = { line: index + 1, about: name };
    if (more.some((text) => text.trim() !== '')) {
      faults.push({ ...at, fault: { code: 'too_many_fields', got: more.length + 2 } });
      continue;
    }
    const found = placesOf(template, asked, name);
    const [place] = found;
    if (place === undefined) faults.push({ ...at, fault: { code: 'no_such_given' } });
    else if (found.length > 1) faults.push({ ...at, fault: { code: 'asked_of_several', places: found } });
    else if (lines.has(place)) faults.push({ ...at, fault: { code: 'answered_twice' } });
    else {
      answers.set(place, typed);
      lines.set(place, index + 1);
    }
  }
  const filled = answered(template, answers, { mustBeWhole: true });
  if (!filled.ok) {
    for (const { place, fault } of filled.fault) {
      faults.push({ line: lines.get(place) ?? null, about: place, fault });
    }
  }
  if (filled.ok && faults.length === 0) return done(filled.value);
  return failed(faults.sort((one, other) => (one.line ?? Infinity) - (other.line ?? Infinity) || 0));
}

function placesOf(template: Workbook, asked: readonly AskedGiven[], name: string): readonly string[] {
  const wanted = name.toLowerCase();
  const byPlace = asked.filter(({ place }) => place.toLowerCase() === wanted);
  if (byPlace.length > 0) return byPlace.map(({ place }) => place);
  if (placeIn(template, name)) return [name];
  const byLabel = asked.filter(({ label }) => label.toLowerCase() === wanted);
  const found =
    byLabel.length > 0
      ? byLabel
      : asked.filter(({ question }) => question.asks.trim().toLowerCase() === wanted);
  return found.map(({ place }) => place);
}

export function wordFaultOfLine({ line, about, fault }: FaultOfLine): string {
  const where = line === null ? about : `Line ${line}, ${about || 'without a given'}`;
  return `${where}: ${wordLineFault(fault)}`;
}

function wordLineFault(fault: AnswerLineFault): string {
  switch (fault.code) {
    case 'asked_of_several': {
      const [first = '', ...others] = fault.places;
      return `This is asked ${others.length + 1} times, at ${first} and others. Write the place of the one that is meant.`;
    }
    case 'answered_twice':
      return 'This given was answered in a line above. Keep one of the two.';
    case 'too_many_fields':
      return `The line has ${fault.got} fields; two are wanted, the given and its answer. Put a field with a comma in quotes.`;
    default:
      return wordAnswerFault(fault);
  }
}
