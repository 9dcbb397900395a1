import { readDelimited, writeField } from './delimited.ts';

/** Blocks of texts as tab-separated lines, the way that programs hand them to each other over the clipboard. */

/** Writes rows of texts; `readTsv` gives the very same rows back. */
export function writeTsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => lineOf(row, rows.length > 1)).join('\n');
}

/** An empty line at the end of a text says nothing, so that a row of one empty text needs its quotes. */
function lineOf(row: readonly string[], isOneOfMany: boolean): string {
  if (isOneOfMany && row.length === 1 && row[0] === '') return '""';
  return row.map((text) => writeField(text, '\t')).join('\t');
}

/** Reads tab-separated text, from here or from another program. One line break at its end does not count. */
export function readTsv(text: string): readonly (readonly string[])[] {
  return readDelimited(text, '\t');
}
