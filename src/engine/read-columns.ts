import type { Reach } from './reach.ts';

/** A column of a sheet, its name in small letters. */
export interface ReadColumn {
  readonly sheet: string;
  readonly column: number;
}

/** Which columns the formulas of a book read. The engine holds the cells of these and of no others: most of what stands in
 *  a workbook is read by people only, and an engine without it is there sooner. */
export interface ReadColumns {
  readonly add: (reach: Reach) => void;
  readonly has: (sheet: string, column: number) => boolean;
  /** Those that have come to be read since this was asked last. */
  readonly takeNew: () => readonly ReadColumn[];
}

export function readColumns(): ReadColumns {
  const known = new Map<string, Set<number>>();
  let fresh: ReadColumn[] = [];
  return {
    add: ({ sheet, range: { from, to } }) => {
      const own = known.get(sheet) ?? new Set();
      known.set(sheet, own);
      for (let column = from.column; column <= to.column; column += 1) {
        if (own.has(column)) continue;
        own.add(column);
        fresh.push({ sheet, column });
      }
    },
    has: (sheet, column) => known.get(sheet)?.has(column) ?? false,
    takeNew: () => {
      const taken = fresh;
      fresh = [];
      return taken;
    },
  };
}
