import type { CellRange } from '../base/address.ts';
import { isUsableName } from '../formula/name.ts';
import { parseFormula } from '../formula/parse.ts';
import type { Reach } from './reach.ts';

export interface Name {
  readonly name: string;
  /** As a formula writes it: `Allowances!$A$5:$J$9`. */
  readonly range: string;
  readonly reach: Reach;
}

/** The names of a book that lead somewhere, by the name in small letters. */
export type Names = ReadonlyMap<string, Name>;

/** Takes the names that the engine can hold and whose cells exist; a formula with any other is told that there is no
 *  such name. A name that reads as a cell would take the cell's place, so it is none. */
export function usableNames(names: { readonly [name: string]: string }, sheets: ReadonlySet<string>): Names {
  const usable = new Map<string, Name>();
  for (const [name, range] of Object.entries(names)) {
    const key = name.toLowerCase();
    const reach = reachOf(range);
    if (!isUsableName(name) || usable.has(key) || !reach || !sheets.has(reach.sheet)) continue;
    usable.set(key, { name, range, reach });
  }
  return usable;
}

/** Reads `Allowances!$A$5:$J$9`; gives null for anything that is not one whole, fixed place on a named sheet. */
function reachOf(range: string): Reach | null {
  const outcome = parseFormula(range);
  if (!outcome.ok) return null;
  const place = outcome.value;
  if (place.type !== 'cell' && place.type !== 'range') return null;
  const [from, to] = place.type === 'cell' ? [place, place] : [place.start, place.end];
  if (place.sheet === null || ![from, to].every((corner) => corner.rowFixed && corner.columnFixed))
    return null;
  return { sheet: place.sheet.toLowerCase(), range: rangeOver(from, to) };
}

/** The block between two corners, whichever way they were written. */
export function rangeOver(
  one: { readonly row: number; readonly column: number },
  other: { readonly row: number; readonly column: number },
): CellRange {
  return {
    from: { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) },
    to: { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) },
  };
}
