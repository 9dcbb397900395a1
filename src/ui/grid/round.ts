import type { CellAddress, CellRange } from '../../base/address.ts';
import type { Direction } from './filled-edge.ts';

/** The next cell of a selected block: along its rows for a step to a side, along its columns for one up or down, and from
 *  the last one round to the first. */
export function nextRound({ from, to }: CellRange, at: CellAddress, direction: Direction): CellAddress {
  const rows = to.row - from.row + 1;
  const columns = to.column - from.column + 1;
  const down = at.row - from.row;
  const right = at.column - from.column;
  const isAlongRows = direction === 'left' || direction === 'right';
  const by = direction === 'right' || direction === 'down' ? 1 : -1;
  const place = isAlongRows ? down * columns + right : right * rows + down;
  const next = (place + by + rows * columns) % (rows * columns);
  return isAlongRows
    ? { row: from.row + Math.floor(next / columns), column: from.column + (next % columns) }
    : { row: from.row + (next % rows), column: from.column + Math.floor(next / rows) };
}
