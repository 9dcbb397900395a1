import type { CellReference, RangeReference } from '../formula/expression.ts';
import { limits } from '../formula/limits.ts';
import { isUsableName } from '../formula/name.ts';
import { parseFormula } from '../formula/parse.ts';
import { cellCount, reachOf } from './reach.ts';

export interface Name {
  /** As the book writes it. */
  readonly name: string;
  /** `Allowances!$A$5:$J$9`, read. */
  readonly reference: CellReference | RangeReference;
}

/** The names of a book that lead somewhere, by the name in small letters. */
export type Names = ReadonlyMap<string, Name>;

/** Takes the names that a formula can use and whose cells exist; a formula with any other is told that there is no such
 *  name. `sheets` are in small letters. */
export function usableNames(names: { readonly [name: string]: string }, sheets: ReadonlySet<string>): Names {
  const usable = new Map<string, Name>();
  for (const [name, range] of Object.entries(names)) {
    const key = name.toLowerCase();
    const reference = fixedReference(range);
    if (!isUsableName(name) || usable.has(key) || !reference) continue;
    const reach = reachOf(reference, '');
    if (sheets.has(reach.sheet) && cellCount(reach) <= limits.cells) usable.set(key, { name, reference });
  }
  return usable;
}

/** Reads one whole, fixed place on a named sheet; gives null for anything else. */
function fixedReference(range: string): CellReference | RangeReference | null {
  const outcome = parseFormula(range);
  if (!outcome.ok) return null;
  const place = outcome.value;
  if ((place.type !== 'cell' && place.type !== 'range') || place.sheet === null) return null;
  const corners = place.type === 'cell' ? [place] : [place.start, place.end];
  return corners.every((corner) => corner.rowFixed && corner.columnFixed) ? place : null;
}
