import { type Axis, type CellAddress, type CellRange, columnName, writeAddress } from '../../base/address.ts';
import { extentOf } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';

/** Where the person is, and the corner that the selection reaches to from there. */
export interface Selection {
  readonly here: CellAddress;
  readonly head: CellAddress;
  /** The block that the person goes round in, cell by cell, while it stays selected. */
  readonly round?: CellRange | undefined;
}

/** As far as a workbook file goes. */
export const lastPlace: CellAddress = { row: 9_999, column: 701 };

export function rangeOf({ here, head, round }: Selection): CellRange {
  if (round) return round;
  return {
    from: { row: Math.min(here.row, head.row), column: Math.min(here.column, head.column) },
    to: { row: Math.max(here.row, head.row), column: Math.max(here.column, head.column) },
  };
}

export function isOneCell({ from, to }: CellRange): boolean {
  return from.row === to.row && from.column === to.column;
}

/** Whether the range holds whole rows (`row`) or whole columns, from one end of the sheet to the other. */
export function isWhole({ from, to }: CellRange, axis: Axis): boolean {
  const along = axis === 'row' ? 'column' : 'row';
  return from[along] === 0 && to[along] === lastPlace[along];
}

/** The rows or columns that a range touches, each of them whole. */
export function wholeLines({ here, head }: Selection, axis: Axis): Selection {
  const along = axis === 'row' ? 'column' : 'row';
  return { here: { ...here, [along]: 0 }, head: { ...head, [along]: lastPlace[along] } };
}

/** A single row or column, from end to end. */
export function wholeLine({ axis, at }: { readonly axis: Axis; readonly at: number }): Selection {
  const here = { row: 0, column: 0, [axis]: at };
  return wholeLines({ here, head: here }, axis);
}

/** Whether a range holds a whole row or column, among others or alone. */
export function hasLine(
  range: CellRange,
  { axis, at }: { readonly axis: Axis; readonly at: number },
): boolean {
  return isWhole(range, axis) && at >= range.from[axis] && at <= range.to[axis];
}

/** The part of whole rows and columns that the sheet uses; any other range as it is. */
export function usedPart(sheet: Sheet, range: CellRange): CellRange {
  const last = extentOf(sheet).to;
  const column = isWhole(range, 'row') ? last.column : range.to.column;
  const row = isWhole(range, 'column') ? last.row : range.to.row;
  return {
    from: range.from,
    to: { row: Math.max(row, range.from.row), column: Math.max(column, range.from.column) },
  };
}

/** A selection as it is read out: `B2 to C5, 8 cells`, `rows 3 to 5`. Empty for a single cell, which names itself. */
export function selectionWords(range: CellRange): string {
  const { from, to } = range;
  if (isOneCell(range)) return '';
  if (isWhole(range, 'row') && isWhole(range, 'column')) return 'the whole sheet';
  if (isWhole(range, 'row')) return linesWords('row', from.row, to.row);
  if (isWhole(range, 'column')) return linesWords('column', from.column, to.column);
  const cells = (to.row - from.row + 1) * (to.column - from.column + 1);
  return `${writeAddress(from)} to ${writeAddress(to)}, ${cells.toLocaleString('en-US')} cells`;
}

/** `row 3`, `columns C to E`. */
export function linesWords(axis: Axis, first: number, last: number): string {
  const name = (at: number) => (axis === 'row' ? String(at + 1) : columnName(at));
  return first === last ? `${axis} ${name(first)}` : `${axis}s ${name(first)} to ${name(last)}`;
}

/** The block that Tab and Enter go round in; null for a single cell, and for whole rows and columns, which have no end. */
export function roundBlock(selection: Selection): CellRange | null {
  const range = rangeOf(selection);
  return isOneCell(range) || isWhole(range, 'row') || isWhole(range, 'column') ? null : range;
}
