import { done, failed, type Outcome } from '../base/outcome.ts';
import { cellAt, withCell } from '../workbook/cells.ts';
import type { Workbook } from '../workbook/document.ts';
import { cellAfterEntry } from '../workbook/entered.ts';
import { type EntryFault, readEntry } from '../workbook/entry.ts';
import { placeIn } from './place.ts';
import { questionsOf } from './questions.ts';

/** Why one answer is not taken. */
export type AnswerFault =
  | EntryFault
  | { readonly code: 'no_such_given' }
  /** A form takes values; a formula is written in the grid. */
  | { readonly code: 'formula_for_an_answer' }
  | { readonly code: 'answer_is_missing'; readonly asks: string };

export interface FaultOfAnswer {
  readonly place: string;
  readonly fault: AnswerFault;
}

/** Fills what was typed into the givens of a template, each read as its own cell reads it, or tells every fault at once. A
 *  place that nothing is said of keeps what the template has there; with `mustBeWhole`, what is then still blank and may
 *  not be is a fault as well. */
export function answered(
  template: Workbook,
  answers: ReadonlyMap<string, string>,
  { mustBeWhole }: { readonly mustBeWhole: boolean },
): Outcome<Workbook, readonly FaultOfAnswer[]> {
  const faults: FaultOfAnswer[] = [];
  let filled = template;
  for (const [written, typed] of answers) {
    const place = placeIn(filled, written);
    const cell = place ? cellAt(place.sheet, place.address) : null;
    if (!place || cell?.role !== 'given') {
      faults.push({ place: written, fault: { code: 'no_such_given' } });
      continue;
    }
    if (typed.trim().startsWith('=')) {
      faults.push({ place: written, fault: { code: 'formula_for_an_answer' } });
      continue;
    }
    const entry = readEntry(typed, cell);
    if (!entry.ok) {
      faults.push({ place: written, fault: entry.fault });
      continue;
    }
    const sheet = withCell(place.sheet, place.address, cellAfterEntry(cell, entry.value));
    filled = { ...filled, sheets: filled.sheets.map((one) => (one.id === sheet.id ? sheet : one)) };
  }
  if (mustBeWhole) {
    const refused = new Set(faults.map(({ place }) => place));
    for (const { place, cell, question } of questionsOf(filled).flatMap(({ asked }) => asked)) {
      if (cell.content !== null || question.mayBeBlank || refused.has(place)) continue;
      faults.push({ place, fault: { code: 'answer_is_missing', asks: question.asks } });
    }
  }
  return faults.length === 0 ? done(filled) : failed(inOrderOf(template, faults));
}

/** As the form shows them; what has no place in it comes last. */
function inOrderOf(template: Workbook, faults: readonly FaultOfAnswer[]): readonly FaultOfAnswer[] {
  const places = questionsOf(template).flatMap(({ asked }) => asked.map(({ place }) => place));
  const order = new Map(places.map((place, at) => [place, at]));
  const at = ({ place }: FaultOfAnswer) => order.get(place) ?? places.length;
  return [...faults].sort((one, other) => at(one) - at(other));
}
