import type { Axis, CellAddress } from '../../base/address.ts';
import { extentOf } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';
import { type Direction, filledEdge, nextTo } from './filled-edge.ts';
import { nextRound } from './round.ts';
import { lastPlace, roundBlock, type Selection } from './selection.ts';

/** What a key means while the grid, not an editor, has the focus. */
export type KeyWish =
  | { readonly type: 'go'; readonly to: CellAddress }
  /** To another cell of what is selected, which stays selected. */
  | { readonly type: 'go_round'; readonly to: CellAddress }
  /** The selection reaches to another corner; the person stays. */
  | { readonly type: 'reach'; readonly to: CellAddress }
  | { readonly type: 'take_lines'; readonly axis: Axis }
  | { readonly type: 'take_all' }
  | { readonly type: 'fill'; readonly direction: 'down' | 'right' }
  /** Means something for whole rows or columns only. */
  | { readonly type: 'insert_lines' | 'remove_lines' }
  /** The same for moving them one on. */
  | { readonly type: 'move_lines'; readonly direction: Direction }
  /** A line of the table like the one where the person is. */
  | { readonly type: 'put_in_line' }
  | { readonly type: 'menu' }
  /** What the cells are, or their note, is to be said in Working. */
  | { readonly type: 'dress'; readonly part: DressPart }
  /** Columns become wider or narrower by so many characters. */
  | { readonly type: 'resize'; readonly by: number }
  | { readonly type: 'edit'; readonly typed: string | null }
  | { readonly type: 'clear' }
  /** The next Tab goes on past the sheet. */
  | { readonly type: 'step_out' }
  | { readonly type: 'leave' };

/** The part of Working that says what cells are for, or the note in it. */
export type DressPart = 'whole' | 'note';

/** What of a key press counts. */
export interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

/** How far the sheet goes. */
export interface Reach {
  /** The last cell of the block that holds everything. */
  readonly lastUsed: CellAddress;
  /** The last used column of a row. */
  readonly lastInRow: (row: number) => number;
  /** Where the run of cells ends in a direction. */
  readonly edge: (from: CellAddress, direction: Direction) => CellAddress;
  /** The last place that a workbook can hold. */
  readonly last: CellAddress;
  readonly rowsPerPage: number;
}

/** A key that types a character on some keyboards only with AltGr arrives as Ctrl and Alt. */
export function plainKey(event: Key & { readonly getModifierState: (name: 'AltGraph') => boolean }): Key {
  const { key, shiftKey, ctrlKey, metaKey, altKey } = event;
  return event.getModifierState('AltGraph')
    ? { key, shiftKey, ctrlKey: false, metaKey, altKey: false }
    : { key, shiftKey, ctrlKey, metaKey, altKey };
}

export function reachOf(sheet: Sheet, rowsPerPage: number): Reach {
  return {
    lastUsed: extentOf(sheet).to,
    lastInRow: (row) =>
      Math.max(
        0,
        (sheet.rows[row] ?? []).findLastIndex((cell) => cell !== null),
      ),
    edge: (from, direction) => filledEdge(sheet, from, direction),
    last: lastPlace,
    rowsPerPage,
  };
}

/** Reads a key pressed on a cell; null where it is nothing to the grid and belongs to the page. */
export function readKey(key: Key, selection: Selection, reach: Reach): KeyWish | null {
  const isCommand = key.ctrlKey || key.metaKey;
  if (key.altKey && !isCommand) return altWish(key);
  const from = key.shiftKey ? selection.head : selection.here;
  const to = moved(key, isCommand, from, reach);
  if (to) return { type: key.shiftKey ? 'reach' : 'go', to: within(to, reach) };
  if (key.key === 'ContextMenu' || (key.key === 'F10' && key.shiftKey)) return { type: 'menu' };
  if (key.key === ' ' && isCommand) return { type: 'take_lines', axis: 'column' };
  if (key.key === ' ' && key.shiftKey) return { type: 'take_lines', axis: 'row' };
  return isCommand ? commandWish(key) : plainWish(key, selection, reach);
}

function altWish({ key, shiftKey }: Key): KeyWish | null {
  if (!shiftKey) return isArrow(key) ? { type: 'move_lines', direction: arrows[key] } : null;
  if (key === 'ArrowDown') return { type: 'put_in_line' };
  if (key === 'ArrowRight') return { type: 'resize', by: 1 };
  return key === 'ArrowLeft' ? { type: 'resize', by: -1 } : null;
}

function commandWish({ key, shiftKey }: Key): KeyWish | null {
  switch (key) {
    case 'a':
    case 'A':
      return shiftKey ? null : { type: 'take_all' };
    case 'd':
    case 'D':
      return shiftKey ? null : { type: 'fill', direction: 'down' };
    case 'r':
    case 'R':
      return shiftKey ? null : { type: 'fill', direction: 'right' };
    case '+':
      return { type: 'insert_lines' };
    case '-':
    case '_':
      return { type: 'remove_lines' };
    default:
      return null;
  }
}

function plainWish(key: Key, selection: Selection, reach: Reach): KeyWish | null {
  switch (key.key) {
    case 'Tab':
      return tab(selection, key.shiftKey, reach);
    case 'Escape':
      return { type: 'step_out' };
    case 'F9':
      return { type: 'dress', part: key.shiftKey ? 'note' : 'whole' };
    case 'Enter':
    case 'F2':
      return { type: 'edit', typed: null };
    case 'Delete':
    case 'Backspace':
      return { type: 'clear' };
    default:
      return key.key.length === 1 ? { type: 'edit', typed: key.key } : null;
  }
}

/** Where a key leads from a cell, which may be off the sheet; null for a key that leads nowhere. */
function moved({ key }: Key, isCommand: boolean, from: CellAddress, reach: Reach): CellAddress | null {
  if (isArrow(key)) return isCommand ? reach.edge(from, arrows[key]) : nextTo(from, arrows[key]);
  switch (key) {
    case 'Home':
      return isCommand ? { row: 0, column: 0 } : { row: from.row, column: 0 };
    case 'End':
      return isCommand ? reach.lastUsed : { row: from.row, column: reach.lastInRow(from.row) };
    case 'PageUp':
      return isCommand ? null : { row: from.row - reach.rowsPerPage, column: from.column };
    case 'PageDown': {
      const row = Math.min(from.row + reach.rowsPerPage, reach.lastUsed.row);
      return isCommand ? null : { row: Math.max(from.row, row), column: from.column };
    }
    default:
      return null;
  }
}

const arrows = { ArrowUp: 'up', ArrowDown: 'down', ArrowLeft: 'left', ArrowRight: 'right' } as const;

function isArrow(key: string): key is keyof typeof arrows {
  return Object.hasOwn(arrows, key);
}

/** Round what is selected; else along the row and on to the next one, and from the very first or last cell out of the grid. */
function tab(selection: Selection, isBack: boolean, { lastUsed }: Reach): KeyWish {
  const from = selection.here;
  const block = roundBlock(selection);
  if (block) return { type: 'go_round', to: nextRound(block, from, isBack ? 'left' : 'right') };
  const column = from.column + (isBack ? -1 : 1);
  if (column >= 0 && column <= lastUsed.column) return go({ row: from.row, column });
  const row = from.row + (isBack ? -1 : 1);
  if (row < 0 || row > lastUsed.row) return { type: 'leave' };
  return go({ row, column: isBack ? lastUsed.column : 0 });
}

export function within({ row, column }: CellAddress, { last }: Pick<Reach, 'last'>): CellAddress {
  return {
    row: Math.max(0, Math.min(row, last.row)),
    column: Math.max(0, Math.min(column, last.column)),
  };
}

function go(to: CellAddress): KeyWish {
  return { type: 'go', to };
}
