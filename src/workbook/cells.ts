import type { CellAddress, CellRange } from '../base/address.ts';
import type { Cell, Row, Sheet, Workbook } from './document.ts';

/** The cell at an address, or null where nothing stands. */
export function cellAt(sheet: Sheet, address: CellAddress): Cell | null {
  return sheet.rows[address.row]?.[address.column] ?? null;
}

/** Upper and lower case are alike, as in formulas. */
export function sheetNamed(workbook: Workbook, name: string): Sheet | undefined {
  const wanted = name.toLowerCase();
  return workbook.sheets.find((sheet) => sheet.name.toLowerCase() === wanted);
}

export function sheetWithId(workbook: Workbook, id: string): Sheet | undefined {
  return workbook.sheets.find((sheet) => sheet.id === id);
}

/** Every cell that is there, row by row. */
export function* cellsOf(sheet: Sheet): Generator<{ readonly address: CellAddress; readonly cell: Cell }> {
  for (const [row, cells] of sheet.rows.entries()) {
    for (const [column, cell] of cells.entries()) {
      if (cell) yield { address: { row, column }, cell };
    }
  }
}

/** Every cell that is there inside a range, row by row. */
export function* cellsIn(
  sheet: Sheet,
  { from, to }: CellRange,
): Generator<{ readonly address: CellAddress; readonly cell: Cell }> {
  for (let row = from.row; row <= Math.min(to.row, sheet.rows.length - 1); row += 1) {
    const cells = sheet.rows[row] ?? [];
    for (let column = from.column; column <= Math.min(to.column, cells.length - 1); column += 1) {
      const cell = cells[column];
      if (cell) yield { address: { row, column }, cell };
    }
  }
}

/** The same sheet with several cells replaced, in order; much sooner than one after another. */
export function withCells(
  sheet: Sheet,
  cells: readonly { readonly address: CellAddress; readonly after: Cell | null }[],
): Sheet {
  const rows: Row[] = [...sheet.rows];
  const own = new Map<number, (Cell | null)[]>();
  for (const { address, after } of cells) {
    while (rows.length <= address.row) rows.push([]);
    const row = own.get(address.row) ?? [...(rows[address.row] ?? [])];
    while (row.length <= address.column) row.push(null);
    row[address.column] = after;
    own.set(address.row, row);
    rows[address.row] = row;
  }
  return { ...sheet, rows };
}

/** The same sheet with one cell replaced; null clears it. The sheet grows where it must. */
export function withCell(sheet: Sheet, address: CellAddress, cell: Cell | null): Sheet {
  const rows: Row[] = [...sheet.rows];
  while (rows.length <= address.row) rows.push([]);
  const row = [...(rows[address.row] ?? [])];
  while (row.length <= address.column) row.push(null);
  row[address.column] = cell;
  rows[address.row] = row;
  return { ...sheet, rows };
}

/** The block that holds every cell of the sheet; at least A1. */
export function extentOf(sheet: Sheet): CellRange {
  const columns = Math.max(sheet.columns.length, longestRow(sheet.rows));
  return {
    from: { row: 0, column: 0 },
    to: { row: Math.max(0, sheet.rows.length - 1), column: Math.max(0, columns - 1) },
  };
}

const longest = new WeakMap<Sheet['rows'], number>();

/** Rows are never altered; on each turn several ask for the same ones. */
function longestRow(rows: Sheet['rows']): number {
  const known = longest.get(rows);
  if (known !== undefined) return known;
  const found = rows.reduce((most, row) => Math.max(most, row.length), 0);
  longest.set(rows, found);
  return found;
}
