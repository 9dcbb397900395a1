import type { CellAddress } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { limits } from '../../formula/limits.ts';
import { cellAt, sheetWithId } from '../cells.ts';
import type { Change, Difference } from '../difference.ts';
import type { Cell, Sheet, Workbook } from '../document.ts';
import { cellAfterEntry, sameCell } from '../entered.ts';
import { type EntryFault, readEntry } from '../entry.ts';

/** Several entries at once, as they come from the clipboard or from a file: a row of texts for each row of cells. Null
 *  leaves a cell as it is. */
export interface WriteCommand {
  readonly type: 'write';
  readonly sheet: string;
  /** The top left cell. */
  readonly at: CellAddress;
  readonly rows: readonly (readonly (string | null)[])[];
  /** The file that they come from, if they do. */
  readonly file?: string;
}

/** One entry that is not taken, and where. */
export interface RefusedEntry {
  /** By name; left out where all are on the sheet that is written on. */
  readonly sheet?: string;
  readonly address: CellAddress;
  readonly fault: EntryFault;
}

export type WriteFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'off_the_sheet'; readonly rows: number; readonly columns: number }
  /** Nothing was written; every refusal is told at once. */
  | { readonly code: 'entries_refused'; readonly refused: readonly RefusedEntry[] };

/** Reads each text by its own cell, exactly as if it were typed there. All are taken, or none. */
export function writeEntries(
  workbook: Workbook,
  { sheet: id, at, rows }: WriteCommand,
): Outcome<Difference, WriteFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  const columns = Math.max(0, ...rows.map((row) => row.length));
  if (!fitsOnSheet(at, rows.length, columns)) {
    return failed({ code: 'off_the_sheet', rows: rows.length, columns });
  }
  const changes: Change[] = [];
  const refused: RefusedEntry[] = [];
  for (const [down, row] of rows.entries()) {
    for (const [right, typed] of row.entries()) {
      if (typed === null) continue;
      const address = { row: at.row + down, column: at.column + right };
      const before = cellAt(sheet, address);
      const entry = readEntry(typed, before);
      if (!entry.ok) refused.push({ address, fault: entry.fault });
      else changes.push(...changeOf(sheet, address, before, cellAfterEntry(before, entry.value)));
    }
  }
  return refused.length > 0 ? failed({ code: 'entries_refused', refused }) : done(changes);
}

export function fitsOnSheet(at: CellAddress, rows: number, columns: number): boolean {
  return at.row + rows <= limits.rows && at.column + columns <= limits.columns;
}

/** The change that puts a cell in place of another; none where they are alike. */
export function changeOf(
  sheet: Sheet,
  address: CellAddress,
  before: Cell | null,
  after: Cell | null,
): readonly Change[] {
  return sameCell(before, after) ? [] : [{ type: 'cell', sheet: sheet.id, address, before, after }];
}
