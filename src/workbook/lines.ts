import type { Axis } from '../base/address.ts';
import { lineAfterMove, type Move } from '../formula/stretch.ts';
import type { Cell, Column, Sheet } from './document.ts';

/** One whole row, or one whole column with what the sheet knows of it. */
export interface Line {
  readonly cells: readonly (Cell | null)[];
  /** Of a column only, and only where the sheet has one. */
  readonly column?: Column;
  /** Of a row only: it is not shown. */
  readonly hidden?: true;
}

export const emptyLine: Line = { cells: [] };

/** The lines that stand on a sheet from a place on; lines past its end are empty. */
export function linesOf(sheet: Sheet, axis: Axis, at: number, count: number): readonly Line[] {
  return Array.from({ length: count }, (_, index) => {
    const place = at + index;
    if (axis === 'row') {
      const hidden = sheet.hiddenRows?.includes(place) ?? false;
      return { cells: sheet.rows[place] ?? [], ...(hidden ? { hidden } : {}) };
    }
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
    return withHiddenRows({ ...sheet, rows }, hiddenRowsAfter(sheet, change));
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

/** The sheet with some of its lines taken up and put in elsewhere. */
export function withLinesElsewhere(sheet: Sheet, { axis, count, before, after }: LinesElsewhere): Sheet {
  const move = moveOf({ count, before, after });
  const along = <One>(ones: readonly One[], none: One): readonly One[] => {
    if (ones.length <= Math.min(before, after)) return ones;
    const moved = [...ones];
    while (moved.length < Math.max(before, after) + count) moved.push(none);
    moved.splice(after, 0, ...moved.splice(before, count));
    return moved;
  };
  if (axis === 'column') {
    const rows = sheet.rows.map((row) => trimmed(along(row, null)));
    return { ...sheet, rows, columns: along(sheet.columns, usualColumn) };
  }
  const hidden = (sheet.hiddenRows ?? []).map((row) => lineAfterMove(row, move));
  return withHiddenRows(
    { ...sheet, rows: along(sheet.rows, []) },
    hidden.sort((one, other) => one - other),
  );
}

export interface LinesElsewhere {
  readonly axis: Axis;
  readonly count: number;
  /** The first of the lines, before and after. */
  readonly before: number;
  readonly after: number;
}

/** The same as the reference layer reads it: put before a line that is counted before the move. */
export function moveOf({ count, before, after }: Omit<LinesElsewhere, 'axis'>): Move {
  return { at: before, count, to: after > before ? after + count : after };
}

/** Rows that are not shown go along with what stands in them. */
function hiddenRowsAfter(
  { hiddenRows = [] }: Sheet,
  {
    at,
    before,
    after,
  }: { readonly at: number; readonly before: readonly Line[]; readonly after: readonly Line[] },
): readonly number[] {
  const end = at + before.length;
  return [
    ...hiddenRows.filter((row) => row < at),
    ...after.flatMap((line, index) => (line.hidden ? [at + index] : [])),
    ...hiddenRows.filter((row) => row >= end).map((row) => row - before.length + after.length),
  ];
}

/** The sheet with these of its rows not shown, and no others. */
export function withHiddenRows({ hiddenRows: _before, ...sheet }: Sheet, rows: readonly number[]): Sheet {
  return rows.length === 0 ? sheet : { ...sheet, hiddenRows: rows };
}

/** The sheet with another look of one of its columns. */
export function withColumn(sheet: Sheet, at: number, column: Column): Sheet {
  const columns = [...sheet.columns];
  while (columns.length <= at) columns.push(usualColumn);
  columns[at] = column;
  return { ...sheet, columns };
}

export function columnAt(sheet: Sheet, at: number): Column {
  return sheet.columns[at] ?? usualColumn;
}

export const usualColumn: Column = { width: 12 };

function trimmed(cells: readonly (Cell | null)[]): readonly (Cell | null)[] {
  return cells.slice(0, cells.findLastIndex((cell) => cell !== null) + 1);
}
