import type { CellAddress, CellRange } from '../../base/address.ts';
import type { Direction } from './filled-edge.ts';

/** What is filled when the corner of a range is pulled to a cell: the range and its neighbours up to there, in the one
 *  way that it was pulled furthest. Null while the pointer is still inside. */
export function pulledTo({ from, to }: CellRange, pointer: CellAddress): CellRange | null {
  const past: readonly (readonly [number, CellRange])[] = [
    [pointer.row - to.row, { from, to: { ...to, row: pointer.row } }],
    [pointer.column - to.column, { from, to: { ...to, column: pointer.column } }],
    [from.row - pointer.row, { from: { ...from, row: pointer.row }, to }],
    [from.column - pointer.column, { from: { ...from, column: pointer.column }, to }],
  ];
  const [furthest] = [...past].sort(([one], [other]) => other - one);
  return furthest && furthest[0] > 0 ? furthest[1] : null;
}

export interface Filling {
  readonly from: CellRange;
  readonly to: CellRange;
}

/** What a key fills: the first row or column of a range over the rest of it; a single one from its neighbour. Null where
 *  there is no neighbour. */
export function filledByKey(
  { from, to }: CellRange,
  direction: Extract<Direction, 'down' | 'right'>,
): Filling | null {
  const axis = direction === 'down' ? 'row' : 'column';
  const first = from[axis] === to[axis] ? from[axis] - 1 : from[axis];
  if (first < 0) return null;
  const start = { ...from, [axis]: first };
  return { from: { from: start, to: { ...to, [axis]: first } }, to: { from: start, to } };
}
