import type { Axis, CellAddress } from '../base/address.ts';
import type { Change, Difference } from './difference.ts';

/** Something that hangs on a cell of an open workbook without standing in it. */
export interface AtCell {
  readonly sheetId: string;
  readonly address: CellAddress;
}

/** Where each one is after a difference: with its cell where rows or columns came or went; gone where the cell went, or
 *  where something else was put into it. */
export function afterDifference<Hung extends AtCell>(
  hung: readonly Hung[],
  difference: Difference,
): readonly Hung[] {
  // Where more than cells changed, formulas are only written anew to read the same cells as before.
  const isReplaced = difference.every(({ type }) => type === 'cell');
  return difference.reduce<readonly Hung[]>(
    (sofar, change) => sofar.flatMap((one) => afterChange(one, change, isReplaced) ?? []),
    hung,
  );
}

function afterChange<Hung extends AtCell>(one: Hung, change: Change, isReplaced: boolean): Hung | null {
  const { sheetId, address } = one;
  switch (change.type) {
    case 'sheet':
      return change.before?.id === sheetId && change.after?.id !== sheetId ? null : one;
    case 'cell': {
      const isHere =
        change.sheet === sheetId &&
        change.address.row === address.row &&
        change.address.column === address.column;
      return isHere && isReplaced && change.before?.content !== change.after?.content ? null : one;
    }
    case 'lines':
    case 'lines_place': {
      if (change.sheet !== sheetId) return one;
      const line = address[change.axis];
      const at = change.type === 'lines' ? lineAfter(line, change) : lineAfterPlace(line, change);
      if (at === null) return null;
      return at === address[change.axis] ? one : { ...one, address: moved(address, change.axis, at) };
    }
    default:
      return one;
  }
}

function lineAfter(line: number, { at, before, after }: Extract<Change, { type: 'lines' }>): number | null {
  if (line < at) return line;
  if (line >= at + before.length) return line + after.length - before.length;
  return line - at < after.length ? line : null;
}

/** Some lines go past others, which close up. */
function lineAfterPlace(line: number, place: Extract<Change, { type: 'lines_place' }>): number {
  const { before, after, count } = place;
  if (line >= before && line < before + count) return line + after - before;
  if (after > before) return line >= before && line < after + count ? line - count : line;
  return line >= after && line < before ? line + count : line;
}

function moved(address: CellAddress, axis: Axis, at: number): CellAddress {
  return { ...address, [axis]: at };
}
