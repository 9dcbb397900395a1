import type { CellRange } from '../base/address.ts';
import { type CellValue, isFault } from '../base/value.ts';
import { cellAt } from './cells.ts';
import type { Sheet } from './document.ts';
import { headingOver } from './label.ts';
import { shownValue } from './standing.ts';
import { isTypedHeading } from './table-rows.ts';
import type { Values } from './values.ts';

/** What a column of a block of rows is called by the row above it, set as its heading or only typed. */
export function tableColumnName(sheet: Sheet, { from, to }: CellRange, column: number): string {
  const above = { row: from.row - 1, column };
  const block = { from: { ...from, row: above.row }, to };
  const over = above.row < 0 ? null : cellAt(sheet, above);
  if (over?.role === 'heading' || (over && isTypedHeading(sheet, block))) return String(over.content ?? '');
  return headingOver(sheet, { row: from.row, column });
}

const words = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** The order in which the rows of a block stand when their values in one column rise or fall: numbers before words, `S2`
 *  before `S10`; rows without a value come last either way, and rows with the same one stay as they are. */
export function orderBy(
  sheet: Sheet,
  values: Values,
  { from, to }: CellRange,
  column: number,
  direction: 'rising' | 'falling',
): readonly number[] {
  const rows = Array.from({ length: to.row - from.row + 1 }, (_, at) => {
    const address = { row: from.row + at, column };
    return { at, value: shownValue(sheet, address, cellAt(sheet, address), values) };
  });
  const sign = direction === 'rising' ? 1 : -1;
  return rows
    .toSorted((one, other) => {
      const [isNone, isOtherNone] = [isEmpty(one.value), isEmpty(other.value)];
      if (isNone || isOtherNone) return Number(isNone) - Number(isOtherNone);
      return sign * compare(one.value, other.value);
    })
    .map(({ at }) => at);
}

function isEmpty(value: CellValue): boolean {
  return value === null || value === '' || isFault(value);
}

const kinds = ['number', 'string', 'boolean'];

function compare(one: CellValue, other: CellValue): number {
  if (typeof one === 'number' && typeof other === 'number') return one - other;
  if (typeof one === 'string' && typeof other === 'string') return words.compare(one, other);
  if (typeof one === typeof other) return Number(one) - Number(other);
  return kinds.indexOf(typeof one) - kinds.indexOf(typeof other);
}
