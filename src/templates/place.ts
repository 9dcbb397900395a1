import type { CellAddress } from '../base/address.ts';
import type { CellValue } from '../base/value.ts';
import { cellAt, sheetNamed } from '../workbook/cells.ts';
import type { Sheet, Workbook } from '../workbook/document.ts';
import type { KeptWorkbook } from '../workbook/file.ts';
import { readKeptPlace } from '../workbook/kept-places.ts';
import { shownValue } from '../workbook/standing.ts';

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

/** What the cell at a place shows; null where there is no such cell. */
export function valueAtPlace({ workbook, values }: KeptWorkbook, written: string): CellValue {
  const place = placeIn(workbook, written);
  return place ? shownValue(place.sheet, place.address, cellAt(place.sheet, place.address), values) : null;
}
