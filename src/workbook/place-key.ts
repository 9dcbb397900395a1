import type { CellAddress } from '../base/address.ts';

/** More than the 702 columns that a file may have. */
export const columnsAtMost = 1024;

/** One number for a place in a sheet, so that a map can hold it. */
export function placeKey(address: CellAddress): number {
  return address.row * columnsAtMost + address.column;
}

export function placeOfKey(key: number): CellAddress {
  return { row: Math.floor(key / columnsAtMost), column: key % columnsAtMost };
}
