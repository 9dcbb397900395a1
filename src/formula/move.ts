import { type CellAddress, type CellRange, isInRange } from '../base/address.ts';
import type { Corner, Reference } from './expression.ts';
import { type Rewriting, rewritten } from './rewrite.ts';

/** A block of cells that is cut out and put elsewhere. */
export interface Move {
  readonly from: { readonly sheet: string; readonly range: CellRange };
  /** Where its top left cell comes to stand; that it fits there is up to the caller. */
  readonly to: { readonly sheet: string } & CellAddress;
}

/** The formula after cells have moved: references to moved cells follow them, references to cells that were covered are
 *  gone, and a block follows when all of it moved. `ownSheet` holds the formula before the move; for a formula that moves
 *  along to another sheet, `ownSheetAfter` holds it then. */
export function afterMove(
  text: string,
  move: Move,
  { ownSheet, ownSheetAfter = ownSheet }: { readonly ownSheet: string; readonly ownSheetAfter?: string },
): string {
  return rewritten(text, (reference): Rewriting => {
    if (reference.type === 'name') return null;
    const sheet = reference.sheet ?? ownSheet;
    const { start, end } = cornersOf(reference);
    if (isInside(sheet, [start, end], move.from.sheet, move.from.range)) {
      const shift = (corner: Corner): Corner => ({
        ...corner,
        row: corner.row + move.to.row - move.from.range.from.row,
        column: corner.column + move.to.column - move.from.range.from.column,
      });
      return {
        type: 'cells',
        sheet: sheetAfter(reference.sheet, move.to.sheet, ownSheetAfter),
        start: shift(start),
        end: shift(end),
      };
    }
    if (isInside(sheet, [start, end], move.to.sheet, coveredBy(move))) return { type: 'gone' };
    if (reference.sheet !== null || isSame(ownSheet, ownSheetAfter)) return null;
    return { type: 'cells', sheet: ownSheet, start, end };
  });
}

/** Written as typed where that still names the sheet; a bare reference stays bare on its own sheet. */
function sheetAfter(typed: string | null, target: string, ownSheetAfter: string): string | null {
  if (typed === null) return isSame(target, ownSheetAfter) ? null : target;
  return isSame(typed, target) ? typed : target;
}

function coveredBy({ from, to }: Move): CellRange {
  return {
    from: { row: to.row, column: to.column },
    to: {
      row: to.row + from.range.to.row - from.range.from.row,
      column: to.column + from.range.to.column - from.range.from.column,
    },
  };
}

function cornersOf(reference: Exclude<Reference, { type: 'name' }>): { start: Corner; end: Corner } {
  return reference.type === 'cell' ? { start: reference, end: reference } : reference;
}

function isInside(sheet: string, corners: readonly Corner[], other: string, range: CellRange): boolean {
  return isSame(sheet, other) && corners.every((corner) => isInRange(corner, range));
}

function isSame(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}
