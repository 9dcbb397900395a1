import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { writeAddress } from '../base/address.ts';
import { cellsOf } from './cells.ts';
import type { Sheet, Workbook } from './document.ts';
import { locksHold } from './locked.ts';

/** The digest of the locked cells of each sheet, by its id. A job's file carries them, so that a cell which was damaged or
 *  changed by hand does not pass for the template's. Whoever means to can make new ones: they guard against accidents. */
export type Seals = { readonly [sheet: string]: string };

export function sealsOf(workbook: Workbook): Seals | null {
  if (!locksHold(workbook)) return null;
  const seals = Object.fromEntries(
    workbook.sheets.flatMap((sheet) => {
      const seal = sealOf(workbook, sheet);
      return seal === null ? [] : [[sheet.id, seal]];
    }),
  );
  return Object.keys(seals).length === 0 ? null : seals;
}

/** The name or id of a sheet whose locked cells are not those that were sealed; null where all are. */
export function brokenSeal(workbook: Workbook, seals: Seals): string | null {
  const own = sealsOf(workbook) ?? {};
  const id = [...new Set([...Object.keys(own), ...Object.keys(seals)])].find(
    (one) => own[one] !== seals[one],
  );
  return id === undefined ? null : (workbook.sheets.find((sheet) => sheet.id === id)?.name ?? id);
}

/** Together with the names and the sheets' names, since locked formulas read by them. */
function sealOf(workbook: Workbook, sheet: Sheet): string | null {
  const locked = [...cellsOf(sheet)].flatMap(({ address, cell }) =>
    cell.locked ? [[writeAddress(address), inOrder(cell)]] : [],
  );
  if (locked.length === 0) return null;
  const sealed = [locked, inOrder(workbook.names), workbook.sheets.map(({ id, name }) => [id, name])];
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify(sealed))));
}

/** The same value with its keys in order, since a file may have them in any. */
function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([key, part]) => [key, inOrder(part)]),
  );
}
