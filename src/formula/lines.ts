import type { Corner, Reference } from './expression.ts';
import { limits } from './limits.ts';
import { type Rewriting, rewritten } from './rewrite.ts';
import {
  type Change,
  type Move,
  type Stretch,
  stretchAfterInsert,
  stretchAfterMove,
  stretchAfterRemove,
} from './stretch.ts';

/** Rows or columns that come or go on a sheet. */
export interface Lines extends Change {
  /** The sheet that holds the formula. */
  readonly ownSheet: string;
  readonly sheet: string;
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

/** Every reference goes with the cells that it read; a block of cells as `stretchAfterMove` says. */
export function afterMoveLines(text: string, lines: Lines & Move, axis: Axis): string {
  return alongAxis(text, lines, axis, (stretch) => stretchAfterMove(stretch, lines));
}

type Axis = 'row' | 'column';

function inserted(text: string, lines: Lines, axis: Axis): string {
  const most = axis === 'row' ? limits.rows : limits.columns;
  return alongAxis(text, lines, axis, (stretch) => {
    const after = stretchAfterInsert(stretch, lines);
    return after.last < most ? after : null;
  });
}

function removed(text: string, lines: Lines, axis: Axis): string {
  return alongAxis(text, lines, axis, (stretch) => stretchAfterRemove(stretch, lines));
}

function alongAxis(
  text: string,
  where: { readonly ownSheet: string; readonly sheet: string },
  axis: Axis,
  change: (stretch: Stretch) => Stretch | null,
): string {
  return rewritten(text, (reference): Rewriting => {
    if (reference.type === 'name' || !isOn(reference, where)) return null;
    const [start, end] =
      reference.type === 'cell' ? [reference, reference] : [reference.start, reference.end];
    const before = { first: Math.min(start[axis], end[axis]), last: Math.max(start[axis], end[axis]) };
    const result = change(before);
    if (result === null) return { type: 'gone' };
    if (result.first === before.first && result.last === before.last) return null;
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
