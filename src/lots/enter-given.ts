import { done, failed, type Outcome } from '../base/outcome.ts';
import { isFormula } from '../workbook/document.ts';
import { type EntryFault, readEntry } from '../workbook/entry.ts';
import type { VaryingGiven } from './columns.ts';

export type GivenFault =
  | { readonly code: 'entry'; readonly label: string; readonly fault: EntryFault }
  /** A lot says values; what is figured from them stands in its house type. */
  | { readonly code: 'formula_in_lot'; readonly label: string };

/** Reads what was typed for a given of a lot, by the unit and the range of the given itself. Null: nothing is said. */
export function enterGiven(
  { cell, label }: VaryingGiven,
  typed: string,
): Outcome<number | string | boolean | null, GivenFault> {
  const entry = readEntry(typed, cell);
  if (!entry.ok) return failed({ code: 'entry', label, fault: entry.fault });
  const { content } = entry.value;
  return isFormula(content) ? failed({ code: 'formula_in_lot', label }) : done(content);
}
