import type { Axis } from '../base/address.ts';
import type { Cell, Sheet } from './document.ts';

/** One whole row, or one whole column with what the sheet knows of it. */
export interface Line {
  readonly cells: readonly (Cell | null)[];
  /** Of a column only, and only where the sheet has one. */
  readonly column?: Sheet['columns'][number];
}

export const emptyLine: Line = { cells: [] };

/** The lines that stand on a sheet from a place on; lines past its end are empty. */
export function linesOf(sheet: Sheet, axis: Axis, at: number, count: number): readonly Line[] {
  return Array.from({ length: count }, (_, index) => {
    const place = at + index;
    if (axis === 'row') return { cells: sheet.rows[place] ?? [] };
    const column = sheet.columns[place];
    return {
      cells: trimmed(sheet.rows.map((row) => row[place] ?? null)),
      ...(column ? { column } : {}),
    };
  });
}

/** The sheet with some lines in place of others. */
export function withLines(
  sheet: Sheet,
  change: {
    readonly axis: Axis;
    readonly at: number;
    readonly before: readonly Line[];
    readonly after: readonly Line[];
  },
): Sheet {
  const { axis, at, before, after } = change;
  if (axis === 'row') {
    const rows = [...sheet.rows];
    while (rows.length < at) rows.push([]);
    rows.splice(at, before.length, ...after.map((line) => line.cells));
    return { ...sheet, rows };
  }
  const height = Math.max(sheet.rows.length, ...after.map((line) => line.cells.length));
  const rows = Array.from({ length: height }, (_, index) => {
    const row: (Cell | null)[] = [...(sheet.rows[index] ?? [])];
    const put = after.map((line) => line.cells[index] ?? null);
    if (row.length <= at && put.every((cell) => cell === null)) return row;
    while (row.length < at) row.push(null);
    row.splice(at, before.length, ...put);
    return row;
  });
  const columns = [...sheet.columns];
  if (at < columns.length || after.some((line) => line.column)) {
    while (columns.length < at) columns.push(usualColumn);
    columns.splice(at, before.length, ...after.map((line) => line.column ?? usualColumn));
  }
  return { ...sheet, rows, columns };
}

const usualColumn = { width: 12 };

function trimmed(cells: readonly (Cell | null)[]): readonly (Cell | null)[] {
  return cells.slice(0, cells.findLastIndex((cell) => cell !== null) + 1);
}
