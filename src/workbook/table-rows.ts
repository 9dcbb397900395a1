import type { CellAddress, CellRange } from '../base/address.ts';
import { referencesIn } from '../formula/references.ts';
import { cellAt } from './cells.ts';
import { type Cell, isFormula, type Sheet } from './document.ts';

/** The rows that can be put in order around a cell: those of its table, without headings above, set as such or only typed,
 *  and without totals below. Null where there are not two of them. */
export function rowsAround(sheet: Sheet, { row, column }: CellAddress): CellRange | null {
  const isRow = (at: number) => {
    const cells = sheet.rows[at] ?? [];
    return cells.some((cell) => cell !== null) && !cells.some((cell) => cell?.role === 'heading');
  };
  let first = cellAt(sheet, { row, column })?.role === 'heading' ? row + 1 : row;
  if (!isRow(first)) return null;
  let last = first;
  while (isRow(first - 1)) first -= 1;
  while (isRow(last + 1)) last += 1;
  const isColumn = (at: number) =>
    at >= 0 &&
    sheet.rows.slice(Math.max(0, first - 1), last + 1).some((cells) => (cells[at] ?? null) !== null);
  if (!isColumn(column)) return null;
  let [left, right] = [column, column];
  while (isColumn(left - 1)) left -= 1;
  while (isColumn(right + 1)) right += 1;
  while (last > first && isTotal(sheet, last, first)) last -= 1;
  if (isTypedHeading(sheet, { from: { row: first, column: left }, to: { row: last, column: right } }))
    first += 1;
  if (last === first) return null;
  return { from: { row: first, column: left }, to: { row: last, column: right } };
}

/** Whether the first row of a block is plain words over a column of something else: headings that nobody has set as such. */
export function isTypedHeading({ rows }: Sheet, { from, to }: CellRange): boolean {
  const columns = Array.from({ length: to.column - from.column + 1 }, (_, at) => from.column + at);
  const heads = columns.map((column) => rows[from.row]?.[column] ?? null);
  if (!heads.some(isPlainWords) || !heads.every((cell) => cell === null || isPlainWords(cell))) return false;
  return columns.some((column, at) => {
    if (!isPlainWords(heads[at] ?? null)) return false;
    const below = rows.slice(from.row + 1, to.row + 1).flatMap((cells) => cells[column] ?? []);
    return below.length > 0 && !below.some(isPlainWords);
  });
}

function isPlainWords(cell: Cell | null): boolean {
  return cell?.role === 'text' && typeof cell.content === 'string';
}

/** A row that reads blocks of the rows above it sums them up, and stays below them. */
function isTotal(sheet: Sheet, row: number, first: number): boolean {
  return (sheet.rows[row] ?? []).some((cell, column) => {
    if (!cell || !isFormula(cell.content)) return false;
    return referencesIn(cell.content.formula).some(
      (one) =>
        one.type === 'range' &&
        (one.sheet === null || one.sheet.toLowerCase() === sheet.name.toLowerCase()) &&
        one.start.row !== one.end.row &&
        Math.min(one.start.row, one.end.row) >= first &&
        Math.max(one.start.row, one.end.row) < row &&
        !isRunning(sheet, row, column, Math.max(one.start.row, one.end.row)),
    );
  });
}

/** Whether the formula above takes in one row less: then each line takes in those before it, and none is a total. */
function isRunning(sheet: Sheet, row: number, column: number, last: number): boolean {
  const above = cellAt(sheet, { row: row - 1, column });
  if (!above || !isFormula(above.content)) return false;
  return referencesIn(above.content.formula).some(
    (one) => one.type === 'range' && Math.max(one.start.row, one.end.row) === last - 1,
  );
}
