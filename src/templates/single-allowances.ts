import { type CellAddress, isInRange } from '../base/address.ts';
import { cellAt } from '../workbook/cells.ts';
import { allowancesSheet } from '../workbook/comparison.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../workbook/document.ts';

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
  /** Rows in which something is filled in. */
  readonly rows: number;
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
export function allowanceBlocks(workbook: Workbook): readonly AllowanceBlock[] {
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
    .map(
      ([
        name,
        {
          range: { from, to },
        },
      ]) => ({
        name,
        sheet: sheet.id,
        at: from,
        headings: Array.from({ length: to.column - from.column + 1 }, (_, at) =>
          wordAt(sheet, { row: from.row, column: from.column + at }),
        ),
        rows: Array.from({ length: to.row - from.row }, (_, at) => from.row + 1 + at).filter((row) =>
          filledIn(sheet.rows[row] ?? [], from.column, to.column),
        ).length,
      }),
    )
    .sort((one, other) => one.at.row - other.at.row);
}

function filledIn(row: Sheet['rows'][number], from: number, to: number): boolean {
  return row
    .slice(from, to + 1)
    .some((cell) => cell?.role === 'given' && cell.content !== null && cell.content !== '');
}

function wordAt(sheet: Sheet, address: CellAddress): string {
  const content = address.column < 0 ? null : cellAt(sheet, address)?.content;
  return typeof content === 'string' ? content : '';
}
