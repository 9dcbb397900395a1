import { diffArrays } from 'diff';
import type { Sheet } from './document.ts';
import { shownValue } from './standing.ts';
import type { Values } from './values.ts';

/** The rows of one sheet beside those of another, by index; null where only the other one has it. */
export interface RowPair {
  readonly before: number | null;
  readonly after: number | null;
}

/** Pairs the rows of two sheets by what stands first in each, so that a row put in above does not make all rows below look
 *  changed. Rows that were written over in one place go together one by one. */
export function rowPairs(
  before: { readonly sheet: Sheet; readonly values: Values },
  after: { readonly sheet: Sheet; readonly values: Values },
): readonly RowPair[] {
  const [keysBefore, keysAfter] = [keysOf(before), keysOf(after)];
  if (keysBefore.length === keysAfter.length && keysBefore.every((key, at) => key === keysAfter[at])) {
    return keysBefore.map((_, row) => ({ before: row, after: row }));
  }
  const pairs: RowPair[] = [];
  let gone: number[] = [];
  let come: number[] = [];
  let [row, rowAfter] = [0, 0];
  const settle = () => {
    for (let at = 0; at < Math.max(gone.length, come.length); at += 1) {
      pairs.push({ before: gone[at] ?? null, after: come[at] ?? null });
    }
    [gone, come] = [[], []];
  };
  for (const part of diffArrays([...keysBefore], [...keysAfter]) ?? []) {
    if (!part.added && !part.removed) settle();
    for (let at = 0; at < part.count; at += 1) {
      if (part.removed) gone.push(row++);
      else if (part.added) come.push(rowAfter++);
      else pairs.push({ before: row++, after: rowAfter++ });
    }
  }
  settle();
  return pairs;
}

function keysOf({ sheet, values }: { readonly sheet: Sheet; readonly values: Values }): readonly string[] {
  return sheet.rows.map((cells, row) => {
    for (const [column, cell] of cells.entries()) {
      const value = shownValue(sheet, { row, column }, cell, values);
      if (value === null || value === '') continue;
      return `${column} ${typeof value === 'object' ? value.fault : String(value)}`;
    }
    return cells.map((cell) => cell?.role ?? '').join();
  });
}
