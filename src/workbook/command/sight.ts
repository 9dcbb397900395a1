import type { Axis } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { extentOf, sheetWithId } from '../cells.ts';
import type { Change, Difference } from '../difference.ts';
import { type Sheet, usuallyFrozen, type Workbook } from '../document.ts';
import { columnAt } from '../lines.ts';

/** What of a sheet is seen, and how wide: nothing here touches what stands in a cell. */
export type SightCommand =
  /** New widths for the columns from `at` on, in characters of a normal cell. */
  | {
      readonly type: 'resize_column';
      readonly sheet: string;
      readonly at: number;
      readonly widths: readonly number[];
    }
  | {
      readonly type: 'hide_lines' | 'show_lines';
      readonly sheet: string;
      readonly axis: Axis;
      readonly at: number;
      readonly count: number;
    }
  /** How many rows at the top and columns at the left stay in sight. */
  | { readonly type: 'freeze'; readonly sheet: string; readonly rows: number; readonly columns: number };

export type SightFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'nothing_left_to_see'; readonly axis: Axis }
  | { readonly code: 'too_many_frozen'; readonly axis: Axis; readonly got: number; readonly most: number };

/** Past this there would be no room left for what moves. */
export const mostFrozen = { row: 12, column: 6 } as const;

export const widthLimits = { least: 2, most: 120 } as const;

export function changeSight(workbook: Workbook, command: SightCommand): Outcome<Difference, SightFault> {
  const sheet = sheetWithId(workbook, command.sheet);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  switch (command.type) {
    case 'resize_column':
      return done(command.widths.flatMap((width, index) => resized(sheet, command.at + index, width)));
    case 'hide_lines':
    case 'show_lines': {
      const { axis, at, count, type } = command;
      const isHiding = type === 'hide_lines';
      if (isHiding && isAllHidden(sheet, axis, at, count))
        return failed({ code: 'nothing_left_to_see', axis });
      return done(
        axis === 'row'
          ? rowsHidden(sheet, at, count, isHiding)
          : Array.from({ length: count }, (_, index) => columnHidden(sheet, at + index, isHiding)).flat(),
      );
    }
    case 'freeze': {
      const { rows, columns } = command;
      if (rows > mostFrozen.row) {
        return failed({ code: 'too_many_frozen', axis: 'row', got: rows, most: mostFrozen.row });
      }
      if (columns > mostFrozen.column) {
        return failed({ code: 'too_many_frozen', axis: 'column', got: columns, most: mostFrozen.column });
      }
      const now = sheet.frozen ?? usuallyFrozen;
      if (now.rows === rows && now.columns === columns) return done([]);
      return done([
        { type: 'frozen', sheet: sheet.id, before: sheet.frozen ?? null, after: { rows, columns } },
      ]);
    }
  }
}

function resized(sheet: Sheet, at: number, width: number): readonly Change[] {
  const before = columnAt(sheet, at);
  const kept = Math.min(widthLimits.most, Math.max(widthLimits.least, Math.round(width * 10) / 10));
  return kept === before.width
    ? []
    : [{ type: 'column', sheet: sheet.id, at, before, after: { ...before, width: kept } }];
}

function columnHidden(sheet: Sheet, at: number, isHiding: boolean): readonly Change[] {
  const { hidden, ...before } = columnAt(sheet, at);
  if ((hidden ?? false) === isHiding) return [];
  return [
    {
      type: 'column',
      sheet: sheet.id,
      at,
      before: hidden ? { ...before, hidden } : before,
      after: isHiding ? { ...before, hidden: true } : before,
    },
  ];
}

function rowsHidden(
  { id, hiddenRows: before = [] }: Sheet,
  at: number,
  count: number,
  isHiding: boolean,
): readonly Change[] {
  const others = before.filter((row) => row < at || row >= at + count);
  const own = isHiding ? Array.from({ length: count }, (_, index) => at + index) : [];
  const after = [...others, ...own].sort((one, other) => one - other);
  return after.join() === before.join() ? [] : [{ type: 'hidden_rows', sheet: id, before, after }];
}

/** Whether no used row or column would be left in sight. */
function isAllHidden(sheet: Sheet, axis: Axis, at: number, count: number): boolean {
  const last = extentOf(sheet).to[axis];
  for (let line = 0; line <= last; line += 1) {
    if ((line < at || line >= at + count) && !isHidden(sheet, axis, line)) return false;
  }
  return true;
}

export function isHidden(sheet: Sheet, axis: Axis, at: number): boolean {
  return axis === 'row' ? (sheet.hiddenRows?.includes(at) ?? false) : (sheet.columns[at]?.hidden ?? false);
}
