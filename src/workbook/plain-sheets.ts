import { writeAddress } from '../base/address.ts';
import { type Unit, units } from '../base/unit.ts';
import { isFault, type Plain } from '../base/value.ts';
import { cellsOf } from './cells.ts';
import { type Cell, isFormula, type Sheet } from './document.ts';
import type { KeptWorkbook } from './file.ts';
import { labelOf } from './label.ts';
import { showValue } from './show.ts';
import { shownValue } from './standing.ts';
import type { Values } from './values.ts';

/** A sheet as other spreadsheet programs can hold it: values as figured here, and how numbers look. */
export interface PlainSheet {
  readonly name: string;
  /** In characters of a normal cell. */
  readonly widths: readonly number[];
  readonly rows: readonly (readonly PlainCell[])[];
}

export interface PlainCell {
  readonly value: Plain;
  /** A number format code as those programs share it: `#,##0.00`. Absent for what is no number. */
  readonly format?: string;
  readonly isBold?: true;
}

/** Every sheet with its values, and one more that lists the formulas. No other program knows the trade functions, so a
 *  formula goes along as words: what stands in its cell is the figure, with every digit and nothing rounded. */
export function plainSheets({ workbook, values }: KeptWorkbook): readonly PlainSheet[] {
  const names = outsideNames([...workbook.sheets.map(({ name }) => name), 'Formulas']);
  const sheets = workbook.sheets.map((sheet, index) => ({
    name: names[index] ?? '',
    widths: sheet.columns.map(({ width }) => width),
    rows: sheet.rows.map((row, at) =>
      row.map((cell, column) => plainCell(sheet, { row: at, column }, cell, values)),
    ),
  }));
  const formulas = workbook.sheets.flatMap((sheet) => formulaRows(sheet, values));
  if (formulas.length === 0) return sheets;
  const list = {
    name: names.at(-1) ?? '',
    widths: [18, 8, 30, 60],
    rows: [
      ['Sheet', 'Cell', 'What it is', 'Formula here'].map((value) => ({ value, isBold: true }) as const),
      ...formulas,
    ],
  };
  return [...sheets, list];
}

function plainCell(
  sheet: Sheet,
  address: { readonly row: number; readonly column: number },
  cell: Cell | null,
  values: Values,
): PlainCell {
  const value = shownValue(sheet, address, cell, values);
  const isBold = cell?.role === 'heading' || cell?.style?.bold === true;
  return {
    value: isFault(value) ? showValue(value).text : value,
    ...(typeof value === 'number' ? { format: formatCode(cell) } : {}),
    ...(isBold ? { isBold } : {}),
  };
}

/** Lengths stay in the unit of the cell, as decimals: a fraction of the tape is rounded, up for some cells, and no other
 *  program knows which. */
function formatCode(cell: Cell | null): string {
  const unit = cell?.unit;
  const format = cell?.format;
  if (unit === 'percent' || format?.type === 'percent') return `${places(placesOf(cell, 1))}%`;
  if (unit === 'money') return `"$"#,##${places(placesOf(cell, 2))}`;
  if (unit === 'count' || unit === 'gauge') return withMark('0', unit);
  if (format?.type === 'decimal') return withMark(`#,##${places(format.places)}`, unit);
  return withMark('#,##0.0###', unit);
}

function placesOf(cell: Cell | null, usual: number): number {
  return cell?.format && 'places' in cell.format ? cell.format.places : usual;
}

function places(count: number): string {
  return count === 0 ? '0' : `0.${'0'.repeat(count)}`;
}

function withMark(code: string, unit: Unit | undefined): string {
  const label = unit === undefined || unit === 'r' ? '' : units[unit].label;
  return label === '' ? code : `${code}" ${label}"`;
}

function formulaRows(sheet: Sheet, values: Values): readonly (readonly PlainCell[])[] {
  return [...cellsOf(sheet)].flatMap(({ address, cell }) => {
    if (!isFormula(cell.content)) return [];
    const what = labelOf(sheet, address, values);
    return [
      [sheet.name, writeAddress(address), what, `=${cell.content.formula}`].map((value) => ({ value })),
    ];
  });
}

/** Other programs want sheet names of at most 31 characters, each only once, and keep one for themselves. */
function outsideNames(names: readonly string[]): readonly string[] {
  const taken = new Set(['history']);
  return names.map((name) => {
    let free = name.slice(0, 31);
    for (let count = 2; taken.has(free.toLowerCase()); count += 1) {
      const ending = ` ${count}`;
      free = `${name.slice(0, 31 - ending.length)}${ending}`;
    }
    taken.add(free.toLowerCase());
    return free;
  });
}
