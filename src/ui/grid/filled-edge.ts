import type { CellAddress } from '../../base/address.ts';
import { cellAt, extentOf } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';

export type Direction = 'up' | 'down' | 'left' | 'right';

/** One cell on; it may lie outside the sheet. */
export function nextTo({ row, column }: CellAddress, direction: Direction): CellAddress {
  switch (direction) {
    case 'up':
      return { row: row - 1, column };
    case 'down':
      return { row: row + 1, column };
    case 'left':
      return { row, column: column - 1 };
    case 'right':
      return { row, column: column + 1 };
  }
}

/** Where a run of cells ends in a direction: from inside a run its last cell, from its end or from an empty cell the
 *  next cell that is there, and past everything the edge of what is used. A given that waits to be filled belongs to its run. */
export function filledEdge(sheet: Sheet, from: CellAddress, direction: Direction): CellAddress {
  const { to: last } = extentOf(sheet);
  const isUsed = ({ row, column }: CellAddress) =>
    row >= 0 &&
    column >= 0 &&
    row <= Math.max(last.row, from.row) &&
    column <= Math.max(last.column, from.column);
  const isThere = (address: CellAddress) => cellAt(sheet, address) !== null;
  let at = from;
  let next = nextTo(at, direction);
  const isInRun = isThere(at) && isThere(next);
  while (isUsed(next)) {
    if (isInRun && !isThere(next)) return at;
    at = next;
    if (!isInRun && isThere(at)) return at;
    next = nextTo(at, direction);
  }
  return at;
}
