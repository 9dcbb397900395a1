import type { CellAddress } from '../../base/address.ts';

/** What a key means while the grid, not an editor, has the focus. */
export type KeyWish =
  | { readonly type: 'go'; readonly to: CellAddress }
  | { readonly type: 'edit'; readonly typed: string | null }
  | { readonly type: 'clear' }
  /** The next Tab goes on past the sheet. */
  | { readonly type: 'step_out' }
  | { readonly type: 'leave' };

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
  /** The last used column of the row where the person is. */
  readonly lastInRow: number;
  /** The last place that a workbook can hold. */
  readonly last: CellAddress;
  readonly rowsPerPage: number;
}

/** Reads a key pressed on a cell; null where it is nothing to the grid and belongs to the page. */
export function readKey(key: Key, from: CellAddress, reach: Reach): KeyWish | null {
  const isCommand = key.ctrlKey || key.metaKey;
  if (key.altKey && !isCommand) return null;
  if (isCommand) return isCommandMove(key.key) ? go(commandMove(key.key, reach)) : null;
  switch (key.key) {
    case 'Tab':
      return tab(from, key.shiftKey, reach);
    case 'Escape':
      return { type: 'step_out' };
    case 'Enter':
    case 'F2':
      return { type: 'edit', typed: null };
    case 'Delete':
    case 'Backspace':
      return { type: 'clear' };
    default:
      return isMove(key.key)
        ? go(within(moves[key.key](from, reach), reach))
        : key.key.length === 1
          ? { type: 'edit', typed: key.key }
          : null;
  }
}

const moves = {
  ArrowUp: ({ row, column }: CellAddress) => ({ row: row - 1, column }),
  ArrowDown: ({ row, column }: CellAddress) => ({ row: row + 1, column }),
  ArrowLeft: ({ row, column }: CellAddress) => ({ row, column: column - 1 }),
  ArrowRight: ({ row, column }: CellAddress) => ({ row, column: column + 1 }),
  PageUp: ({ row, column }: CellAddress, { rowsPerPage }: Reach) => ({ row: row - rowsPerPage, column }),
  PageDown: ({ row, column }: CellAddress, { rowsPerPage, lastUsed }: Reach) => ({
    row: Math.max(row, Math.min(row + rowsPerPage, lastUsed.row)),
    column,
  }),
  Home: ({ row }: CellAddress) => ({ row, column: 0 }),
  End: ({ row }: CellAddress, { lastInRow }: Reach) => ({ row, column: lastInRow }),
} as const;

function isMove(key: string): key is keyof typeof moves {
  return Object.hasOwn(moves, key);
}

function isCommandMove(key: string): key is 'Home' | 'End' {
  return key === 'Home' || key === 'End';
}

function commandMove(key: 'Home' | 'End', { lastUsed }: Reach): CellAddress {
  return key === 'Home' ? { row: 0, column: 0 } : lastUsed;
}

/** Along the row and on to the next one; from the very first or last cell out of the grid. */
function tab(from: CellAddress, isBack: boolean, { lastUsed }: Reach): KeyWish {
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
