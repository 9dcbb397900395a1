import type { Axis, CellRange } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { limits } from '../../formula/limits.ts';
import {
  afterInsertColumns,
  afterInsertRows,
  afterRemoveColumns,
  afterRemoveRows,
} from '../../formula/lines.ts';
import {
  type Change as LineChange,
  type Stretch,
  stretchAfterInsert,
  stretchAfterRemove,
} from '../../formula/stretch.ts';
import { acrossAfter } from '../across.ts';
import { extentOf, sheetWithId } from '../cells.ts';
import { applyDifference, type Change, type Difference } from '../difference.ts';
import type { NamedRange, Sheet, Workbook } from '../document.ts';
import { isSameSheet, keptPlacesAfter } from '../kept-places.ts';
import { emptyLine, linesOf } from '../lines.ts';
import { rewrittenFormulas } from '../rewriting.ts';
import { mostFrozen } from './sight.ts';

export interface LinesCommand {
  readonly type: 'insert_lines' | 'remove_lines';
  readonly sheet: string;
  readonly axis: Axis;
  readonly at: number;
  readonly count: number;
}

export type LinesFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'sheet_is_full'; readonly axis: Axis; readonly most: number };

/** Puts empty rows or columns in, or takes some out; every formula and name follows. */
export function changeLines(
  workbook: Workbook,
  { type, sheet: id, axis, at, count }: LinesCommand,
): Outcome<Difference, LinesFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  const isInsert = type === 'insert_lines';
  const most = axis === 'row' ? limits.rows : limits.columns;
  if (isInsert && extentOf(sheet).to[axis] + count >= most) {
    return failed({ code: 'sheet_is_full', axis, most });
  }
  const before = isInsert ? [] : linesOf(sheet, axis, at, count);
  const after = isInsert ? Array.from({ length: count }, () => emptyLine) : [];
  const lines: Change = { type: 'lines', sheet: id, axis, at, before, after };
  const moved = applyDifference(workbook, [lines]);
  const rewrite = isInsert
    ? { row: afterInsertRows, column: afterInsertColumns }[axis]
    : { row: afterRemoveRows, column: afterRemoveColumns }[axis];
  const formulas = rewrittenFormulas(moved, (formula, ownSheet) =>
    rewrite(formula, { ownSheet, sheet: sheet.name, at, count }),
  );
  return done([
    lines,
    ...frozenAfter(sheet, axis, isInsert, { at, count }),
    ...(axis === 'column' ? acrossAfter(sheet, stretchRule(isInsert, { at, count })) : []),
    ...formulas,
    ...rewrittenNames(workbook, id, axis, isInsert, { at, count }),
    ...keptPlacesAfter(workbook, (place) => {
      if (!isSameSheet(place.sheet, sheet.name)) return place;
      const after = rangeAfter({ from: place, to: place }, axis, isInsert, { at, count });
      if (!after) return null;
      return after.from[axis] === place[axis] ? place : { ...place, [axis]: after.from[axis] };
    }),
  ]);
}

const frozenPart = { row: 'rows', column: 'columns' } as const;

/** What stays in sight grows and shrinks with the lines put into it and taken out of it. */
function frozenAfter(
  { id, frozen }: Sheet,
  axis: Axis,
  isInsert: boolean,
  { at, count }: LineChange,
): readonly Change[] {
  if (!frozen) return [];
  const part = frozenPart[axis];
  const inside = Math.max(0, frozen[part] - at);
  if (inside === 0) return [];
  const lines = frozen[part] + (isInsert ? count : -Math.min(inside, count));
  const after = { ...frozen, [part]: Math.min(lines, mostFrozen[axis]) };
  return [{ type: 'frozen', sheet: id, before: frozen, after }];
}

function rewrittenNames(
  workbook: Workbook,
  sheet: string,
  axis: Axis,
  isInsert: boolean,
  lines: LineChange,
): readonly Change[] {
  return Object.entries(workbook.names).flatMap(([name, before]): readonly Change[] => {
    if (before.sheet !== sheet) return [];
    const range = rangeAfter(before.range, axis, isInsert, lines);
    const after: NamedRange | null = range ? { sheet, range } : null;
    if (after && JSON.stringify(after) === JSON.stringify(before)) return [];
    return [{ type: 'name', name, before, after }];
  });
}

function rangeAfter(
  { from, to }: CellRange,
  axis: Axis,
  isInsert: boolean,
  lines: LineChange,
): CellRange | null {
  const after = stretchRule(isInsert, lines)({ first: from[axis], last: to[axis] });
  if (!after) return null;
  return { from: { ...from, [axis]: after.first }, to: { ...to, [axis]: after.last } };
}

function stretchRule(isInsert: boolean, lines: LineChange): (stretch: Stretch) => Stretch | null {
  return (stretch) => (isInsert ? stretchAfterInsert(stretch, lines) : stretchAfterRemove(stretch, lines));
}
