import type { CellAddress } from '../base/address.ts';
import type { CellValue } from '../base/value.ts';

/** The values of formula cells as last figured, by sheet name and place. Derived, so it may be thrown away. */
export type Values = ReadonlyMap<string, ReadonlyMap<number, CellValue>>;

export const noValues: Values = new Map();

/** More than the 702 columns that a file may have. */
const columnsAtMost = 1024;

/** One number for a place in a sheet, so that a map can hold it. */
export function placeKey(address: CellAddress): number {
  return address.row * columnsAtMost + address.column;
}

export function placeOfKey(key: number): CellAddress {
  return { row: Math.floor(key / columnsAtMost), column: key % columnsAtMost };
}

export function valueAt(values: Values, sheet: string, address: CellAddress): CellValue | undefined {
  return values.get(sheet)?.get(placeKey(address));
}

/** The same values with some of them new; sheets without news are shared. */
export function withValues(
  values: Values,
  news: readonly (CellAddress & { readonly sheet: string; readonly value: CellValue })[],
): Values {
  const next = new Map(values);
  const copied = new Map<string, Map<number, CellValue>>();
  for (const { sheet, value, ...address } of news) {
    const own = copied.get(sheet) ?? new Map(values.get(sheet));
    copied.set(sheet, own);
    next.set(sheet, own);
    if (value === null) own.delete(placeKey(address));
    else own.set(placeKey(address), value);
  }
  return next;
}
