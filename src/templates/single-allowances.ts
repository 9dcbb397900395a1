import { type CellAddress, type CellRange, isInRange } from '../base/address.ts';
import { cellAt } from '../workbook/cells.ts';
import { allowancesSheet } from '../workbook/comparison.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../workbook/document.ts';
import { showValue } from '../workbook/show.ts';
import { shownValue } from '../workbook/standing.ts';
import type { Values } from '../workbook/values.ts';

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

export function allowances(workbook: Workbook): Sheet | null {
  return workbook.sheets.find((sheet) => sheet.name === allowancesSheet) ?? null;
}

/** In the order in which they stand on the sheet. */
export function singleAllowances(workbook: Workbook): readonly SingleAllowance[] {
  const sheet = allowances(workbook);
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

/** Blocks of more than one column, without those that only name a part of another. */
export function allowanceBlocks(workbook: Workbook, values: Values): readonly AllowanceBlock[] {
  const sheet = allowances(workbook);
  if (!sheet) return [];
  const blocks = Object.entries(workbook.names).filter(
    ([, { sheet: id, range }]) => id === sheet.id && range.from.column !== range.to.column,
  );
  return blocks
    .filter(
      ([name, { range }]) =>
        !blocks.some(
          ([other, outer]) =>
            other !== name && isInRange(range.from, outer.range) && isInRange(range.to, outer.range),
        ),
    )
    .map(([name, { range }]) => ({
      name,
      sheet: sheet.id,
      at: range.from,
      headings: columnsOf(range).map((column) => wordAt(sheet, { row: range.from.row, column })),
      rows: rowsOf(sheet, values, range),
    }))
    .sort((one, other) => one.at.row - other.at.row);
}

function rowsOf(sheet: Sheet, values: Values, range: CellRange): readonly BlockRow[] {
  const { from, to } = range;
  return Array.from({ length: to.row - from.row }, (_, at) => from.row + 1 + at).flatMap((row) => {
    const first = { row, column: from.column };
    const label = showValue(shownValue(sheet, first, cellAt(sheet, first), values)).text;
    const fields = columnsOf(range)
      .slice(1)
      .flatMap((column) => {
        const address = { row, column };
        const cell = cellAt(sheet, address);
        const heading = wordAt(sheet, { row: from.row, column });
        return cell?.role === 'given' && !isFormula(cell.content) ? [{ heading, address, cell }] : [];
      });
    return label === '' || fields.length === 0 ? [] : [{ row, label, fields }];
  });
}

function columnsOf({ from, to }: CellRange): readonly number[] {
  return Array.from({ length: to.column - from.column + 1 }, (_, at) => from.column + at);
}

function wordAt(sheet: Sheet, address: CellAddress): string {
  const content = address.column < 0 ? null : cellAt(sheet, address)?.content;
  return typeof content === 'string' ? content : '';
}
