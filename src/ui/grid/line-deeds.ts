import type { Axis, CellRange } from '../../base/address.ts';
import type { LinesCommand } from '../../workbook/command/lines.ts';
import { isWhole, linesWords } from './selection.ts';

/** Something that can be done to whole rows or columns, as the person reads it. */
export interface LineDeed {
  readonly says: string;
  readonly command: LinesCommand;
}

const sides = { row: ['above', 'below'], column: ['to the left', 'to the right'] } as const;

/** What can be done to the rows or columns that a range touches. */
export function lineDeeds(sheet: string, { from, to }: CellRange, axis: Axis): readonly LineDeed[] {
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

/** What a menu offers on a range: deeds on its rows and on its columns, for whole rows or columns only their own. */
export function lineDeedGroups(sheet: string, range: CellRange): readonly (readonly LineDeed[])[] {
  return [
    ...(isWhole(range, 'column') ? [] : [lineDeeds(sheet, range, 'row')]),
    ...(isWhole(range, 'row') ? [] : [lineDeeds(sheet, range, 'column')]),
  ];
}
