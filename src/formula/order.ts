import type { CellRange } from '../base/address.ts';
import { done, failed, type Outcome } from '../base/outcome.ts';
import type { Corner, Reference } from './expression.ts';
import { type Rewriting, rewritten } from './rewrite.ts';

/** Rows of a block of cells that are put in another order. */
export interface RowOrder {
  readonly sheet: string;
  readonly range: CellRange;
  /** Where a row of the block comes to stand. */
  readonly placeOf: (row: number) => number;
}

/** A reference to rows that would no longer lie together. */
export interface TornReference {
  /** As the formula has it: `B3:B10`. */
  readonly written: string;
  readonly cells: CellRange;
}

/** The formula after rows were put in another order: what reads a cell of a row goes with that row, and what reads all of
 *  them stays. The fault is the first reference to some of them that would no longer lie together. */
export function afterRowOrder(
  text: string,
  order: RowOrder,
  ownSheet: string,
): Outcome<string, TornReference> {
  let torn: TornReference | null = null;
  const formula = rewritten(text, (reference): Rewriting => {
    if (reference.type === 'name' || torn !== null) return null;
    if ((reference.sheet ?? ownSheet).toLowerCase() !== order.sheet.toLowerCase()) return null;
    const { start, end } = cornersOf(reference);
    const cells = rangeBetween(start, end);
    const after = rangeAfterOrder(cells, order);
    if (after === null) {
      torn = { written: text.slice(reference.from, reference.to), cells };
      return null;
    }
    const isTurned = start.row > end.row;
    const [first, last] = isTurned ? [after.to.row, after.from.row] : [after.from.row, after.to.row];
    if (first === start.row && last === end.row) return null;
    return {
      type: 'cells',
      sheet: reference.sheet,
      start: { ...start, row: first },
      end: { ...end, row: last },
    };
  });
  return torn === null ? done(formula) : failed(torn);
}

/** Where a block of cells lies afterwards; null where its rows no longer lie together, or not all of it goes along. */
export function rangeAfterOrder(cells: CellRange, { range, placeOf }: RowOrder): CellRange | null {
  const first = Math.max(cells.from.row, range.from.row);
  const last = Math.min(cells.to.row, range.to.row);
  const isBeside = cells.to.column < range.from.column || cells.from.column > range.to.column;
  if (isBeside || first > last) return cells;
  if (first === range.from.row && last === range.to.row) return cells;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let row = first; row <= last; row += 1) {
    least = Math.min(least, placeOf(row));
    most = Math.max(most, placeOf(row));
  }
  if (least === first && most === last) return cells;
  const isInside =
    first === cells.from.row &&
    last === cells.to.row &&
    cells.from.column >= range.from.column &&
    cells.to.column <= range.to.column;
  if (!isInside || most - least !== last - first) return null;
  return { from: { ...cells.from, row: least }, to: { ...cells.to, row: most } };
}

function cornersOf(reference: Exclude<Reference, { type: 'name' }>): { start: Corner; end: Corner } {
  return reference.type === 'cell' ? { start: reference, end: reference } : reference;
}

function rangeBetween(one: Corner, other: Corner): CellRange {
  return {
    from: { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) },
    to: { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) },
  };
}
