import { createContext, useContext, useMemo, useSyncExternalStore } from 'react';
import { type CellAddress, sameAddress } from '../../base/address.ts';
import { type AtCell, afterDifference } from '../../workbook/after-difference.ts';
import type { Difference } from '../../workbook/difference.ts';

/** What was typed for a cell and is not in the workbook: it was refused, or never finished. It waits with its cell, marked,
 *  until it is put right or given up. */
export interface WaitingEntry extends AtCell {
  readonly workbook: string;
  readonly typed: string;
  /** Why it was not taken; null where it was not offered yet. */
  readonly refusal: string | null;
}

/** Every entry that waits, of all workbooks that were open on this page. */
export interface WaitingEntries {
  readonly current: () => readonly WaitingEntry[];
  readonly subscribe: (listener: () => void) => () => void;
  /** In place of what waited in the same cell before. */
  readonly keep: (entry: WaitingEntry) => void;
  readonly forget: (workbook: string, sheetId: string, address: CellAddress) => void;
  /** The cells of the workbook have moved, gone or changed. */
  readonly follow: (workbook: string, difference: Difference) => void;
}

export function createWaitingEntries(): WaitingEntries {
  let entries: readonly WaitingEntry[] = [];
  const listeners = new Set<() => void>();

  function set(next: readonly WaitingEntry[]): void {
    if (next.length === entries.length && next.every((one, at) => one === entries[at])) return;
    entries = next;
    for (const listener of listeners) listener();
  }

  function without(workbook: string, sheetId: string, address: CellAddress): readonly WaitingEntry[] {
    return entries.filter(
      (one) => one.workbook !== workbook || one.sheetId !== sheetId || !sameAddress(one.address, address),
    );
  }

  return {
    current: () => entries,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    keep: (entry) => set([...without(entry.workbook, entry.sheetId, entry.address), entry]),
    forget: (workbook, sheetId, address) => set(without(workbook, sheetId, address)),
    follow: (workbook, difference) => {
      const others = entries.filter((one) => one.workbook !== workbook);
      const own = entries.filter((one) => one.workbook === workbook);
      if (own.length > 0) set([...others, ...afterDifference(own, difference)]);
    },
  };
}

export const WaitingContext = createContext<WaitingEntries>(createWaitingEntries());

/** The entries that wait in one workbook, and the way to change them. */
export function useWaiting(workbook: string): {
  readonly waiting: readonly WaitingEntry[];
  readonly entries: WaitingEntries;
} {
  const entries = useContext(WaitingContext);
  const all = useSyncExternalStore(entries.subscribe, entries.current);
  const waiting = useMemo(() => all.filter((one) => one.workbook === workbook), [all, workbook]);
  return { waiting, entries };
}

export function waitingAt(
  waiting: readonly WaitingEntry[],
  sheetId: string,
  address: CellAddress,
): WaitingEntry | null {
  return waiting.find((one) => one.sheetId === sheetId && sameAddress(one.address, address)) ?? null;
}

/** What is said of one: `“99x” was typed here and is not in the workbook. …` */
export function waitingSentence({ typed, refusal }: Pick<WaitingEntry, 'typed' | 'refusal'>): string {
  const why = refusal === null ? 'It was never finished.' : refusal;
  return `“${typed}” was typed here and is not in the workbook. ${why}`;
}
