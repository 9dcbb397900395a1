import type { Row, Sheet } from './document.ts';

/** For each row, and for the one after the last: the nearest row above that is empty, and the nearest with a heading.
 *  -1 where there is none. */
export interface RowsAbove {
  readonly emptyAbove: Int32Array;
  readonly headingsAbove: Int32Array;
}

const known = new WeakMap<Sheet['rows'], RowsAbove>();

/** Looked for once, since every cell that is painted asks for its heading. */
export function rowsAbove(rows: Sheet['rows']): RowsAbove {
  const before = known.get(rows);
  if (before) return before;
  const emptyAbove = new Int32Array(rows.length + 1).fill(-1);
  const headingsAbove = new Int32Array(rows.length + 1).fill(-1);
  for (const [at, row] of rows.entries()) {
    const kind = kindOf(row);
    emptyAbove[at + 1] = kind === 'empty' ? at : (emptyAbove[at] ?? -1);
    headingsAbove[at + 1] = kind === 'headings' ? at : (headingsAbove[at] ?? -1);
  }
  const found = { emptyAbove, headingsAbove };
  known.set(rows, found);
  return found;
}

type RowKind = 'empty' | 'headings' | 'other';

const kinds = new WeakMap<Row, RowKind>();

function kindOf(row: Row): RowKind {
  const before = kinds.get(row);
  if (before) return before;
  let kind: RowKind = 'empty';
  for (const cell of row) {
    if (!cell) continue;
    kind = cell.role === 'heading' ? 'headings' : 'other';
    if (kind === 'headings') break;
  }
  kinds.set(row, kind);
  return kind;
}
