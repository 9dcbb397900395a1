import type { CellAddress, CellRange } from '../base/address.ts';
import { type CellFault, type CellValue, isFault } from '../base/value.ts';
import { cellAt, sheetWithId } from './cells.ts';
import { readCheck, type Verdict } from './check.ts';
import type { Cell, NamedRange, Sheet, Workbook } from './document.ts';
import type { KeptWorkbook } from './file.ts';
import { showValue } from './show.ts';
import { shownValue } from './standing.ts';

/** The name of the block that holds what is to be ordered (decision 7). */
export const orderName = 'order';

/** One thing to buy. */
export interface OrderLine {
  readonly item: string;
  /** Null where it has no figure; then `fault` says why. */
  readonly quantity: number | string | null;
  /** The quantity as its cell shows it. */
  readonly shows: string;
  /** `rolls 48 in × 100 ft` */
  readonly unit: string;
  readonly fault: CellFault | null;
  readonly place: NamedRange;
}

/** Where the order of a workbook stands, or null where it has none. */
export function orderBlock(workbook: Workbook): { readonly sheet: Sheet; readonly range: CellRange } | null {
  const named = namedBlock(workbook, orderName);
  const sheet = named ? sheetWithId(workbook, named.sheet) : undefined;
  return named && sheet ? { sheet, range: named.range } : null;
}

/** The cells that a name stands for; upper and lower case are alike. */
export function namedBlock(workbook: Workbook, name: string): NamedRange | null {
  const known = Object.keys(workbook.names).find((one) => one.toLowerCase() === name.toLowerCase());
  return known === undefined ? null : (workbook.names[known] ?? null);
}

/** What is to be bought: under a row of headings, one row to a thing. Rows without a quantity, or with 0, are left out. */
export function orderLines(kept: KeptWorkbook): readonly OrderLine[] {
  return orderRows(kept).flatMap(({ row, read }) => {
    const [item, quantity, unit] = [read(0), read(1), read(2)];
    if (quantity.cell?.role === 'check' || isNothing(quantity.value)) return [];
    const { value } = quantity;
    return [
      {
        item: showValue(item.value).text,
        quantity: isFault(value) || typeof value === 'boolean' ? null : value,
        shows: showValue(value, quantity.cell?.unit, quantity.cell?.format).text,
        unit: showValue(unit.value).text,
        fault: isFault(value) ? value : null,
        place: { sheet: row.sheet, range: { from: quantity.address, to: quantity.address } },
      },
    ];
  });
}

/** What the checks inside the order say of it, such as which piece it is without. */
export function orderWarnings(kept: KeptWorkbook): readonly Verdict[] {
  return orderRows(kept).flatMap(({ read }) => {
    const { cell, value } = read(1);
    const said = cell?.role === 'check' ? readCheck(value) : null;
    return said && said.verdict !== 'holds' ? [said] : [];
  });
}

interface OrderRow {
  readonly row: { readonly sheet: string };
  /** A cell of the row, counted from the left of the order. */
  readonly read: (column: number) => {
    readonly address: CellAddress;
    readonly cell: Cell | null;
    readonly value: CellValue;
  };
}

function orderRows({ workbook, values }: KeptWorkbook): readonly OrderRow[] {
  const order = orderBlock(workbook);
  if (!order) return [];
  const { sheet, range } = order;
  return Array.from({ length: range.to.row - range.from.row }, (_, index) => ({
    row: { sheet: sheet.id },
    read: (column) => {
      const address = { row: range.from.row + 1 + index, column: range.from.column + column };
      const cell = cellAt(sheet, address);
      return { address, cell, value: shownValue(sheet, address, cell, values) };
    },
  }));
}

function isNothing(quantity: CellValue): boolean {
  return quantity === null || quantity === '' || quantity === 0;
}
