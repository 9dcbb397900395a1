import type { Axis, CellRange } from '../../base/address.ts';
import type { LinesCommand } from '../../workbook/command/lines.ts';
import type { MoveLinesCommand } from '../../workbook/command/move-lines.ts';
import { isHidden, mostFrozen, type SightCommand } from '../../workbook/command/sight.ts';
import { type Sheet, usuallyFrozen } from '../../workbook/document.ts';
import { moveDeeds } from './move-deeds.ts';
import { isWhole, linesWords } from './selection.ts';

/** As wide as what stands in the columns; the widths are measured when it is asked for. */
export interface FitWish {
  readonly type: 'fit_columns';
  readonly at: number;
  readonly count: number;
}

/** Something that can be done to whole rows or columns, as the person reads it. */
export interface LineDeed {
  readonly says: string;
  readonly key?: string;
  readonly command: LinesCommand | MoveLinesCommand | SightCommand | FitWish;
}

const sides = { row: ['above', 'below'], column: ['to the left', 'to the right'] } as const;

/** What can be put in or taken out at the rows or columns that a range touches. */
export function lineDeeds(
  sheet: string,
  { from, to }: CellRange,
  axis: Axis,
): readonly (LineDeed & { readonly command: LinesCommand })[] {
  const count = to[axis] - from[axis] + 1;
  const lines = count === 1 ? `a ${axis}` : `${count} ${axis}s`;
  const [before, after] = sides[axis];
  const put = (at: number): LinesCommand => ({ type: 'insert_lines', sheet, axis, at, count });
  return [
    { says: `Put in ${lines} ${before}`, command: put(from[axis]) },
    { says: `Put in ${lines} ${after}`, command: put(to[axis] + 1) },
    {
      says: `Take out ${linesWords(axis, from[axis], to[axis])}`,
      command: { type: 'remove_lines', sheet, axis, at: from[axis], count },
    },
  ];
}

/** What can be done to how the rows or columns of a range are seen. */
export function sightDeeds(sheet: Sheet, { from, to }: CellRange, axis: Axis): readonly LineDeed[] {
  const at = from[axis];
  const count = to[axis] - at + 1;
  const words = linesWords(axis, at, to[axis]);
  const fit: LineDeed = { says: `Fit ${words} to the words`, command: { type: 'fit_columns', at, count } };
  const hide: LineDeed = {
    says: `Hide ${words}`,
    command: { type: 'hide_lines', sheet: sheet.id, axis, at, count },
  };
  return [
    ...(axis === 'column' ? [fit] : []),
    hide,
    ...hiddenDeeds(sheet, axis, at, to[axis]),
    ...frozenDeeds(sheet, axis, to[axis] + 1),
  ];
}

/** Hidden ones in the range or right beside it are offered to be shown. */
function hiddenDeeds(sheet: Sheet, axis: Axis, from: number, to: number): readonly LineDeed[] {
  let first = from;
  while (first > 0 && isHidden(sheet, axis, first - 1)) first -= 1;
  let last = to;
  while (isHidden(sheet, axis, last + 1)) last += 1;
  const hidden = Array.from({ length: last - first + 1 }, (_, index) => first + index).filter((line) =>
    isHidden(sheet, axis, line),
  );
  const [start] = hidden;
  const end = hidden.at(-1);
  if (start === undefined || end === undefined) return [];
  const command = { type: 'show_lines', sheet: sheet.id, axis, at: start, count: end - start + 1 } as const;
  return [{ says: `Show ${linesWords(axis, start, end)}`, command }];
}

function frozenDeeds(sheet: Sheet, axis: Axis, lines: number): readonly LineDeed[] {
  const now = sheet.frozen ?? usuallyFrozen;
  const part = axis === 'row' ? 'rows' : 'columns';
  const freeze = (count: number): SightCommand => ({
    type: 'freeze',
    sheet: sheet.id,
    ...now,
    [part]: count,
  });
  const isKept = now[part] === lines;
  return [
    ...(isKept || lines > mostFrozen[axis]
      ? []
      : [{ says: `Keep ${linesWords(axis, 0, lines - 1)} in sight`, command: freeze(lines) }]),
    ...(now[part] > 0 ? [{ says: `Let all ${part} scroll`, command: freeze(0) }] : []),
  ];
}

/** What a menu offers on a range: deeds on its rows and on its columns, for whole rows or columns only their own. */
export function lineDeedGroups(sheet: Sheet, range: CellRange): readonly (readonly LineDeed[])[] {
  return [
    ...(isWhole(range, 'column')
      ? []
      : [
          [...lineDeeds(sheet.id, range, 'row'), ...moveDeeds(sheet, range, 'row')],
          sightDeeds(sheet, range, 'row'),
        ]),
    ...(isWhole(range, 'row')
      ? []
      : [
          sightDeeds(sheet, range, 'column'),
          [...moveDeeds(sheet, range, 'column'), ...lineDeeds(sheet.id, range, 'column')],
        ]),
  ];
}
