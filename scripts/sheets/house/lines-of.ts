import type { WorkedExample } from '../../../src/workbook/document.ts';

/** The lines of a table under its heading in row 1, each by its columns. */
export function linesOf(sheet: string, lines: readonly WorkedExample['given'][]): WorkedExample['given'] {
  return Object.fromEntries(
    lines.flatMap((one, index) =>
      Object.entries(one).map(([column, value]) => [`${sheet}!${column}${index + 2}`, value]),
    ),
  );
}
