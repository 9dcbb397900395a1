import { readDelimited, type Separator, writeField } from './delimited.ts';

/** Comma-separated text for files, as RFC 4180 has it. */

/** Every line ends with a line break, the last one too. `readCsv` gives the very same rows back. */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map((text) => writeField(text, ',')).join(',')}\r\n`).join('');
}

/** Reads what another program calls a CSV file: with commas, or with semicolons or tabs, as some write them. */
export function readCsv(
  text: string,
  separator: Separator = separatorOf(text),
): readonly (readonly string[])[] {
  return readDelimited(text.replace(/^\uFEFF/, ''), separator);
}

const separators = [',', ';', '\t'] as const;

/** The separator that most often stands outside quotes in the first line; a comma where there is none. */
export function separatorOf(text: string): Separator {
  const [line = ''] = text.replace(/"[^"]*"/g, '').split(/\r\n|\n|\r/, 1);
  const counts = separators.map((one) => line.split(one).length);
  return separators[counts.indexOf(Math.max(...counts))] ?? ',';
}
