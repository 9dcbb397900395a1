import type { CellAddress } from '../base/address.ts';
import { sheetNamed } from '../workbook/cells.ts';
import type { Sheet, Workbook } from '../workbook/document.ts';
import { readKeptPlace } from '../workbook/kept-places.ts';

/** A cell as worked examples write it: `Seal and fasten!B4`. Null where the workbook has no such sheet, or where the
 *  text is no address. */
export function placeIn(
  workbook: Workbook,
  written: string,
): { readonly sheet: Sheet; readonly address: CellAddress } | null {
  const place = readKeptPlace(written);
  const sheet = place ? sheetNamed(workbook, place.sheet) : undefined;
  return sheet && place ? { sheet, address: { row: place.row, column: place.column } } : null;
}
