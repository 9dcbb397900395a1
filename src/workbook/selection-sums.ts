import type { CellRange } from '../base/address.ts';
import type { Unit } from '../base/unit.ts';
import { isFault } from '../base/value.ts';
import { cellsIn } from './cells.ts';
import type { Cell, Sheet } from './document.ts';
import { showValue } from './show.ts';
import { shownValue } from './standing.ts';
import type { Values } from './values.ts';

/** What several cells come to together, as texts ready to show. Nothing is rounded before it is added. */
export interface SelectionSums {
  /** Cells that hold something: a number, a text, yes or no. */
  readonly filled: number;
  /** Cells that should have a figure and have none. */
  readonly faults: number;
  readonly numbers: number;
  /** Null where there is no number, where the numbers measure different things, or where a figure is missing. */
  readonly least: string | null;
  readonly most: string | null;
  /** Null, besides, for what does not add up: temperatures, gauges, velocities and other rates. */
  readonly sum: string | null;
  /** Whether numbers stand side by side that measure different things. */
  readonly isMixed: boolean;
}

/** Adding these says nothing: two ducts at 55 °F are not at 110 °F. */
const neverAdded: ReadonlySet<Unit | undefined> = new Set<Unit>([
  'lbPerSqFt',
  'lbPerCuFt',
  'k',
  'fpm',
  'inwgPer100Ft',
  'degF',
  'gauge',
]);

export function sumsOf(sheet: Sheet, values: Values, range: CellRange): SelectionSums {
  let filled = 0;
  let faults = 0;
  const numbers: { readonly cell: Cell; readonly value: number }[] = [];
  for (const { address, cell } of cellsIn(sheet, range)) {
    const value = shownValue(sheet, address, cell, values);
    if (isFault(value)) faults += 1;
    else if (value !== null && value !== '') filled += 1;
    if (typeof value === 'number') numbers.push({ cell, value });
  }
  const [first] = numbers;
  const isMixed = numbers.some(({ cell }) => cell.unit !== first?.cell.unit);
  const counted = { filled, faults, numbers: numbers.length, isMixed };
  if (!first || isMixed || faults > 0) return { ...counted, least: null, most: null, sum: null };
  const { unit, format } = numbers.find(({ cell }) => cell.format)?.cell ?? first.cell;
  const say = (value: number) => showValue(value, unit, format).text;
  return {
    ...counted,
    least: say(numbers.reduce((least, { value }) => Math.min(least, value), Infinity)),
    most: say(numbers.reduce((most, { value }) => Math.max(most, value), -Infinity)),
    sum: neverAdded.has(unit) ? null : say(numbers.reduce((sum, { value }) => sum + value, 0)),
  };
}
