/** Blocks of texts as lines of fields with a separator between them. A text with the separator, a line break or a quote
 *  in it stands in quotes, and a quote inside them is doubled (RFC 4180, which says it of the comma). */

export type Separator = '\t' | ',' | ';';

/** A field as it is written: in quotes where it must be, bare elsewhere. */
export function writeField(text: string, separator: Separator): string {
  const mustBeQuoted = text.includes(separator) || /[\n\r"]/.test(text);
  return mustBeQuoted ? `"${text.replaceAll('"', '""')}"` : text;
}

/** A field at the start of a line or after a separator. A quote opens a field only where it also closes it: `1/2" ply`
 *  and a lone `"` are texts like any other. */
const fields: { readonly [one in Separator]: RegExp } = {
  '\t': /(?:"((?:[^"]|"")*)"(?=[\t\r\n]|$)|([^\t\r\n]*))(\t|\r\n|\n|\r|$)/y,
  ',': /(?:"((?:[^"]|"")*)"(?=[,\r\n]|$)|([^,\r\n]*))(,|\r\n|\n|\r|$)/y,
  ';': /(?:"((?:[^"]|"")*)"(?=[;\r\n]|$)|([^;\r\n]*))(;|\r\n|\n|\r|$)/y,
};

/** Reads lines of fields, from here or from another program. One line break at the end does not count. */
export function readDelimited(text: string, separator: Separator): readonly (readonly string[])[] {
  const field = fields[separator];
  const rows: string[][] = [];
  let row: string[] = [];
  field.lastIndex = 0;
  for (let match = field.exec(text); match; match = field.exec(text)) {
    const [, quoted, plain = '', end = ''] = match;
    row.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end === separator) continue;
    rows.push(row);
    row = [];
    if (field.lastIndex >= text.length) break;
  }
  return rows;
}
