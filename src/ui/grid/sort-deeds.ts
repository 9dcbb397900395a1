import type { CellRange } from '../../base/address.ts';
import type { SortCommand } from '../../workbook/command/sort.ts';
import type { Sheet } from '../../workbook/document.ts';
import { orderBy, tableColumnName } from '../../workbook/row-order.ts';
import { rowsAround } from '../../workbook/table-rows.ts';
import type { Values } from '../../workbook/values.ts';
import { isWhole, linesWords } from './selection.ts';

/** A way to put the rows of a table in order, as the person reads it. */
export interface SortDeed {
  readonly says: string;
  readonly command: SortCommand;
}

/** The rows of the table around a single column of cells, put in order by that column. */
export function sortDeeds(sheet: Sheet, values: Values, { from, to }: CellRange): readonly SortDeed[] {
  const column = from.column;
  if (column !== to.column) return [];
  const isWholeColumn = isWhole({ from, to }, 'column');
  const heading = isWholeColumn ? sheet.rows.findIndex((row) => row[column]?.role === 'heading') : from.row;
  const rows = rowsAround(sheet, { row: Math.max(0, heading), column });
  if (!rows) return [];
  const name = tableColumnName(sheet, rows, column) || linesWords('column', column, column);
  return (['rising', 'falling'] as const).map((direction) => ({
    says: `Sort ${linesWords('row', rows.from.row, rows.to.row)} by ${name}, ${direction}`,
    command: {
      type: 'sort_rows',
      sheet: sheet.id,
      range: rows,
      order: orderBy(sheet, values, rows, column, direction),
    },
  }));
}
