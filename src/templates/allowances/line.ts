import { type CellAddress, isInRange } from '../../base/address.ts';
import { cellAt, sheetNamed, sheetWithId } from '../../workbook/cells.ts';
import { allowancesSheet } from '../../workbook/comparison.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../../workbook/document.ts';
import { noValues } from '../../workbook/values.ts';
import { type AllowanceTable, allowanceTables, keyAt, onlyCellOf } from './rows.ts';

/** A row of the sheet Allowances. */
export interface LinePlace {
  readonly sheet: string;
  readonly row: number;
}

/** A line of one of the shop's tables, or an allowance that stands alone behind a name. */
export interface AllowanceLine {
  readonly sheet: Sheet;
  readonly row: number;
  /** Null for an allowance that stands alone. */
  readonly table: AllowanceTable | null;
  /** The name in formulas of an allowance that stands alone. */
  readonly name: string | null;
  /** The cell that says what it is called. */
  readonly key: CellAddress;
  /** The cell that says where it comes from; null where its table has no column for that. */
  readonly source: CellAddress | null;
}

/** What is written where nobody says where a figure comes from: then it is the shop's own. */
export const ownSource = 'this shop';

/** Null where the row is neither. */
export function allowanceLine(workbook: Workbook, { sheet: id, row }: LinePlace): AllowanceLine | null {
  const sheet = sheetWithId(workbook, id);
  if (!sheet || sheet !== sheetNamed(workbook, allowancesSheet)) return null;
  const table = allowanceTables(workbook, sheet).find(
    ({ range, columns }) => columns.length > 1 && row > range.from.row && row <= range.to.row,
  );
  if (table) {
    const column = sourceColumn(sheet, table);
    return {
      sheet,
      row,
      table,
      name: null,
      key: { row, column: table.range.from.column },
      source: column === null ? null : { row, column },
    };
  }
  const single = Object.entries(workbook.names).find(
    ([, named]) => named.sheet === id && named.range.from.row === row && isOneCell(named.range),
  );
  if (!single || single[1].range.from.column === 0) return null;
  const [name, { range }] = single;
  return {
    sheet,
    row,
    table: null,
    name,
    key: { row, column: range.from.column - 1 },
    source: { row, column: range.from.column + 1 },
  };
}

/** What the line is called; empty where nobody has named it. */
export function calledAt({ sheet, key }: AllowanceLine): string {
  return keyAt(sheet, key, noValues);
}

/** Where the figures of a line come from, in the words of its sheet. */
export function sourceOf({ sheet, source }: AllowanceLine): string {
  const content = source && cellAt(sheet, source)?.content;
  return typeof content === 'string' && content.trim() !== '' ? content : ownSource;
}

/** The line that this one has its name from, where it repeats another one: the wrap of a price of wrap. */
export function leadingLine(workbook: Workbook, line: AllowanceLine): AllowanceLine {
  const content = cellAt(line.sheet, line.key)?.content ?? null;
  const repeated = isFormula(content) ? onlyCellOf(line.sheet, content.formula) : null;
  return (repeated && allowanceLine(workbook, { sheet: line.sheet.id, row: repeated.row })) ?? line;
}

/** The rows of the sheet whose first cell only repeats the name of a line, from the top. */
export function linesRepeating({ sheet, key }: AllowanceLine): readonly CellAddress[] {
  return sheet.rows.flatMap((cells, row) =>
    cells.flatMap((cell, column): readonly CellAddress[] => {
      if (!cell || !isFormula(cell.content)) return [];
      const read = onlyCellOf(sheet, cell.content.formula);
      return read?.row === key.row && read.column === key.column ? [{ row, column }] : [];
    }),
  );
}

/** A figure that can be filled in, with the words over its column. */
export interface LineField {
  readonly heading: string;
  readonly address: CellAddress;
  readonly cell: Cell;
}

/** What hangs on a line in those that repeat its name: the price of a wrap. */
export function fieldsRepeating(line: AllowanceLine): readonly LineField[] {
  return linesRepeating(line).flatMap(({ row }) =>
    (line.sheet.rows[row] ?? []).flatMap((cell, column): readonly LineField[] => {
      const isField = cell?.role === 'given' && !isFormula(cell.content) && cell.unit !== undefined;
      return isField
        ? [{ heading: headingOver(line.sheet, row, column), address: { row, column }, cell }]
        : [];
    }),
  );
}

function headingOver(sheet: Sheet, row: number, column: number): string {
  for (let at = row; at >= 0; at -= 1) {
    const cell = cellAt(sheet, { row: at, column });
    if (cell?.role === 'heading') return String(cell.content ?? '');
  }
  return '';
}

/** It may stand beside the block that has the name. */
function sourceColumn(sheet: Sheet, { range: { from } }: AllowanceTable): number | null {
  const heads = (sheet.rows[from.row] ?? []).slice(from.column);
  const end = heads.findIndex((cell) => cell?.role !== 'heading');
  const at = heads
    .slice(0, end < 0 ? heads.length : end)
    .findIndex((cell) => typeof cell?.content === 'string' && /source|comes from/i.test(cell.content));
  return at < 0 ? null : from.column + at;
}

function isOneCell(range: AllowanceTable['range']): boolean {
  return isInRange(range.to, { from: range.from, to: range.from });
}
