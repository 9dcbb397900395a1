import { columnName } from '../../src/base/address.ts';
import type { Cell } from '../../src/workbook/document.ts';
import type { Line } from './form.ts';

/** Where the columns and lines of a table stand, so that formulas are written by the words over its columns. */
export interface Table<Column extends string> {
  readonly rows: readonly number[];
  readonly last: number;
  /** A cell of a line, seen from its own sheet: `B4`. */
  readonly at: (column: Column, row: number) => string;
  /** The same, seen from any sheet. */
  readonly from: (column: Column, row: number) => string;
  /** A whole column beside the lines, seen from its own sheet. */
  readonly beside: (column: Column) => string;
  readonly all: (column: Column) => string;
  /** The part of a column that stands below a line; blank under the last one. */
  readonly below: (column: Column, row: number) => string;
  /** A line of the table, its cells by their columns; a column without a cell stays free. */
  readonly line: (cells: { readonly [Name in Column]?: Cell | null }) => Line;
}

export function table<const Column extends string>(about: {
  readonly sheet: string;
  readonly columns: readonly Column[];
  readonly first: number;
  readonly count: number;
}): Table<Column> {
  const { sheet, columns, first, count } = about;
  const last = first + count - 1;
  const prefix = `${/^\w+$/.test(sheet) ? sheet : `'${sheet}'`}!`;
  const letter = (column: Column) => columnName(columns.indexOf(column));
  const beside = (column: Column) => `${letter(column)}${first}:${letter(column)}${last}`;
  return {
    rows: Array.from({ length: count }, (_, index) => first + index),
    last,
    at: (column, row) => `${letter(column)}${row}`,
    from: (column, row) => `${prefix}${letter(column)}${row}`,
    beside,
    all: (column) => prefix + beside(column),
    below: (column, row) => `${letter(column)}${row + 1}:${letter(column)}${last + 1}`,
    line: (cells) => ({ cells: columns.map((column) => cells[column] ?? null) }),
  };
}
