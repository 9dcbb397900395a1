import type { CellAddress } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { cellAt, cellsOf, sheetWithId } from '../cells.ts';
import { type Change, type Difference, workbookStanding } from '../difference.ts';
import type { Cell, Sheet, Workbook } from '../document.ts';
import { unlocked } from '../locked.ts';
import { changeOf } from './write.ts';

/** Locks say which cells of a job stay as its template has them. The author sets them in the template; whoever owns a job
 *  can take them off it as a whole. */
export type LockCommand =
  | {
      readonly type: 'lock';
      readonly sheet: string;
      readonly addresses: readonly CellAddress[];
      readonly locked: boolean;
    }
  /** Every cell of a sheet that holds something and is no given. */
  | { readonly type: 'lock_all_but_givens'; readonly sheet: string }
  | { readonly type: 'set_locks'; readonly hold: boolean };

export type LockFault =
  | { readonly code: 'no_such_sheet' }
  /** Only the author of a template says what is locked. */
  | { readonly code: 'locks_of_a_job' }
  | { readonly code: 'given_is_open'; readonly address: CellAddress };

export function changeLocks(workbook: Workbook, command: LockCommand): Outcome<Difference, LockFault> {
  if (command.type === 'set_locks') return setLocks(workbook, command.hold);
  const sheet = sheetWithId(workbook, command.sheet);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  if (workbook.kind === 'job') return failed({ code: 'locks_of_a_job' });
  if (command.type === 'lock_all_but_givens') return done([...lockedButGivens(sheet)]);
  const changes: Change[] = [];
  for (const address of command.addresses) {
    const before = cellAt(sheet, address);
    if (before?.role === 'given' && command.locked) return failed({ code: 'given_is_open', address });
    changes.push(...changeOf(sheet, address, before, withLock(before, command.locked)));
  }
  return done(changes);
}

function* lockedButGivens(sheet: Sheet): Generator<Change> {
  for (const { address, cell } of cellsOf(sheet)) {
    if (cell.role === 'given' || cell.content === null) continue;
    yield* changeOf(sheet, address, cell, withLock(cell, true));
  }
}

function withLock(cell: Cell | null, locked: boolean): Cell | null {
  if (locked) return { ...(cell ?? { content: null, role: 'text' }), locked: true };
  if (!cell) return null;
  const open = unlocked(cell);
  const isNothing = open.content === null && open.role === 'text' && Object.keys(open).length === 2;
  return isNothing ? null : open;
}

function setLocks(workbook: Workbook, hold: boolean): Outcome<Difference, LockFault> {
  const before = workbookStanding(workbook);
  if ((before.locksOff === null) === hold) return done([]);
  return done([{ type: 'standing', before, after: { ...before, locksOff: hold ? null : true } }]);
}
