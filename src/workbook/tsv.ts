/** Blocks of texts as tab-separated lines, the way that programs hand them to each other over the clipboard: a text with
 *  a tab, a line break or a quote in it stands in quotes, and a quote inside them is doubled. */

/** Writes rows of texts; `readTsv` gives the very same rows back. */
export function writeTsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => lineOf(row, rows.length > 1)).join('\n');
}

/** An empty line at the end of a text says nothing, so that a row of one empty text needs its quotes. */
function lineOf(row: readonly string[], isOneOfMany: boolean): string {
  if (isOneOfMany && row.length === 1 && row[0] === '') return '""';
  return row.map((text) => (/[\t\n\r"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)).join('\t');
}

/** A field at the start of a line or after a tab. A quote opens a field only where it also closes it: `1/2" ply` and a
 *  lone `"` are texts like any other. */
const field = /(?:"((?:[^"]|"")*)"(?=[\t\r\n]|$)|([^\t\r\n]*))(\t|\r\n|\n|\r|$)/y;

/** Reads tab-separated text, from here or from another program. One line break at its end does not count. */
export function readTsv(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let row: string[] = [];
  field.lastIndex = 0;
  for (let match = field.exec(text); match; match = field.exec(text)) {
    const [, quoted, plain = '', end = ''] = match;
    row.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end === '\t') continue;
    rows.push(row);
    row = [];
    if (field.lastIndex >= text.length) break;
  }
  return rows;
}
