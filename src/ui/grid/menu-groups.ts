import type { CellRange } from '../../base/address.ts';
import type { SessionState } from '../../session/state.ts';
import type { Sheet } from '../../workbook/document.ts';
import { type AcrossDeed, acrossDeeds } from './across-deeds.ts';
import { type CellDeed, cellDeedGroups } from './cell-deeds.ts';
import { type LineDeed, lineDeedGroups } from './line-deeds.ts';
import { isWhole } from './selection.ts';
import { type SortDeed, sortDeeds } from './sort-deeds.ts';
import { type TableLineDeed, tableLineDeeds } from './table-line-deeds.ts';

export type MenuDeed = LineDeed | TableLineDeed | SortDeed | AcrossDeed | CellDeed;

/** All that can be done to a block of cells where it stands, in groups, and what the list of it is called. */
export function menuGroups(
  { workbook, values }: SessionState,
  sheet: Sheet,
  range: CellRange,
): { readonly label: string; readonly groups: readonly (readonly MenuDeed[])[] } {
  const isLines = isWhole(range, 'row') || isWhole(range, 'column');
  const lines = lineDeedGroups(sheet, range);
  const [first = [], ...rest] = lines;
  // Sorting comes after what is done to rows, before what is done to columns.
  const beforeColumns = Math.max(0, rest.length - 2);
  const groups: readonly (readonly MenuDeed[])[] = [
    ...(isLines ? [] : cellDeedGroups(range)),
    acrossDeeds(sheet, range),
    first,
    tableLineDeeds(workbook, sheet, range),
    ...rest.slice(0, beforeColumns),
    sortDeeds(sheet, values, range),
    ...rest.slice(beforeColumns),
  ];
  return {
    label: isLines ? 'Rows and columns' : 'Cells, rows and columns',
    groups: groups.filter((group) => group.length > 0),
  };
}
