import { assertNever } from '../base/outcome.ts';
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

/** What of a deed is written down beside what it did: its name, or that the last one was taken back or done again. */
export type DeedMark =
  | { readonly type: 'did'; readonly says: string }
  | { readonly type: 'took_back' }
  | { readonly type: 'did_again' };

/** The history after something that was written down. */
export function afterMark(history: History, mark: DeedMark, difference: Difference): History {
  switch (mark.type) {
    case 'did':
      return afterDoing(history, { says: mark.says, difference });
    case 'took_back':
      return takeBack(history)?.history ?? emptyHistory;
    case 'did_again':
      return doAgain(history)?.history ?? emptyHistory;
    default:
      return assertNever(mark);
  }
}

const mostKept = 100;
const mostCharactersKept = 1_000_000;

/** As much of a history as is kept from one visit to the next: its newest deeds, and those that are next to be done again. */
export function keptPart({ done, undone }: History): History {
  return { done: newest(done), undone: newest(undone) };
}

function newest(deeds: readonly Deed[]): readonly Deed[] {
  let left = mostCharactersKept;
  const before = deeds.findLastIndex((deed, at) => {
    left -= JSON.stringify(deed.difference).length;
    return left < 0 || deeds.length - at > mostKept;
  });
  return deeds.slice(before + 1);
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
