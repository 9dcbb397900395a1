import { type CellAddress, type CellRange, columnName, isInRange } from '../../base/address.ts';
import { isFault } from '../../base/value.ts';
import { referencesIn } from '../../formula/references.ts';
import { cellAt, sheetNamed } from '../../workbook/cells.ts';
import { allowancesSheet } from '../../workbook/comparison.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../../workbook/document.ts';
import { rowName } from '../../workbook/label.ts';
import { showValue } from '../../workbook/show.ts';
import { shownValue } from '../../workbook/standing.ts';
import type { Values } from '../../workbook/values.ts';

/** The table of the allowances that stand alone behind a name. */
export const singles = 'single';

/** The one column of a single allowance. */
export const singleColumn = 'Value';

export interface AllowanceCell {
  readonly address: CellAddress;
  readonly cell: Cell | null;
  /** What stands there, a formula by what it shows; null where nothing does, or a fault. */
  readonly content: number | string | boolean | null;
  /** As a person sees it. */
  readonly shows: string;
  /** A formula stays what it is. */
  readonly isFigured: boolean;
}

/** A line of one of the shop's tables, or one single allowance. */
export interface AllowanceRow {
  /** Tells it from every other one of its workbook, and is the same for its like in another workbook. */
  readonly id: string;
  /** The name of the block, or `single`. */
  readonly table: string;
  /** What stands in the first column, or the name of the cell. */
  readonly key: string;
  /** What a person calls it: `Lap of the wrap`. */
  readonly label: string;
  /** By the heading of the column. */
  readonly cells: ReadonlyMap<string, AllowanceCell>;
}

/** A block of the sheet behind a name, with a row of headings on top. */
export interface AllowanceTable {
  readonly name: string;
  readonly range: CellRange;
  readonly columns: readonly { readonly column: number; readonly heading: string }[];
}

/** The tables of the sheet. A block inside another one, such as one of its columns, is no table of its own; one whose headings
 *  stand above it is taken with them, from the column that names its lines. */
export function allowanceTables(workbook: Workbook, sheet: Sheet): readonly AllowanceTable[] {
  const blocks = Object.entries(workbook.names)
    .filter(([, named]) => named.sheet === sheet.id && named.range.from.row < named.range.to.row)
    .map(([name, { range }]) => ({ name, range: withHeadings(sheet, range) }))
    .sort((one, other) => one.range.from.row - other.range.from.row || (one.name < other.name ? -1 : 1));
  return blocks.flatMap(({ name, range }, at) => {
    const isInside = blocks.some(
      (other, turn) =>
        turn !== at &&
        isInRange(range.from, other.range) &&
        isInRange(range.to, other.range) &&
        (turn < at || !isSameRange(range, other.range)),
    );
    const heads = sheet.rows[range.from.row]?.slice(range.from.column, range.to.column + 1) ?? [];
    if (isInside || !heads.some((cell) => cell?.role === 'heading')) return [];
    return [{ name, range, columns: columnsOf(sheet, range) }];
  });
}

/** The names of the lines stand in the first of the columns that have a heading one beside the other. */
function withHeadings(sheet: Sheet, { from, to }: CellRange): CellRange {
  const isHeading = (row: number, column: number) => cellAt(sheet, { row, column })?.role === 'heading';
  const above = from.row - 1;
  if (above < 0 || isHeading(from.row, from.column) || !isHeading(above, from.column)) return { from, to };
  let first = from.column;
  while (first > 0 && isHeading(above, first - 1)) first -= 1;
  return { from: { row: above, column: first }, to };
}

function columnsOf(sheet: Sheet, { from, to }: CellRange): AllowanceTable['columns'] {
  const taken = new Set<string>();
  return Array.from({ length: to.column - from.column + 1 }, (_, at) => {
    const column = from.column + at;
    const content = cellAt(sheet, { row: from.row, column })?.content;
    const words = typeof content === 'string' && content.trim() !== '' ? content.trim() : columnName(column);
    let heading = words;
    for (let turn = 2; taken.has(heading); turn += 1) heading = `${words} ${turn}`;
    taken.add(heading);
    return { column, heading };
  });
}

/** Every line of the tables that has a name, and every single allowance, from the top of the sheet. */
export function allowanceRows(workbook: Workbook, values: Values): readonly AllowanceRow[] {
  const sheet = sheetNamed(workbook, allowancesSheet);
  if (!sheet) return [];
  const tables = allowanceTables(workbook, sheet);
  const turns = new Map<string, number>();
  const idOf = (table: string, key: string) => {
    const same = `${table.toLowerCase()}: ${key.toLowerCase()}`;
    const turn = (turns.get(same) ?? 0) + 1;
    turns.set(same, turn);
    return turn === 1 ? same : `${same} (${turn})`;
  };
  const lines = tables.flatMap(({ name, range, columns }) =>
    Array.from({ length: range.to.row - range.from.row }, (_, at) => range.from.row + 1 + at).flatMap(
      (row): readonly AllowanceRow[] => {
        const key = keyAt(sheet, { row, column: range.from.column }, values);
        if (key === '') return [];
        const cells = columns.map(({ column, heading }) => {
          return [heading, readCell(sheet, { row, column }, values)] as const;
        });
        return [{ id: idOf(name, key), table: name, key, label: key, cells: new Map(cells) }];
      },
    ),
  );
  const alone = Object.entries(workbook.names)
    .filter(([, { sheet: id, range }]) => id === sheet.id && isOneCell(range))
    .sort(([, one], [, other]) => one.range.from.row - other.range.from.row)
    .map(([name, { range }]): AllowanceRow => {
      const cells = new Map([[singleColumn, readCell(sheet, range.from, values)]]);
      const label = rowName(sheet, range.from, values) || name;
      return { id: idOf(singles, name), table: singles, key: name, label, cells };
    });
  return [...lines, ...alone];
}

/** What a line is called by its first cell. A formula that only repeats another cell is read there, also before it is figured. */
export function keyAt(sheet: Sheet, address: CellAddress, values: Values): string {
  const cell = cellAt(sheet, address);
  if (!cell || cell.role === 'heading') return '';
  const source = isFormula(cell.content) ? onlyCellOf(sheet, cell.content.formula) : null;
  const read = source ? cellAt(sheet, source) : cell;
  const value = shownValue(sheet, source ?? address, read, values);
  return isFault(value) ? '' : showValue(value, read?.unit, read?.format).text.trim();
}

/** The cell that a formula such as `IF(A2="","",A2)` repeats. */
export function onlyCellOf(sheet: Sheet, formula: string): CellAddress | null {
  const form = /^IF\(\s*(\$?[A-Z]{1,3}\$?\d+)\s*=\s*""\s*,\s*""\s*,\s*\1\s*\)$/i.exec(formula.trim());
  const [one] = form ? referencesIn(formula) : [];
  if (one?.type !== 'cell' || (one.sheet !== null && one.sheet !== sheet.name)) return null;
  return { row: one.row, column: one.column };
}

function readCell(sheet: Sheet, address: CellAddress, values: Values): AllowanceCell {
  const cell = cellAt(sheet, address);
  const value = shownValue(sheet, address, cell, values);
  return {
    address,
    cell,
    content: isFault(value) || value === '' ? null : value,
    shows: showValue(value, cell?.unit, cell?.format).text,
    isFigured: cell !== null && (isFormula(cell.content) || cell.role === 'check'),
  };
}

function isOneCell({ from, to }: CellRange): boolean {
  return from.row === to.row && from.column === to.column;
}

function isSameRange(one: CellRange, other: CellRange): boolean {
  return (
    one.from.row === other.from.row &&
    one.to.row === other.to.row &&
    one.from.column === other.from.column &&
    one.to.column === other.to.column
  );
}
