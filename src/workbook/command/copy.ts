import type { CellAddress, CellRange } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { shiftedForCopy } from '../../formula/copy.ts';
import { cellAt, sheetWithId } from '../cells.ts';
import type { Difference } from '../difference.ts';
import { type Cell, isFormula, type Workbook } from '../document.ts';
import { changeOf, fitsOnSheet } from './write.ts';

/** Cells put in once more elsewhere, with all that they are; the references in their formulas shift along. */
export interface CopyCommand {
  readonly type: 'copy';
  readonly from: { readonly sheet: string; readonly range: CellRange };
  /** Where to: filled over and over where it is larger than what is copied, by whole times. */
  readonly to: { readonly sheet: string; readonly range: CellRange };
}

export type CopyFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'off_the_sheet'; readonly rows: number; readonly columns: number };

export function copyCells(workbook: Workbook, { from, to }: CopyCommand): Outcome<Difference, CopyFault> {
  const source = sheetWithId(workbook, from.sheet);
  const target = sheetWithId(workbook, to.sheet);
  if (!source || !target) return failed({ code: 'no_such_sheet' });
  const size = sizeOf(from.range);
  const wanted = sizeOf(to.range);
  const rows = size.rows * Math.max(1, Math.floor(wanted.rows / size.rows));
  const columns = size.columns * Math.max(1, Math.floor(wanted.columns / size.columns));
  if (!fitsOnSheet(to.range.from, rows, columns)) return failed({ code: 'off_the_sheet', rows, columns });
  const changes = [];
  for (let down = 0; down < rows; down += 1) {
    for (let right = 0; right < columns; right += 1) {
      const taken: CellAddress = {
        row: from.range.from.row + (down % size.rows),
        column: from.range.from.column + (right % size.columns),
      };
      const address = { row: to.range.from.row + down, column: to.range.from.column + right };
      const copy = copyOf(cellAt(source, taken), address.row - taken.row, address.column - taken.column);
      changes.push(...changeOf(target, address, cellAt(target, address), copy));
    }
  }
  return done(changes);
}

/** A cell as it reads so many rows and columns away. */
export function copyOf(cell: Cell | null, rowsDown: number, columnsRight: number): Cell | null {
  if (!cell || !isFormula(cell.content)) return cell;
  return { ...cell, content: { formula: shiftedForCopy(cell.content.formula, rowsDown, columnsRight) } };
}

export function sizeOf({ from, to }: CellRange): { readonly rows: number; readonly columns: number } {
  return { rows: to.row - from.row + 1, columns: to.column - from.column + 1 };
}
