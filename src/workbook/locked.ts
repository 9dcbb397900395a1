import { type CellAddress, type CellRange, isInRange, sameAddress, writeAddress } from '../base/address.ts';
import { withAcross } from './across.ts';
import { cellAt, cellsOf, sheetWithId } from './cells.ts';
import { applyDifference, type Change, type Difference } from './difference.ts';
import { type Cell, isFormula, type Workbook } from './document.ts';
import type { Line } from './lines.ts';
import { nameUsers } from './name-users.ts';

/** Why a difference may not be carried out: it would change cells that the template has locked. */
export interface LockedFault {
  readonly code: 'locked_cells';
  /** `Wrap!C4`, the first of them. */
  readonly place: string;
  readonly count: number;
}

/** Where a command puts contents. Elsewhere it only makes formulas follow cells that went to another place, and a formula
 *  that goes on reading the same cells is not changed by that. */
export type Touches = 'everywhere' | readonly { readonly sheet: string; readonly range: CellRange }[];

/** Whether the locks of a workbook are in force: in a job, until they are taken off. */
export function locksHold(workbook: Workbook): boolean {
  return workbook.kind === 'job' && !workbook.locksOff;
}

/** Whether locks are in force, as in a job, only set, as in a template, or were taken off. */
export function lockState(workbook: Workbook): 'hold' | 'set' | 'off' {
  if (workbook.kind !== 'job') return 'set';
  return workbook.locksOff ? 'off' : 'hold';
}

export function lockedFault(
  workbook: Workbook,
  difference: Difference,
  touches: Touches,
): LockedFault | null {
  if (!locksHold(workbook)) return null;
  let now = workbook;
  let behind: Change[] = [];
  const changed = difference.flatMap((change) => {
    // What stands where is asked of the workbook as the changes before this one have left it.
    if (change.type !== 'cell') {
      now = applyDifference(now, behind);
      behind = [];
    }
    behind.push(change);
    return lockedPlaces(now, change, touches, difference);
  });
  const [place] = changed;
  return place === undefined ? null : { code: 'locked_cells', place, count: changed.length };
}

function lockedPlaces(
  workbook: Workbook,
  change: Change,
  touches: Touches,
  difference: Difference,
): readonly string[] {
  switch (change.type) {
    case 'cell': {
      if (!change.before?.locked || (!isTouched(change, touches) && follows(change))) return [];
      return [placeOf(workbook, change.sheet, change.address)];
    }
    case 'lines':
      return lostWithLines(workbook, change);
    case 'lines_place': {
      const sheet = sheetWithId(workbook, change.sheet);
      const isMoved = (line: number) => line >= change.before && line < change.before + change.count;
      return [...(sheet ? cellsOf(sheet) : [])].flatMap(({ address, cell }) =>
        cell.locked && isMoved(address[change.axis]) ? [placeOf(workbook, change.sheet, address)] : [],
      );
    }
    case 'sheet': {
      const { before, after } = change;
      if (!before || after) return [];
      return [...cellsOf(before)].flatMap(({ address, cell }) =>
        cell.locked ? [`${before.name}!${writeAddress(address)}`] : [],
      );
    }
    case 'name':
      return change.before && !change.after ? leftWithoutName(workbook, change.name, difference) : [];
    default:
      return [];
  }
}

type ChangeOf<Type extends Change['type']> = Extract<Change, { type: Type }>;

function isTouched({ sheet, address }: ChangeOf<'cell'>, touches: Touches): boolean {
  if (touches === 'everywhere') return true;
  return touches.some((one) => one.sheet === sheet && isInRange(address, one.range));
}

/** All but the formula is as it was, and it lost nothing that it read. A heading may cover more or fewer columns. */
function follows({ before, after }: ChangeOf<'cell'>): boolean {
  if (!before || !after) return false;
  const looks = (cell: Cell) => JSON.stringify({ ...withAcross(cell, 1), content: null });
  if (looks(before) !== looks(after)) return false;
  if (!isFormula(before.content) || !isFormula(after.content)) return before.content === after.content;
  return lost(after.content.formula) <= lost(before.content.formula);
}

function lost(formula: string): number {
  return formula.split('#REF!').length;
}

/** The locked cells of lines that do not come back among those that take their place. */
function lostWithLines(
  workbook: Workbook,
  { sheet, axis, at, before, after }: ChangeOf<'lines'>,
): readonly string[] {
  const kept = new Set(after.map(lockedPart));
  return before.flatMap((line, index) => {
    if (kept.has(lockedPart(line))) return [];
    return line.cells.flatMap((cell, across) => {
      const address =
        axis === 'row' ? { row: at + index, column: across } : { row: across, column: at + index };
      return cell?.locked ? [placeOf(workbook, sheet, address)] : [];
    });
  });
}

function lockedPart({ cells }: Line): string {
  return JSON.stringify(cells.flatMap((cell, index) => (cell?.locked ? [[index, cell]] : [])));
}

/** The locked cells that use a name and do not get another one for it. */
function leftWithoutName(workbook: Workbook, name: string, difference: Difference): readonly string[] {
  return (nameUsers(workbook).get(name) ?? []).flatMap(({ sheet: id, address }) => {
    const sheet = sheetWithId(workbook, id);
    const isRewritten = difference.some(
      (change) => change.type === 'cell' && change.sheet === id && sameAddress(change.address, address),
    );
    return sheet && cellAt(sheet, address)?.locked && !isRewritten ? [placeOf(workbook, id, address)] : [];
  });
}

function placeOf(workbook: Workbook, id: string, address: CellAddress): string {
  return `${sheetWithId(workbook, id)?.name ?? ''}!${writeAddress(address)}`;
}

/** The difference without the locks that it would bring in: in a job, a copy of a locked cell is the person's own. */
export function withoutNewLocks(
  workbook: Workbook,
  difference: Difference,
  staysLocked: (cell: Cell) => boolean,
): Difference {
  if (workbook.kind !== 'job') return difference;
  return difference.map((change) => {
    if (change.type === 'cell' && change.after?.locked && !change.before?.locked) {
      if (staysLocked(change.after)) return change;
      return { ...change, after: unlocked(change.after) };
    }
    if (change.type !== 'sheet' || change.before || !change.after) return change;
    const rows = change.after.rows.map((row) =>
      row.some((cell) => cell?.locked) ? row.map((cell) => cell && unlocked(cell)) : row,
    );
    return { ...change, after: { ...change.after, rows } };
  });
}

export function unlocked({ locked: _was, ...cell }: Cell): Cell {
  return cell;
}
