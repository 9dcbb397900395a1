import { sameAddress, writeAddress, writeRange } from '../base/address.ts';
import { parseFormula } from '../formula/parse.ts';
import { sheetPrefix } from '../formula/reference-text.ts';
import { sheetNamed, sheetWithId } from './cells.ts';
import type { NamedRange, Workbook } from './document.ts';

/** Reads a place as people type it: `B4`, `B4:C9`, `Wrap!B4`, or a name. Without a sheet it lies on their own. Null where
 *  the workbook has no such place. */
export function readPlace(workbook: Workbook, ownSheet: string, typed: string): NamedRange | null {
  const parsed = parseFormula(typed.trim());
  if (!parsed.ok) return null;
  const place = parsed.value;
  if (place.type === 'name') {
    const wanted = place.name.toLowerCase();
    return Object.entries(workbook.names).find(([name]) => name.toLowerCase() === wanted)?.[1] ?? null;
  }
  if (place.type !== 'cell' && place.type !== 'range') return null;
  const sheet = place.sheet === null ? sheetWithId(workbook, ownSheet) : sheetNamed(workbook, place.sheet);
  if (!sheet) return null;
  const [one, other] = place.type === 'cell' ? [place, place] : [place.start, place.end];
  const range = {
    from: { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) },
    to: { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) },
  };
  return { sheet: sheet.id, range };
}

/** `'Main trunk'!B4:C9`, as `readPlace` reads it. */
export function writePlace(workbook: Workbook, { sheet, range }: NamedRange): string {
  const cells = sameAddress(range.from, range.to) ? writeAddress(range.from) : writeRange(range);
  return sheetPrefix(sheetWithId(workbook, sheet)?.name ?? '') + cells;
}
