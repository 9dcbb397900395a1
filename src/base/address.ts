/** Cell addresses. Rows and columns count from 0 inside; `A1` notation is how people see them. */
export interface CellAddress {
  readonly row: number;
  readonly column: number;
}

/** Along which way lines of cells run: rows or columns. */
export type Axis = 'row' | 'column';

/** A block of cells, both corners included, `from` above and left of `to`. */
export interface CellRange {
  readonly from: CellAddress;
  readonly to: CellAddress;
}

/** `0` is A, `25` is Z, `26` is AA. */
export function columnName(column: number): string {
  let name = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
  }
  return name;
}

/** The opposite of `columnName`; upper and lower case alike. Gives -1 for anything but letters. */
export function columnNumber(name: string): number {
  if (!/^[A-Za-z]{1,3}$/.test(name)) return -1;
  let number = 0;
  for (const letter of name.toUpperCase()) number = number * 26 + (letter.charCodeAt(0) - 64);
  return number - 1;
}

export function writeAddress(address: CellAddress): string {
  return `${columnName(address.column)}${address.row + 1}`;
}

/** Reads `B2` or `$B$2`; gives null for anything else. */
export function readAddress(text: string): CellAddress | null {
  const parts = /^\$?([A-Za-z]{1,3})\$?([1-9][0-9]{0,6})$/.exec(text);
  if (!parts?.[1] || !parts[2]) return null;
  return { row: Number(parts[2]) - 1, column: columnNumber(parts[1]) };
}

export function writeRange(range: CellRange): string {
  return `${writeAddress(range.from)}:${writeAddress(range.to)}`;
}

export function sameAddress(one: CellAddress, other: CellAddress): boolean {
  return one.row === other.row && one.column === other.column;
}

export function isInRange(address: CellAddress, range: CellRange): boolean {
  return (
    address.row >= range.from.row &&
    address.row <= range.to.row &&
    address.column >= range.from.column &&
    address.column <= range.to.column
  );
}
