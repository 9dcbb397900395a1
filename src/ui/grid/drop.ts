import type { Axis, CellAddress, CellRange } from '../../base/address.ts';

/** Where pulled rows or columns would be let go: beside which line, and on which side of it. */
export interface Drop {
  readonly axis: Axis;
  readonly at: number;
  readonly side: 'before' | 'after';
}

/** Lines that are pulled to another one go past it; null while the pointer is over the lines themselves. */
export function dropAt({ from, to }: CellRange, axis: Axis, at: number): Drop | null {
  if (at >= from[axis] && at <= to[axis]) return null;
  return { axis, at, side: at < from[axis] ? 'before' : 'after' };
}

const sides = {
  row: { before: 'top', after: 'bottom' },
  column: { before: 'left', after: 'right' },
} as const;

/** The side of a cell, a row number or a column letter that runs along there. */
export function dropSide(drop: Drop | null, place: Partial<CellAddress>): string | null {
  return drop && place[drop.axis] === drop.at ? sides[drop.axis][drop.side] : null;
}
