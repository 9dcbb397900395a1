import { readAddress, writeAddress } from '../base/address.ts';
import { sheetPrefix } from '../formula/reference-text.ts';
import type { Place } from './calculator.ts';

/** `Wrap!F4`, `'Main trunk'!F4`: a cell of the whole workbook as formulas write it. */
export function placeName({ sheet, row, column }: Place): string {
  return `${sheetPrefix(sheet)}${writeAddress({ row, column })}`;
}

/** Reads a place with a sheet, quoted or not; gives null for anything else. */
export function readPlaceName(name: string): Place | null {
  const parts = /^(?:'((?:[^']|'')*)'|([^'!]+))!([A-Z]+[0-9]+)$/.exec(name);
  const address = readAddress(parts?.[3] ?? '');
  const sheet = parts?.[1]?.replaceAll("''", "'") ?? parts?.[2];
  return address && sheet !== undefined ? { sheet, ...address } : null;
}
