/** Wide enough for most screens, narrow enough to print. */
const pageWidth = 80;

/** Folds a text into lines of the page, between words: the first after `first`, the others indented as deep as `rest`. */
export function fold(text: string, first = '', rest = ' '.repeat(first.length)): string {
  const lines: string[] = [];
  let line = first;
  let isFresh = true;
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (!isFresh && line.length + 1 + word.length > pageWidth) {
      lines.push(line);
      line = rest;
      isFresh = true;
    }
    line += isFresh ? word : ` ${word}`;
    isFresh = false;
  }
  return [...lines, line].join('\n').replace(/[ \t]+$/gm, '');
}

/** Rows under one another, each column as wide as its widest cell; the last one may be as long as it likes. */
export function columns(rows: readonly (readonly string[])[], indent = '  '): string {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? '').length)),
  );
  return rows
    .map((row) => indent + row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  '))
    .join('\n')
    .replace(/[ \t]+$/gm, '');
}
