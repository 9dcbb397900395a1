import type { Axis, CellAddress } from '../../base/address.ts';
import { isHidden } from '../../workbook/command/sight.ts';
import type { Sheet } from '../../workbook/document.ts';
import { lastPlace } from './selection.ts';

/** The place itself where it shows; else the next one that shows in the direction of the way there, or where there is
 *  none the nearest one back. */
export function pastHidden(sheet: Sheet, from: CellAddress, to: CellAddress): CellAddress {
  return { row: line(sheet, 'row', from.row, to.row), column: line(sheet, 'column', from.column, to.column) };
}

function line(sheet: Sheet, axis: Axis, from: number, to: number): number {
  const way = to < from ? -1 : 1;
  for (const step of [way, -way]) {
    let at = to;
    while (at >= 0 && at <= lastPlace[axis] && isHidden(sheet, axis, at)) at += step;
    if (at >= 0 && at <= lastPlace[axis]) return at;
  }
  return from;
}
