import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { Inches, Pounds } from '../../base/quantity.ts';
import { inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type DuctSection, perimeter } from '../section.ts';

/** One row of a table of hangers: what it is good for. A size that the row says nothing of is null. */
export interface HangerRow {
  readonly name: string;
  readonly roundTo: Inches | null;
  readonly halfPerimeterTo: Inches | null;
  readonly spacingTo: Inches;
}

/** The size by which hangers are looked up: the diameter, or half way round a rectangular duct. */
export function hangerSize(section: DuctSection): Inches {
  return section.shape === 'round' ? section.diameter : inches(perimeter(section) / 2);
}

/** The row for a duct: of those that reach its spacing and its size, the one with the closest spacing, then the smallest
 *  size; the first of equals. In inches. Faults: `no_hanger_row`. Source: the table that is handed in. */
export function hangerRow<R extends HangerRow>(
  rows: readonly R[],
  section: DuctSection,
  spacing: Inches,
): Outcome<R, TradeFault> {
  const size = hangerSize(section);
  const reach = (row: R) => (section.shape === 'round' ? row.roundTo : row.halfPerimeterTo) ?? 0;
  const [row] = rows
    .filter((one) => reach(one) >= size && one.spacingTo >= spacing)
    .sort((one, other) => one.spacingTo - other.spacingTo || reach(one) - reach(other));
  return row === undefined
    ? failed({ code: 'no_hanger_row', shape: section.shape, size, spacing })
    : done(row);
}

/** A strap, rod or wire with the most that one of it may carry. */
export interface LoadRow {
  readonly name: string;
  readonly load: Pounds;
}

/** The weakest row that still carries a load; the first of equals. Faults: `too_heavy`. */
export function weakestFor<R extends LoadRow>(rows: readonly R[], load: Pounds): Outcome<R, TradeFault> {
  const [row] = rows.filter((one) => one.load >= load).sort((one, other) => one.load - other.load);
  if (row !== undefined) return done(row);
  return failed({ code: 'too_heavy', load, most: Math.max(0, ...rows.map((one) => one.load)) });
}
