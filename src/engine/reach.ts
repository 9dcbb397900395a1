import type { CellAddress, CellRange } from '../base/address.ts';
import type { CellReference, RangeReference } from '../formula/expression.ts';

/** A block of cells that a formula reads directly. The sheet's name is in small letters. */
export interface Reach {
  readonly sheet: string;
  readonly range: CellRange;
}

/** What a reference covers, whichever way its corners were written. `ownSheet` is the one that holds the formula. */
export function reachOf(reference: CellReference | RangeReference, ownSheet: string): Reach {
  const [one, other] = reference.type === 'cell' ? [reference, reference] : [reference.start, reference.end];
  return {
    sheet: reference.sheet?.toLowerCase() ?? ownSheet,
    range: {
      from: { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) },
      to: { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) },
    },
  };
}

export function cellCount({ range: { from, to } }: Reach): number {
  return (to.row - from.row + 1) * (to.column - from.column + 1);
}

export function* addressesIn({ range: { from, to } }: Reach): Generator<CellAddress> {
  for (let row = from.row; row <= to.row; row += 1) {
    for (let column = from.column; column <= to.column; column += 1) yield { row, column };
  }
}
