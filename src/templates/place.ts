import { type CellAddress, readAddress } from '../base/address.ts';
import { sheetNamed } from '../workbook/cells.ts';
import type { Sheet, Workbook } from '../workbook/document.ts';

/** A cell as worked examples write it: `Seal and fasten!B4`. Null where the workbook has no such sheet, or where the
 *  text is no address. */
export function placeIn(
  workbook: Workbook,
  written: string,
): { readonly sheet: Sheet; readonly address: CellAddress } | null {
  const mark = written.lastIndexOf('!');
  const sheet = sheetNamed(workbook, written.slice(0, Math.max(0, mark)));
  const address = readAddress(written.slice(mark + 1));
  return sheet && address ? { sheet, address } : null;
}
