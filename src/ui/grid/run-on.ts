import type { CellAddress } from '../../base/address.ts';
import { isEmptyCell } from '../../workbook/across.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';
import { columnAt } from '../../workbook/lines.ts';
import { columnPixels } from './column-pixels.ts';
import { firstUnder, isMeasured } from './under-heading.ts';

/** The part of a heading that shows in an empty cell to its right. */
export interface RunOn {
  readonly words: string;
  /** How far to the left the heading begins, in pixels. */
  readonly from: number;
}

/** Which heading runs on over a cell with nothing in it; null for most cells. */
export function runOnAt(sheet: Sheet, row: number, column: number): RunOn | null {
  if (!isEmpty(sheet, row, column)) return null;
  let from = 0;
  for (let left = column - 1; left >= 0; left -= 1) {
    const look = columnAt(sheet, left);
    from += look.hidden ? 0 : columnPixels(look.width);
    if (isEmpty(sheet, row, left)) continue;
    const address = { row, column: left };
    if (look.hidden || !runsOn(sheet, address)) return null;
    return { words: String(cellAt(sheet, address)?.content), from };
  }
  return null;
}

/** Whether a cell is a heading whose words go on over empty neighbors. Over figures it stands at the right with them. */
export function runsOn(sheet: Sheet, address: CellAddress): boolean {
  const cell = cellAt(sheet, address);
  if (cell?.role !== 'heading' || typeof cell.content !== 'string') return false;
  if (cell.style?.wraps || cell.across || !isEmpty(sheet, address.row, address.column + 1)) return false;
  return cell.style?.align === 'left' || (!cell.style?.align && !isMeasured(firstUnder(sheet, address)));
}

function isEmpty(sheet: Sheet, row: number, column: number): boolean {
  return isEmptyCell(cellAt(sheet, { row, column }));
}
