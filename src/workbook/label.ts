import type { CellAddress } from '../base/address.ts';
import { cellAt } from './cells.ts';
import type { Sheet } from './document.ts';

/** What a cell is called on its sheet: `Stretch-out of S1 trunk`. The heading over it and the words at the start of its
 *  row; empty where there are neither. */
export function labelOf(sheet: Sheet, address: CellAddress): string {
  const heading = headingOver(sheet, address);
  const row = rowName(sheet, address);
  if (heading && row) return `${heading} of ${row}`;
  return heading || row;
}

/** The nearest heading above in the same column, if the cells between belong to the same table. */
export function headingOver(sheet: Sheet, { row, column }: CellAddress): string {
  for (let above = row - 1; above >= 0; above -= 1) {
    const cell = cellAt(sheet, { row: above, column });
    if (!cell) {
      if ((sheet.rows[above] ?? []).every((one) => one === null)) return '';
      continue;
    }
    if (cell.role === 'heading') return column === 0 ? '' : String(cell.content ?? '');
  }
  return '';
}

/** The first words in the row, left of the cell. */
function rowName(sheet: Sheet, { row, column }: CellAddress): string {
  for (const cell of (sheet.rows[row] ?? []).slice(0, column)) {
    if (cell && typeof cell.content === 'string' && cell.content !== '') return cell.content;
  }
  return '';
}
