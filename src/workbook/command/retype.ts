import type { CellAddress } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { cellAt, sheetWithId } from '../cells.ts';
import type { Change, Difference } from '../difference.ts';
import type { Workbook } from '../document.ts';
import { cellAfterEntry } from '../entered.ts';
import { readEntry } from '../entry.ts';
import { changeOf, type RefusedEntry } from './write.ts';

/** Entries in cells anywhere in the workbook, each typed anew, as one deed. */
export interface RetypeCommand {
  readonly type: 'retype';
  readonly entries: readonly {
    readonly sheet: string;
    readonly address: CellAddress;
    readonly typed: string;
  }[];
}

export type RetypeFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'entries_refused'; readonly refused: readonly RefusedEntry[] };

/** Reads each text by its own cell, exactly as if it were typed there. All are taken, or none. */
export function retypeCells(
  workbook: Workbook,
  { entries }: RetypeCommand,
): Outcome<Difference, RetypeFault> {
  const changes: Change[] = [];
  const refused: RefusedEntry[] = [];
  for (const { sheet: id, address, typed } of entries) {
    const sheet = sheetWithId(workbook, id);
    if (!sheet) return failed({ code: 'no_such_sheet' });
    const before = cellAt(sheet, address);
    const entry = readEntry(typed, before);
    if (!entry.ok) refused.push({ sheet: sheet.name, address, fault: entry.fault });
    else changes.push(...changeOf(sheet, address, before, cellAfterEntry(before, entry.value)));
  }
  return refused.length > 0 ? failed({ code: 'entries_refused', refused }) : done(changes);
}
