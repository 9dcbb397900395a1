/** The rows of a comma-separated text, each by the headings of its first line. A quoted cell may hold commas, line
 *  breaks and doubled quotes. */
export function readCsv(text: string): readonly Readonly<Record<string, string>>[] {
  const [headings = [], ...lines] = cellsOf(text).filter((line) => line.some((cell) => cell !== ''));
  return lines.map((line) =>
    Object.fromEntries(headings.map((heading, index) => [heading, line[index] ?? ''])),
  );
}

function cellsOf(text: string): readonly (readonly string[])[] {
  const lines: string[][] = [];
  let line: string[] = [];
  for (const [, quoted, plain = '', end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r?\n|$)/g)) {
    line.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === ',') continue;
    lines.push(line);
    line = [];
  }
  return lines;
}
