import type { CellAddress } from '../base/address.ts';
import { limits } from '../formula/limits.ts';
import type { Stretch } from '../formula/stretch.ts';
import { cellsOf } from './cells.ts';
import type { Change } from './difference.ts';
import { type Cell, isFormula, type Row, type Sheet } from './document.ts';

/** A heading, or plain words, and how many columns it covers as things stand, its own among them. */
export interface Across {
  readonly head: CellAddress;
  readonly cell: Cell;
  readonly columns: number;
}

/** Whether a cell may cover its neighbors: headings and words do, what is filled in, figured or checked does not. */
export function mayGoAcross(cell: Cell | null): boolean {
  return cell !== null && (cell.role === 'heading' || cell.role === 'text') && !isFormula(cell.content);
}

/** What covers a cell, itself or from the left; null where nothing does. Whatever stands in a covered cell ends it there. */
export function acrossAt(sheet: Sheet, { row, column }: CellAddress): Across | null {
  const cells = sheet.rows[row];
  if (!cells || !goesAcross(cells)) return null;
  let left = column;
  while (left >= 0 && isEmptyCell(cells[left] ?? null)) left -= 1;
  const cell = cells[left] ?? null;
  if (!cell?.across || !mayGoAcross(cell)) return null;
  const columns = columnsCovered(cells, left, cell.across);
  return columns > 1 && column < left + columns ? { head: { row, column: left }, cell, columns } : null;
}

function columnsCovered(cells: Row, from: number, wanted: number): number {
  const most = Math.min(wanted, limits.columns - from);
  let columns = 1;
  while (columns < most && isEmptyCell(cells[from + columns] ?? null)) columns += 1;
  return columns;
}

/** Nothing stands there, and nothing is asked for. */
export function isEmptyCell(cell: Cell | null): boolean {
  return cell === null || (cell.content === null && !cell.question);
}

const known = new WeakMap<Row, boolean>();

/** Whether anything of a row covers its neighbors; asked for every cell that is painted. */
function goesAcross(row: Row): boolean {
  const told = known.get(row);
  if (told !== undefined) return told;
  const does = row.some((cell) => cell?.across !== undefined);
  known.set(row, does);
  return does;
}

/** The changes that let cells cover the same columns after columns have come, gone or moved. They are of the sheet as it is
 *  then; the rule says where a stretch of columns has gone. */
export function acrossAfter(sheet: Sheet, rule: (stretch: Stretch) => Stretch | null): readonly Change[] {
  return [...cellsOf(sheet)].flatMap(({ address: { row, column }, cell }): readonly Change[] => {
    if (!cell.across) return [];
    const own = rule({ first: column, last: column });
    const covered = rule({ first: column, last: column + cell.across - 1 });
    if (!own || !covered) return [];
    // A head that has left what it covered covers nothing more.
    const columns = covered.first === own.first ? covered.last - covered.first + 1 : 1;
    if (columns === cell.across) return [];
    const address = { row, column: own.first };
    return [{ type: 'cell', sheet: sheet.id, address, before: cell, after: withAcross(cell, columns) }];
  });
}

export function withAcross({ across: _before, ...cell }: Cell, columns: number): Cell {
  return columns > 1 ? { ...cell, across: columns } : cell;
}

const reached = new WeakMap<Sheet['rows'], number>();

/** The last column that is covered anywhere on the sheet; -1 where nothing goes across. */
export function lastColumnAcross({ rows }: Sheet): number {
  const told = reached.get(rows);
  if (told !== undefined) return told;
  let last = -1;
  for (const row of rows) {
    if (!goesAcross(row)) continue;
    for (const [column, cell] of row.entries()) {
      if (cell?.across && mayGoAcross(cell))
        last = Math.max(last, column + columnsCovered(row, column, cell.across) - 1);
    }
  }
  reached.set(rows, last);
  return last;
}
