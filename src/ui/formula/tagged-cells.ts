import type { CellRange } from '../../base/address.ts';
import { writeAddress, writeRange } from '../../base/address.ts';
import type { Reference } from '../../formula/expression.ts';
import { referencesIn } from '../../formula/references.ts';
import { sheetNamed, sheetWithId } from '../../workbook/cells.ts';
import type { Sheet, Workbook } from '../../workbook/document.ts';

/** Cells that a formula reads, under the number by which they are found again in the sheet and beside the formula. */
export interface TaggedCells {
  readonly tag: number;
  readonly sheetId: string;
  readonly range: CellRange;
  /** As the formula writes them, without `$`: `B2`, `Wrap!E5`, `lap`. */
  readonly written: string;
}

/** Numbered in the order in which the formula first names them; the same cells have one number. */
export function taggedCells(workbook: Workbook, own: string, text: string): readonly TaggedCells[] {
  const sheet = sheetWithId(workbook, own);
  const found = new Map<string, TaggedCells>();
  for (const reference of sheet ? referencesIn(text) : []) {
    const place = sheet && placeOf(workbook, sheet, reference);
    if (!place) continue;
    const key = `${place.sheetId} ${writeRange(place.range)}`;
    if (!found.has(key)) found.set(key, { tag: found.size + 1, ...place });
  }
  return [...found.values()];
}

function placeOf(workbook: Workbook, own: Sheet, reference: Reference): Omit<TaggedCells, 'tag'> | null {
  if (reference.type === 'name') {
    const known = Object.entries(workbook.names).find(
      ([name]) => name.toLowerCase() === reference.name.toLowerCase(),
    );
    return known ? { sheetId: known[1].sheet, range: known[1].range, written: known[0] } : null;
  }
  const sheet = reference.sheet === null ? own : sheetNamed(workbook, reference.sheet);
  if (!sheet) return null;
  const [one, other] = reference.type === 'cell' ? [reference, reference] : [reference.start, reference.end];
  const range = {
    from: { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) },
    to: { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) },
  };
  const bare = reference.type === 'cell' ? writeAddress(range.from) : writeRange(range);
  return { sheetId: sheet.id, range, written: sheet === own ? bare : `${sheet.name}!${bare}` };
}
