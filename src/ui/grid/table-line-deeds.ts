import type { CellAddress, CellRange } from '../../base/address.ts';
import { type TableLineCommand, tablesThrough } from '../../workbook/command/table-line.ts';
import type { Sheet, Workbook } from '../../workbook/document.ts';
import { isWhole } from './selection.ts';

/** A line of a table put in or taken out, with the same line of the tables that follow, as the person reads it. */
export interface TableLineDeed {
  readonly says: string;
  readonly key?: string;
  readonly command: TableLineCommand;
}

/** For one row at a time. Without tables that follow, taking a line out is taking out its row. */
export function tableLineDeeds(workbook: Workbook, sheet: Sheet, range: CellRange): readonly TableLineDeed[] {
  const address = lineAt(sheet, range);
  if (!address) return [];
  const tables = tablesThrough(workbook, sheet, address);
  if (tables.length === 0) return [];
  const others = tables
    .filter((one) => one.sheet !== sheet.id)
    .map((one) => workbook.sheets.find(({ id }) => id === one.sheet)?.name ?? '');
  const too = others.length === 0 ? '' : `, ${where(others)} too`;
  const row = `row ${address.row + 1}`;
  const command = (type: TableLineCommand['type']): TableLineCommand => ({ type, sheet: sheet.id, address });
  return [
    { says: `Put in a line like ${row}${too}`, key: 'Alt+Shift+↓', command: command('put_in_line') },
    ...(others.length > 0 ? [{ says: `Take out ${row}${too}`, command: command('take_out_line') }] : []),
  ];
}

/** The cell of a single row that says which of its tables is meant: the first one that is filled, in a whole row. */
export function lineAt(sheet: Sheet, range: CellRange): CellAddress | null {
  const { from, to } = range;
  if (from.row !== to.row) return null;
  if (!isWhole(range, 'row')) return from;
  const column = (sheet.rows[from.row] ?? []).findIndex((cell) => cell !== null);
  return column < 0 ? null : { row: from.row, column };
}

function where(sheets: readonly string[]): string {
  return sheets.length > 2 ? `on ${sheets.length} other sheets` : `on ${sheets.join(' and ')}`;
}
