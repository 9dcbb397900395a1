import type { Axis, CellRange } from '../../base/address.ts';
import { lineAfterMove } from '../../formula/stretch.ts';
import type { MoveLinesCommand } from '../../workbook/command/move-lines.ts';
import { isHidden } from '../../workbook/command/sight.ts';
import type { Sheet } from '../../workbook/document.ts';
import { type Drop, dropAt } from './drop.ts';
import type { Direction } from './filled-edge.ts';
import { isWhole, lastPlace, linesWords, type Selection } from './selection.ts';

/** A way to move the rows or columns of a range, as the person reads it. */
export interface MoveDeed {
  readonly says: string;
  readonly key?: string;
  readonly command: MoveLinesCommand;
}

const ways = {
  row: [
    { direction: 'up', says: 'up', key: 'Alt+↑' },
    { direction: 'down', says: 'down', key: 'Alt+↓' },
  ],
  column: [
    { direction: 'left', says: 'to the left', key: 'Alt+←' },
    { direction: 'right', says: 'to the right', key: 'Alt+→' },
  ],
} as const;

/** The moves that a menu offers for the rows or columns of a range. Keys mean whole ones only. */
export function moveDeeds(sheet: Sheet, range: CellRange, axis: Axis): readonly MoveDeed[] {
  return ways[axis].flatMap(({ direction, says, key }): readonly MoveDeed[] => {
    const command = moveOneOn(sheet, range, direction);
    if (!command) return [];
    const lines = linesWords(axis, range.from[axis], range.to[axis]);
    return [{ says: `Move ${lines} ${says}`, ...(isWhole(range, axis) ? { key } : {}), command }];
  });
}

/** Past the next line that shows; null at the end of the sheet. */
export function moveOneOn(sheet: Sheet, range: CellRange, direction: Direction): MoveLinesCommand | null {
  const axis = axisOf(direction);
  const isBack = direction === 'up' || direction === 'left';
  const step = isBack ? -1 : 1;
  let at = isBack ? range.from[axis] - 1 : range.to[axis] + 1;
  while (at >= 0 && isHidden(sheet, axis, at)) at += step;
  return at < 0 || at > lastPlace[axis] ? null : moveBeside(sheet, range, dropAt(range, axis, at));
}

export function axisOf(direction: Direction): Axis {
  return direction === 'up' || direction === 'down' ? 'row' : 'column';
}

export function moveBeside(
  sheet: Sheet,
  { from, to }: CellRange,
  drop: Drop | null,
): MoveLinesCommand | null {
  if (!drop) return null;
  const { axis, at, side } = drop;
  return {
    type: 'move_lines',
    sheet: sheet.id,
    axis,
    at: from[axis],
    count: to[axis] - from[axis] + 1,
    to: side === 'before' ? at : at + 1,
  };
}

/** The same lines are selected where they have gone. */
export function selectionAfterMove(
  { here, head }: Selection,
  { axis, ...move }: MoveLinesCommand,
): Selection {
  const by = lineAfterMove(move.at, move) - move.at;
  return {
    here: { ...here, [axis]: here[axis] + by },
    head: { ...head, [axis]: head[axis] + by },
  };
}
