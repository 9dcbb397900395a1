import { cellAt } from '../../workbook/cells.ts';
import { type Cell, isFormula, type Sheet } from '../../workbook/document.ts';
import type { AllowanceTable } from './rows.ts';

/** The rows of a table under its headings. */
export function linesOf({ range }: AllowanceTable): readonly number[] {
  return Array.from({ length: range.to.row - range.from.row }, (_, at) => range.from.row + 1 + at);
}

/** What a line is called by. */
export function keyCell(sheet: Sheet, { range }: AllowanceTable, row: number): Cell | null {
  return cellAt(sheet, { row, column: range.from.column });
}

/** Nothing is filled in on the line, its name included. */
export function isFree(sheet: Sheet, table: AllowanceTable, row: number): boolean {
  if (!takesContent(keyCell(sheet, table, row))) return false;
  return table.columns.every(({ column }) => {
    const content = cellAt(sheet, { row, column })?.content ?? null;
    return content === null || isFormula(content);
  });
}

/** Whether a figure or words can be written there. */
export function takesContent(cell: Cell | null): boolean {
  return cell === null || !(isFormula(cell.content) || cell.role === 'check' || cell.role === 'heading');
}
