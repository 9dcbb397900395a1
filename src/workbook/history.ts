import { type Difference, invertDifference } from './difference.ts';

/** What has been done and can be taken back, newest last; each with the name that the person reads. */
export interface History {
  readonly done: readonly Deed[];
  readonly undone: readonly Deed[];
}

export interface Deed {
  readonly says: string;
  readonly difference: Difference;
}

export const emptyHistory: History = { done: [], undone: [] };

const mostDeeds = 1000;

export function afterDoing(history: History, deed: Deed): History {
  return { done: [...history.done, deed].slice(-mostDeeds), undone: [] };
}

/** The next history and the difference to apply, or null where there is nothing to take back. */
export function takeBack(history: History): { history: History; deed: Deed } | null {
  const last = history.done.at(-1);
  if (!last) return null;
  return {
    history: { done: history.done.slice(0, -1), undone: [...history.undone, last] },
    deed: { says: last.says, difference: invertDifference(last.difference) },
  };
}

/** The next history and the difference to apply, or null where there is nothing to do again. */
export function doAgain(history: History): { history: History; deed: Deed } | null {
  const last = history.undone.at(-1);
  if (!last) return null;
  return {
    history: { done: [...history.done, last], undone: history.undone.slice(0, -1) },
    deed: last,
  };
}
