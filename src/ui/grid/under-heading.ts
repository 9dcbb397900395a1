import type { CellAddress } from '../../base/address.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Cell, Sheet } from '../../workbook/document.ts';

/** The first cell under a heading that is no heading itself; null where nothing stands there. */
export function firstUnder(sheet: Sheet, { row, column }: CellAddress): Cell | null {
  for (let below = row + 1; below < sheet.rows.length; below += 1) {
    const cell = cellAt(sheet, { row: below, column });
    if (!cell) return null;
    if (cell.role !== 'heading') return cell;
  }
  return null;
}

export function isMeasured(cell: Cell | null): boolean {
  return (
    cell !== null && cell.role !== 'check' && (cell.unit !== undefined || typeof cell.content === 'number')
  );
}
