/** Text that stands in a cell of a table or in a line, with nothing that Markdown would take for a mark. */
export function escaped(text: string): string {
  return text.replace(/[\\|*_<>[\]]/g, (sign) => `\\${sign}`);
}

export function table(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [
    line(headings),
    line(headings.map(() => '---')),
    ...rows.map((cells) => line(cells.map((cell) => (cell.startsWith('`') ? cell : escaped(cell))))),
  ].join('\n');
}
