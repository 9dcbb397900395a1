/** Neighbouring rows or columns, both ends included, counted from 0. */
export interface Stretch {
  readonly first: number;
  readonly last: number;
}

/** Lines that come or go: from which one on, and how many. */
export interface Change {
  readonly at: number;
  readonly count: number;
}

/** A stretch grows when lines are put inside it; it moves when they are put before it. */
export function stretchAfterInsert({ first, last }: Stretch, { at, count }: Change): Stretch {
  return { first: first >= at ? first + count : first, last: last >= at ? last + count : last };
}

/** A stretch loses the lines that go; null when it loses all. */
export function stretchAfterRemove({ first, last }: Stretch, { at, count }: Change): Stretch | null {
  const after = at + count;
  if (first >= at && last < after) return null;
  const end = last >= after ? last - count : Math.min(last, at - 1);
  return { first: first >= after ? first - count : Math.min(first, at), last: end };
}

/** Lines that are taken up and put before another one. */
export interface Move extends Change {
  /** Counted before the move; any of the lines themselves, or the one after them, leaves all as it is. */
  readonly to: number;
}

export function lineAfterMove(line: number, { at, count, to }: Move): number {
  const end = at + count;
  if (to > end) {
    if (line >= at && line < end) return line + to - end;
    return line >= end && line < to ? line - count : line;
  }
  if (to >= at) return line;
  if (line >= at && line < end) return line - at + to;
  return line >= to && line < at ? line + count : line;
}

/** A stretch takes in the lines that it took in before, wherever they go, as long as they lie together. Where they do
 *  not, those count that stayed: lines put between them are taken in, lines put elsewhere are let go, just as if they had
 *  been taken out here and put in there. */
export function stretchAfterMove({ first, last }: Stretch, move: Move): Stretch {
  const end = move.at + move.count;
  const places = (from: number, to: number) =>
    from > to ? [] : [lineAfterMove(from, move), lineAfterMove(to, move)];
  const stayed = [...places(first, Math.min(last, move.at - 1)), ...places(Math.max(first, end), last)];
  const moved = places(Math.max(first, move.at), Math.min(last, end - 1));
  const all = between([...stayed, ...moved]);
  // The lines that stay may lie on both sides of where others go, so only the ends of the whole are told.
  return all.last - all.first === last - first ? all : between(stayed);
}

function between(places: readonly number[]): Stretch {
  return { first: Math.min(...places), last: Math.max(...places) };
}
