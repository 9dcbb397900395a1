import type { CellAddress } from '../../base/address.ts';
import { cellAt, sheetNamed } from '../../workbook/cells.ts';
import { allowancesSheet } from '../../workbook/comparison.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../../workbook/document.ts';
import type { Values } from '../../workbook/values.ts';
import { type AllowanceTable, allowanceTables, keyAt } from './rows.ts';

/** An allowance that stands alone, with its name in formulas: the lap, the fraction, a waste. */
export interface SingleAllowance {
  readonly name: string;
  /** What the sheet calls it. */
  readonly label: string;
  readonly sheet: string;
  readonly address: CellAddress;
  readonly cell: Cell;
  /** What stands beside it: where it comes from. */
  readonly source: string;
}

/** A block with a name on the Allowances sheet, such as the wraps or the prices. */
export interface AllowanceBlock {
  readonly name: string;
  readonly sheet: string;
  readonly at: CellAddress;
  /** The words of its headings. */
  readonly headings: readonly string[];
  readonly rows: readonly BlockRow[];
}

/** A row of a block that takes anything. */
export interface BlockRow {
  readonly row: number;
  /** What stands first in it, figured or typed. */
  readonly label: string;
  readonly fields: readonly {
    readonly heading: string;
    readonly address: CellAddress;
    readonly cell: Cell;
  }[];
}

/** In the order in which they stand on the sheet. */
export function singleAllowances(workbook: Workbook): readonly SingleAllowance[] {
  const sheet = sheetNamed(workbook, allowancesSheet);
  if (!sheet) return [];
  return Object.entries(workbook.names)
    .flatMap(([name, { sheet: id, range }]): readonly SingleAllowance[] => {
      const { from, to } = range;
      if (id !== sheet.id || from.row !== to.row || from.column !== to.column) return [];
      const cell = cellAt(sheet, from);
      if (!cell || isFormula(cell.content)) return [];
      const word = (column: number) => wordAt(sheet, { row: from.row, column });
      return [
        {
          name,
          label: word(from.column - 1) || name,
          sheet: id,
          address: from,
          cell,
          source: word(from.column + 1),
        },
      ];
    })
    .sort((one, other) => one.address.row - other.address.row);
}

/** The tables of the sheet, with what can be filled in of each of their rows. */
export function allowanceBlocks(workbook: Workbook, values: Values): readonly AllowanceBlock[] {
  const sheet = sheetNamed(workbook, allowancesSheet);
  if (!sheet) return [];
  return allowanceTables(workbook, sheet)
    .filter(({ columns }) => columns.length > 1)
    .map(({ name, range: { from, to }, columns }) => ({
      name,
      sheet: sheet.id,
      at: from,
      headings: columns.map(({ heading }) => heading),
      rows: Array.from({ length: to.row - from.row }, (_, at) =>
        rowOf(sheet, values, from.row + 1 + at, columns),
      ).filter(({ label, fields }) => label !== '' && fields.length > 0),
    }));
}

function rowOf(sheet: Sheet, values: Values, row: number, columns: AllowanceTable['columns']): BlockRow {
  const [first, ...others] = columns;
  const fields = others.flatMap(({ column, heading }) => {
    const address = { row, column };
    const cell = cellAt(sheet, address);
    return cell?.role === 'given' && !isFormula(cell.content) ? [{ heading, address, cell }] : [];
  });
  return { row, label: first ? keyAt(sheet, { row, column: first.column }, values) : '', fields };
}

function wordAt(sheet: Sheet, address: CellAddress): string {
  const content = address.column < 0 ? null : cellAt(sheet, address)?.content;
  return typeof content === 'string' ? content : '';
}
