import { createContext, useContext, useEffect, useSyncExternalStore } from 'react';
import type { CellAddress } from '../../base/address.ts';
import type { Pointing, Shown } from './pointing.ts';

/** The formula that is being written on this page, in a cell or in Working. */
export interface Writing {
  readonly sheetId: string;
  readonly address: CellAddress;
  /** Without its `=`. */
  readonly text: string;
  readonly field: 'cell' | 'working';
  readonly pointing: Pointing;
}

/** Where the formula that is being written lies, so that the sheet can mark its cells and hand it those that are pressed.
 *  One formula at a time. */
export interface WritingDesk {
  readonly current: () => Writing | null;
  readonly subscribe: (listener: () => void) => () => void;
  readonly put: (writing: Writing) => void;
  /** Takes away what this pointing put there; whatever another one put there stays. */
  readonly takeAway: (pointing: Pointing) => void;
  /** The sheet that stands before the person, and where they are on it. */
  readonly shown: () => Shown | null;
  readonly show: (shown: Shown) => void;
}

export function createWritingDesk(): WritingDesk {
  let current: Writing | null = null;
  let shown: Shown | null = null;
  const listeners = new Set<() => void>();
  function set(next: Writing | null): void {
    current = next;
    for (const listener of listeners) listener();
  }
  return {
    current: () => current,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    put: set,
    takeAway: (pointing) => {
      if (current?.pointing === pointing) set(null);
    },
    shown: () => shown,
    show: (next) => {
      shown = next;
    },
  };
}

export const WritingDeskContext = createContext<WritingDesk>(createWritingDesk());

export function useWritingDesk(): WritingDesk {
  return useContext(WritingDeskContext);
}

export function useWriting(): Writing | null {
  const desk = useWritingDesk();
  return useSyncExternalStore(desk.subscribe, desk.current);
}

/** Keeps a formula on the desk while it is being written; null while what is written is none. */
export function useOnDesk(writing: Writing | null): void {
  const desk = useWritingDesk();
  const { sheetId, address, text, field, pointing } = writing ?? {};
  useEffect(() => {
    if (sheetId === undefined || !address || text === undefined || !field || !pointing) return;
    desk.put({ sheetId, address, text, field, pointing });
  }, [desk, sheetId, address, text, field, pointing]);
  useEffect(() => {
    if (pointing) return () => desk.takeAway(pointing);
  }, [desk, pointing]);
}
