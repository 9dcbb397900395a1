import type { Place } from './calculator.ts';
import { placeName } from './place-name.ts';
import { wordRing } from './wording.ts';

/** How many cells may be looked at for one ring; a longer one is told without its cells, since nobody would read so many. */
const looksAtMost = 500;

export interface Ring {
  /** Empty where the ring is too long to be followed. */
  readonly cells: readonly string[];
  readonly sentence: string;
}

/** Finds the shortest ring through a cell and words it. `next` gives the cells of rings that a cell reads directly. */
export function ringFinder(next: (place: Place) => readonly Place[]): (start: Place) => Ring {
  const known = new Map<string, Ring>();
  /** Cells of rings that were too long to follow; they are not followed again for another cell. */
  const inLongRing = new Set<string>();

  function ringThrough(start: Place): readonly string[] {
    const end = placeName(start);
    const cameFrom = new Map<string, string>();
    const waiting: Place[] = [start];
    for (const place of waiting) {
      if (cameFrom.size > looksAtMost) break;
      const from = placeName(place);
      for (const read of next(place)) {
        const name = placeName(read);
        if (name === end) return pathTo(from, cameFrom);
        if (cameFrom.has(name) || inLongRing.has(name)) continue;
        cameFrom.set(name, from);
        waiting.push(read);
      }
    }
    for (const name of [end, ...cameFrom.keys()]) inLongRing.add(name);
    return [];
  }

  return (start) => {
    const name = placeName(start);
    const before = known.get(name);
    if (before) return before;
    const cells = ringThrough(start);
    const ring = { cells, sentence: wordRing(cells) };
    known.set(name, ring);
    return ring;
  };
}

function pathTo(last: string, cameFrom: ReadonlyMap<string, string>): readonly string[] {
  const path: string[] = [];
  for (let name: string | undefined = last; name !== undefined; name = cameFrom.get(name)) path.unshift(name);
  return path;
}
