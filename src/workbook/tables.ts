import { limits } from '../formula/limits.ts';
import { cellAt } from './cells.ts';
import { isFormula, type Sheet } from './document.ts';

/** A table of a sheet: a row of headings and the lines under it. */
export interface Table {
  readonly headingRow: number;
  /** The columns that take what a person fills in; figured ones are left out. */
  readonly columns: readonly TableColumn[];
  /** The first line under the headings. */
  readonly firstRow: number;
  /** How many lines there is room for: those that are set up, or down to what stands below. */
  readonly room: number;
}

export interface TableColumn {
  readonly column: number;
  readonly name: string;
}

/** Every table of a sheet that takes anything, from the top. */
export function tablesOf(sheet: Sheet): readonly Table[] {
  return sheet.rows.flatMap((_, row) => {
    const table = tableAt(sheet, row);
    return table ? [table] : [];
  });
}

/** The first line after all that is filled in already, counted from the first one. */
export function firstFreeLine(sheet: Sheet, { columns, firstRow, room }: Table): number {
  for (let line = Math.min(room, sheet.rows.length - firstRow) - 1; line >= 0; line -= 1) {
    const isFilled = columns.some(({ column }) => {
      const cell = cellAt(sheet, { row: firstRow + line, column });
      return cell !== null && cell.content !== null && !isFormula(cell.content);
    });
    if (isFilled) return line + 1;
  }
  return 0;
}

function tableAt(sheet: Sheet, headingRow: number): Table | null {
  const headings = (sheet.rows[headingRow] ?? []).flatMap((cell, column) =>
    cell?.role === 'heading' && typeof cell.content === 'string' ? [{ column, name: cell.content }] : [],
  );
  if (headings.length < 2) return null;
  const firstRow = headingRow + 1;
  const lines = linesBelow(sheet, firstRow);
  const setUp = sheet.rows.slice(firstRow, firstRow + lines);
  const isForm = setUp.some((row) => headings.some(({ column }) => row[column]?.role === 'given'));
  const columns = headings.filter(({ column }) => {
    if (isForm) return setUp.some((row) => row[column]?.role === 'given');
    return !setUp.some((row) => isFormula(row[column]?.content ?? null));
  });
  if (columns.length === 0) return null;
  return { headingRow, columns, firstRow, room: isForm ? lines : roomBelow(sheet, firstRow) };
}

/** Lines down to an empty row or to the next headings. */
function linesBelow(sheet: Sheet, firstRow: number): number {
  const rows = sheet.rows.slice(firstRow);
  const end = rows.findIndex((row) => row.every((cell) => cell === null) || isHeadingRow(row));
  return end < 0 ? rows.length : end;
}

/** A table that nobody has set up ends before the next headings; with nothing below, only the sheet ends it. */
function roomBelow(sheet: Sheet, firstRow: number): number {
  const next = sheet.rows.slice(firstRow).findIndex(isHeadingRow);
  return next < 0 ? limits.rows - firstRow : next;
}

function isHeadingRow(row: Sheet['rows'][number]): boolean {
  return row.some((cell) => cell?.role === 'heading');
}
