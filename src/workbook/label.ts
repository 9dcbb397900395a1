import type { CellAddress } from '../base/address.ts';
import { acrossAt } from './across.ts';
import { cellAt } from './cells.ts';
import type { Sheet } from './document.ts';
import { rowsAbove } from './rows-above.ts';
import { shownValue } from './standing.ts';
import { noValues, type Values } from './values.ts';

/** What a cell is called on its sheet: `Stretch-out of S1 trunk`. The heading over it and the words at the start of its
 *  row; empty where there are neither. */
export function labelOf(sheet: Sheet, address: CellAddress, values: Values = noValues): string {
  const heading = headingOver(sheet, address);
  const row = rowName(sheet, address, values);
  if (heading && row) return `${heading} of ${row}`;
  return heading || row;
}

/** The nearest heading above in the same column, if the cells between belong to the same table. */
export function headingOver(sheet: Sheet, { row, column }: CellAddress): string {
  if (row > sheet.rows.length) return '';
  const { emptyAbove, headingsAbove } = rowsAbove(sheet.rows);
  const end = emptyAbove[row] ?? -1;
  for (let above = headingsAbove[row] ?? -1; above > end; above = headingsAbove[above] ?? -1) {
    const cell = cellAt(sheet, { row: above, column });
    if (cell?.role === 'heading') return column === 0 ? '' : String(cell.content ?? '');
    const across = column === 0 ? null : acrossAt(sheet, { row: above, column });
    if (across?.cell.role === 'heading') return String(across.cell.content ?? '');
  }
  return '';
}

/** The first words in the row, left of the cell, typed or figured. An answer picked from a few names no row, a row of
 *  headings has no name, and words stand for themselves. */
export function rowName(sheet: Sheet, { row, column }: CellAddress, values: Values): string {
  const cells = sheet.rows[row] ?? [];
  if (cells[column]?.role === 'text' || cells.filter((cell) => cell?.role === 'heading').length > 1)
    return '';
  for (const [place, cell] of cells.slice(0, column).entries()) {
    if (cell?.question?.choices) continue;
    const value = shownValue(sheet, { row, column: place }, cell, values);
    if (typeof value === 'string' && value !== '' && cell?.role !== 'check') return value;
  }
  return '';
}
