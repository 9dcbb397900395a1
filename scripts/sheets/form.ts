import { type CellRange, readAddress } from '../../src/base/address.ts';
import type { Cell, NamedRange, Row, Sheet } from '../../src/workbook/document.ts';

/** A sheet under work, with the names that lead into it. */
export interface Form {
  readonly sheet: Sheet;
  readonly names: { readonly [name: string]: NamedRange };
}

/** A line of a form: its cells from the left, and the name by which formulas know one of them. */
export interface Line {
  readonly cells: Row;
  /** The name of the cell at `at`, counted from 0. */
  readonly name?: { readonly is: string; readonly at: number };
}

export function line(...cells: Row): Line {
  return { cells };
}

/** A line whose second cell has a name: label, value, what else there is to say. */
export function namedLine(name: string, label: Cell, value: Cell, ...rest: Row): Line {
  return { cells: [label, value, ...rest], name: { is: name, at: 1 } };
}

export const emptyLine: Line = { cells: [] };

export function form(about: {
  readonly id: string;
  readonly name: string;
  readonly says: string;
  readonly widths: readonly number[];
  readonly lines: readonly Line[];
  /** Names for blocks: `{ wraps: 'A1:K9' }`. */
  readonly blocks?: { readonly [name: string]: string };
}): Form {
  const { id, name, says, widths, lines, blocks = {} } = about;
  const cellNames = lines.flatMap((one, row) =>
    one.name ? [[one.name.is, { sheet: id, range: single(row, one.name.at) }] as const] : [],
  );
  const blockNames = Object.entries(blocks).map(
    ([is, range]) => [is, { sheet: id, range: block(range) }] as const,
  );
  return {
    sheet: {
      id,
      name,
      says,
      columns: widths.map((width) => ({ width })),
      rows: lines.map(({ cells }) => cells),
    },
    names: Object.fromEntries([...cellNames, ...blockNames]),
  };
}

function single(row: number, column: number): CellRange {
  return { from: { row, column }, to: { row, column } };
}

function block(written: string): CellRange {
  const [from, to] = written.split(':').map((corner) => readAddress(corner));
  if (!from || !to) throw new Error(`${written} is no block of cells.`);
  return { from, to };
}
