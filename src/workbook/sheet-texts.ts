import { inches, millimetresFromInches } from '../base/quantity.ts';
import { type CellValue, isFault } from '../base/value.ts';
import { cellAt, extentOf } from './cells.ts';
import { digits } from './digits.ts';
import type { Cell, Sheet } from './document.ts';
import { showValue } from './show.ts';
import { shownValue } from './standing.ts';
import type { Values } from './values.ts';

/** How the cells of a sheet are put into words: `shown` as the page shows them, rounded and with their marks; `exact`
 *  with every digit, in the cell's own measure and without a mark. Either reads back into the same cell. */
export type TextsOf = 'shown' | 'exact';

/** The texts of a sheet, row by row, every row as long as the longest. Nothing for a sheet without a cell. */
export function sheetTexts(sheet: Sheet, values: Values, how: TextsOf): readonly (readonly string[])[] {
  const { to } = extentOf(sheet);
  const used = sheet.rows.findLastIndex((row) => row.some((cell) => cell !== null));
  const last = sheet.rows.reduce(
    (most, row) =>
      Math.max(
        most,
        row.findLastIndex((cell) => cell !== null),
      ),
    -1,
  );
  return Array.from({ length: used + 1 }, (_, row) =>
    Array.from({ length: Math.min(last, to.column) + 1 }, (_, column) => {
      const address = { row, column };
      const cell = cellAt(sheet, address);
      return textOf(shownValue(sheet, address, cell, values), cell, how);
    }),
  );
}

export function textOf(value: CellValue, cell: Cell | null, how: TextsOf): string {
  if (how === 'shown' || value === null || isFault(value) || typeof value === 'string') {
    return showValue(value, cell?.unit, cell?.format).text;
  }
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return digits(inOwnMeasure(value, cell));
}

/** A number as a bare one is read in this cell: millimetres or metres where the cell shows them, per cent as per cent. */
function inOwnMeasure(value: number, cell: Cell | null): number {
  if (cell?.unit === 'percent') return Number((value * 100).toPrecision(15));
  const isLength = cell?.unit === 'in' || cell?.unit === 'ft';
  const type = cell?.format?.type;
  if (!cell || !isLength || !(type === 'millimetres' || type === 'metres')) return value;
  const millimetres = millimetresFromInches(inches(cell.unit === 'ft' ? value * 12 : value));
  return Number((type === 'metres' ? millimetres / 1000 : millimetres).toPrecision(15));
}
