import { type CellAddress, sameAddress } from '../../base/address.ts';
import type { CellValue } from '../../base/value.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Cell, Sheet } from '../../workbook/document.ts';
import { shownValue } from '../../workbook/standing.ts';
import type { Values } from '../../workbook/values.ts';
import type { TaggedCells } from '../formula/tagged-cells.ts';
import { type WaitingEntry, waitingAt } from '../waiting/waiting-entries.ts';
import { type CellMarks, marksOf, rimOf, type SheetMarks, sameMarks } from './cell-marks.ts';
import { type Covering, coveringOf, sameCovering } from './covering.ts';
import { type RunOn, runOnAt } from './run-on.ts';
import { unitBelow } from './unit-below.ts';

/** What the grid is showing: one sheet with its values, and what is marked on it. */
export interface SheetSight extends SheetMarks {
  readonly sheet: Sheet;
  readonly values: Values;
  /** Whether locks are in force here, as in a job, or only set, as in a template; `off` where they were taken off. */
  readonly locks: 'hold' | 'set' | 'off';
  /** Cells of this sheet that the formula being written reads. */
  readonly tagged: readonly TaggedCells[];
  /** What was typed into cells of this sheet and was not taken. */
  readonly waiting: readonly WaitingEntry[];
}

/** Everything that decides how one cell of the grid looks. */
export interface CellSight extends CellMarks {
  readonly address: CellAddress;
  readonly sheet: Sheet;
  /** Of the whole workbook; what names the row may be figured. */
  readonly values: Values;
  readonly cell: Cell | null;
  readonly value: CellValue;
  readonly isInHeadingRow: boolean;
  readonly tags: readonly CellTag[];
  /** The unit of the column under a heading, where the figures there do not show it. */
  readonly unitBelow: string | null;
  /** The heading to the left that goes on over this empty cell. */
  readonly runOn: RunOn | null;
  /** What goes across this cell by its author's wish, be it from the left or the cell itself. */
  readonly covering: Covering | null;
  /** What was typed here and was not taken. */
  readonly waits: WaitingEntry | null;
  /** Null where the cell is open to whoever works here. */
  readonly lock: 'hold' | 'set' | null;
}

/** The number of a stretch of cells in the formula being written, and which of its sides run along this cell. */
export interface CellTag {
  readonly tag: number;
  readonly rim: string;
  /** How many numbers stand before its own; the number itself stands in the first cell only, else null. */
  readonly place: number | null;
}

const noTags: readonly CellTag[] = [];

export function sightOf(sight: SheetSight, address: CellAddress): CellSight {
  const { sheet, values, tagged, waiting } = sight;
  const cell = cellAt(sheet, address);
  const covering = coveringOf(sheet, address);
  return {
    ...marksOf(sight, address),
    address,
    sheet,
    values,
    cell,
    value: shownValue(sheet, address, cell, values),
    isInHeadingRow: hasHeading(sheet, address.row),
    unitBelow: cell?.role === 'heading' && !covering ? unitBelow(sheet, address.row, address.column) : null,
    runOn: hasHeading(sheet, address.row) ? runOnAt(sheet, address.row, address.column) : null,
    covering,
    lock: cell?.locked && sight.locks !== 'off' ? sight.locks : null,
    waits: waiting.length === 0 ? null : waitingAt(waiting, sheet.id, address),
    tags: tagged.length === 0 ? noTags : tagsOf(address, tagged),
  };
}

/** Whether both would be painted alike. Cells and values are never altered, so being the same one is enough. */
export function sameSight(one: CellSight, other: CellSight): boolean {
  return (
    one.cell === other.cell &&
    one.value === other.value &&
    one.isInHeadingRow === other.isInHeadingRow &&
    one.unitBelow === other.unitBelow &&
    one.waits === other.waits &&
    one.lock === other.lock &&
    one.runOn?.words === other.runOn?.words &&
    one.runOn?.from === other.runOn?.from &&
    sameCovering(one.covering, other.covering) &&
    sameMarks(one, other) &&
    sameTags(one.tags, other.tags)
  );
}

function tagsOf(address: CellAddress, tagged: readonly TaggedCells[]): readonly CellTag[] {
  let numbers = 0;
  return tagged.flatMap(({ tag, range }) => {
    const rim = rimOf(address, range);
    if (rim === null) return [];
    const place = sameAddress(address, range.from) ? numbers++ : null;
    return [{ tag, rim, place }];
  });
}

function sameTags(some: readonly CellTag[], others: readonly CellTag[]): boolean {
  return (
    some.length === others.length &&
    some.every(({ tag, rim }, at) => tag === others[at]?.tag && rim === others[at]?.rim)
  );
}

export function hasHeading(sheet: Sheet, row: number): boolean {
  return (sheet.rows[row] ?? []).some((cell) => cell?.role === 'heading');
}
