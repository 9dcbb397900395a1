import type { Corner, Reference } from './expression.ts';
import { limits } from './limits.ts';
import { type Rewriting, rewritten } from './rewrite.ts';

/** Rows or columns that come or go: on which sheet, from which one on (counted from 0), and how many. */
export interface Lines {
  /** The sheet that holds the formula. */
  readonly ownSheet: string;
  readonly sheet: string;
  readonly at: number;
  readonly count: number;
}

export function afterInsertRows(text: string, lines: Lines): string {
  return inserted(text, lines, 'row');
}

export function afterInsertColumns(text: string, lines: Lines): string {
  return inserted(text, lines, 'column');
}

export function afterRemoveRows(text: string, lines: Lines): string {
  return removed(text, lines, 'row');
}

export function afterRemoveColumns(text: string, lines: Lines): string {
  return removed(text, lines, 'column');
}

type Axis = 'row' | 'column';

/** A block grows when lines are put inside it; it moves when they are put before it. */
function inserted(text: string, { at, count, ...where }: Lines, axis: Axis): string {
  const most = axis === 'row' ? limits.rows : limits.columns;
  return alongAxis(text, where, axis, (first, last) => {
    if (last < at) return 'same';
    const moved = { first: first >= at ? first + count : first, last: last + count };
    return moved.last < most ? moved : 'gone';
  });
}

/** A block loses the lines that go; when all go, the reference is gone. */
function removed(text: string, { at, count, ...where }: Lines, axis: Axis): string {
  const after = at + count;
  return alongAxis(text, where, axis, (first, last) => {
    if (last < at) return 'same';
    if (first >= at && last < after) return 'gone';
    return {
      first: first >= after ? first - count : Math.min(first, at),
      last: last >= after ? last - count : at - 1,
    };
  });
}

type Stretch = { readonly first: number; readonly last: number };

function alongAxis(
  text: string,
  where: { readonly ownSheet: string; readonly sheet: string },
  axis: Axis,
  change: (first: number, last: number) => Stretch | 'same' | 'gone',
): string {
  return rewritten(text, (reference): Rewriting => {
    if (reference.type === 'name' || !isOn(reference, where)) return null;
    const start = reference.type === 'cell' ? reference : reference.start;
    const end = reference.type === 'cell' ? reference : reference.end;
    const result = change(Math.min(start[axis], end[axis]), Math.max(start[axis], end[axis]));
    if (result === 'same') return null;
    if (result === 'gone') return { type: 'gone' };
    const isBackward = start[axis] > end[axis];
    return {
      type: 'cells',
      sheet: reference.sheet,
      start: along(start, axis, isBackward ? result.last : result.first),
      end: along(end, axis, isBackward ? result.first : result.last),
    };
  });
}

function along(corner: Corner, axis: Axis, to: number): Corner {
  return axis === 'row' ? { ...corner, row: to } : { ...corner, column: to };
}

function isOn(
  reference: Exclude<Reference, { type: 'name' }>,
  { ownSheet, sheet }: { readonly ownSheet: string; readonly sheet: string },
): boolean {
  return (reference.sheet ?? ownSheet).toLowerCase() === sheet.toLowerCase();
}
