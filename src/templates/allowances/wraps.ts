import type { CellAddress } from '../../base/address.ts';
import { cellAt, sheetWithId } from '../../workbook/cells.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../../workbook/document.ts';
import { namedBlock } from '../../workbook/order.ts';

/** The table of wraps of a workbook, the block named `wraps`: a row of headings, then one wrap to a row. */
export interface WrapTable {
  readonly sheet: Sheet;
  readonly headingRow: number;
  readonly columns: readonly { readonly column: number; readonly heading: string }[];
  readonly wraps: readonly WrapRow[];
}

export interface WrapRow {
  readonly row: number;
  readonly name: string;
  /** What can be filled in, from left to right; the name comes first. */
  readonly fields: readonly WrapField[];
}

export interface WrapField {
  readonly heading: string;
  readonly address: CellAddress;
  readonly cell: Cell;
}

/** Null where the workbook has no such table. */
export function wrapTable(workbook: Workbook): WrapTable | null {
  const block = namedBlock(workbook, 'wraps');
  const sheet = block ? sheetWithId(workbook, block.sheet) : undefined;
  if (!block || !sheet) return null;
  const { from, to } = block.range;
  const columns = Array.from({ length: to.column - from.column + 1 }, (_, at) => from.column + at).map(
    (column) => ({
      column,
      heading: String(cellAt(sheet, { row: from.row, column })?.content ?? ''),
    }),
  );
  const rows = Array.from({ length: to.row - from.row }, (_, at) => from.row + 1 + at);
  const nameAt = (row: number) => {
    const content = cellAt(sheet, { row, column: from.column })?.content;
    return typeof content === 'string' ? content.trim() : '';
  };
  const wraps = rows.flatMap((row): readonly WrapRow[] => {
    const name = nameAt(row);
    if (name === '') return [];
    const fields = columns.flatMap(({ column, heading }): readonly WrapField[] => {
      const address = { row, column };
      const cell = cellAt(sheet, address);
      return cell && !isFormula(cell.content) ? [{ heading, address, cell }] : [];
    });
    return [{ row, name, fields }];
  });
  return { sheet, headingRow: from.row, columns, wraps };
}
