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
