import type { Place } from './calculator.ts';
import { placeName } from './place-name.ts';
import { wordRing } from './wording.ts';

/** How many cells may be looked at for all rings of one answer; then rings are told without their cells. */
const looksAtMost = 20_000;

/** Finds the shortest ring through a cell and words it. `next` gives the cells of rings that a cell reads directly. */
export function ringWording(next: (place: Place) => readonly Place[]): (start: Place) => string {
  let looks = 0;
  return (start) => {
    const end = placeName(start);
    const cameFrom = new Map<string, string>();
    const waiting: Place[] = [start];
    for (let place = waiting.shift(); place !== undefined && looks < looksAtMost; place = waiting.shift()) {
      looks += 1;
      const from = placeName(place);
      for (const read of next(place)) {
        const name = placeName(read);
        if (name === end) return wordRing(pathTo(from, cameFrom));
        if (cameFrom.has(name)) continue;
        cameFrom.set(name, from);
        waiting.push(read);
      }
    }
    return wordRing([]);
  };
}

function pathTo(last: string, cameFrom: ReadonlyMap<string, string>): readonly string[] {
  const path: string[] = [];
  for (let name: string | undefined = last; name !== undefined; name = cameFrom.get(name)) path.unshift(name);
  return path;
}
