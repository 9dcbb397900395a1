import { type CellAddress, writeAddress } from '../../base/address.ts';
import { failed, type Outcome } from '../../base/outcome.ts';
import { afterDifference } from '../../workbook/after-difference.ts';
import type { CommandFault } from '../../workbook/commands.ts';
import type { Change, Difference } from '../../workbook/difference.ts';
import type { Workbook } from '../../workbook/document.ts';
import { tried } from '../trial.ts';
import { type CopyLineFault, copyLine } from './copy-line.ts';
import { allowanceLine, calledAt, type LinePlace, linesRepeating } from './line.ts';
import { takeOutLine } from './take-out-line.ts';

/** A line that is tried as a copy of another, before it is in the workbook. */
export interface CopiedLine {
  /** Tells it from every other copy. */
  readonly id: number;
  /** The line that it is a copy of, as the workbook has it. */
  readonly of: LinePlace;
  readonly name: string;
  /** Where its figures come from. */
  readonly source: string;
}

/** A cell as the workbook has it; or, of a copied line, the cell that goes with it in the line that was copied, or in one that
 *  repeats the name of that line. */
export interface TriedPlace {
  readonly sheet: string;
  readonly address: CellAddress;
  /** The id of the copy; null for a cell of the workbook's own. */
  readonly copy: number | null;
}

/** What is tried of the allowances. */
export interface Tried {
  readonly copies: readonly CopiedLine[];
  /** Lines that are to go. */
  readonly taken: readonly LinePlace[];
  readonly entries: ReadonlyMap<string, { readonly place: TriedPlace; readonly typed: string }>;
}

export const nothingTried: Tried = { copies: [], taken: [], entries: new Map() };

export type TriedFault = CopyLineFault | { readonly code: 'refused'; readonly fault: CommandFault };

export interface TriedOutcome {
  readonly workbook: Workbook;
  readonly difference: Difference;
  /** By the id of a copy, the row that it would stand in. */
  readonly copiedTo: ReadonlyMap<number, number>;
}

/** Tells a place from every other one. */
export function triedKey({ sheet, address, copy }: TriedPlace): string {
  return `${sheet} ${copy ?? ''} ${writeAddress(address)}`;
}

/** The workbook as it would be with all that is tried; places stay those of the workbook as it is, whichever lines come or go. */
export function triedOn(
  workbook: Workbook,
  { copies, taken, entries }: Tried,
): Outcome<TriedOutcome, TriedFault> {
  let after = workbook;
  const difference: Difference[number][] = [];
  const carryOn = (next: { readonly workbook: Workbook; readonly difference: Difference }) => {
    after = next.workbook;
    difference.push(...next.difference);
  };
  const now = (sheet: string, address: CellAddress, since = 0) =>
    afterDifference([{ sheetId: sheet, address }], difference.slice(since).filter(isOfLines))[0]?.address ??
    null;

  const made = new Map<number, { readonly sheet: string; readonly row: number; readonly since: number }>();
  for (const { id, of, name, source } of copies) {
    const row = now(of.sheet, { row: of.row, column: 0 })?.row;
    if (row === undefined) return failed({ code: 'no_line' });
    const outcome = copyLine(after, { sheet: of.sheet, row }, { name, source });
    if (!outcome.ok) return outcome;
    carryOn(outcome.value);
    made.set(id, { sheet: of.sheet, row: outcome.value.row, since: difference.length });
  }
  const rowOfCopy = (id: number) => {
    const copy = made.get(id);
    return copy ? (now(copy.sheet, { row: copy.row, column: 0 }, copy.since)?.row ?? null) : null;
  };
  const placeNow = ({ sheet, address, copy: id }: TriedPlace) => {
    const copy = copies.find((one) => one.id === id);
    const row = id === null ? null : rowOfCopy(id);
    if (!copy || row === null) return id === null ? now(sheet, address) : null;
    if (address.row === copy.of.row) return { row, column: address.column };
    const turn = repeating(workbook, copy.of).findIndex((one) => one.row === address.row);
    const along = repeating(after, { sheet, row })[turn];
    return along ? { row: along.row, column: address.column } : null;
  };
  const typed = [...entries.values()].flatMap(({ place, typed: text }) => {
    const address = placeNow(place);
    return address ? [{ sheet: place.sheet, address, typed: text }] : [];
  });
  if (typed.length > 0) {
    const outcome = tried(after, [{ type: 'retype', entries: typed }]);
    if (!outcome.ok) return failed({ code: 'refused', fault: outcome.fault });
    carryOn(outcome.value);
  }
  for (const { sheet, row } of taken) {
    const at = now(sheet, { row, column: 0 });
    const outcome = at ? takeOutLine(after, { sheet, row: at.row }) : null;
    if (outcome && !outcome.ok) return failed({ code: 'refused', fault: outcome.fault });
    if (outcome?.value) carryOn(outcome.value);
  }
  const copiedTo = new Map(
    copies.flatMap(({ id }) => {
      const row = rowOfCopy(id);
      return row === null ? [] : [[id, row] as const];
    }),
  );
  return { ok: true, value: { workbook: after, difference, copiedTo } };
}

function isOfLines({ type }: Change): boolean {
  return type === 'lines' || type === 'lines_place';
}

function repeating(workbook: Workbook, place: LinePlace): readonly CellAddress[] {
  const line = allowanceLine(workbook, place);
  return line ? linesRepeating(line) : [];
}

/** What was tried stays with its rows when the workbook is changed meanwhile; what has lost its row is tried no longer. */
export function triedAfter({ copies, taken, entries }: Tried, change: Difference): Tried {
  const lines = change.filter(isOfLines);
  const line = ({ sheet, row }: LinePlace): readonly LinePlace[] =>
    afterDifference([{ sheetId: sheet, address: { row, column: 0 } }], lines).map(({ address }) => {
      return { sheet, row: address.row };
    });
  const kept = copies.flatMap((copy) => line(copy.of).map((of) => ({ ...copy, of })));
  const places = [...entries.values()].flatMap(({ place, typed }) =>
    afterDifference([{ sheetId: place.sheet, address: place.address }], lines).map(({ address }) => {
      return { place: { ...place, address }, typed };
    }),
  );
  const isThere = (copy: number | null) => copy === null || kept.some(({ id }) => id === copy);
  return {
    copies: kept,
    taken: taken.flatMap(line),
    entries: new Map(places.flatMap((one) => (isThere(one.place.copy) ? [[triedKey(one.place), one]] : []))),
  };
}

/** What is tried, as the person reads it on Undo: `the copy R-8 wrap, 2 1/2 in`. */
export function triedDeed(workbook: Workbook, { copies, taken, entries }: Tried): string {
  const called = taken.flatMap((place) => {
    const line = allowanceLine(workbook, place);
    return line ? [calledAt(line)] : [];
  });
  const parts = [
    ...(copies.length > 0 ? [`the copy ${copies.map(({ name }) => name.trim()).join(', ')}`] : []),
    ...(called.length > 0 ? [`taking out ${called.join(', ')}`] : []),
    ...(entries.size > 0
      ? [entries.size === 1 ? '1 figure that was tried' : `${entries.size} figures that were tried`]
      : []),
  ];
  return parts.join(', ');
}
