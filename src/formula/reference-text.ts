import { columnName } from '../base/address.ts';
import type { Corner } from './expression.ts';

/** `B2`, `$B$2`. */
export function cornerText({ row, column, rowFixed, columnFixed }: Corner): string {
  return `${columnFixed ? '$' : ''}${columnName(column)}${rowFixed ? '$' : ''}${row + 1}`;
}

/** `Sheet!` or `'Sheet name'!`; in quotes where the bare name would read as something else. */
export function sheetPrefix(sheet: string | null): string {
  if (sheet === null) return '';
  return /^[A-Za-z_\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u02af][\w\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u02af]*$/.test(
    sheet,
  )
    ? `${sheet}!`
    : `'${sheet.replaceAll("'", "''")}'!`;
}
