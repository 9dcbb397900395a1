import type { CellAddress, CellRange } from '../base/address.ts';
import { cellsOf } from '../workbook/cells.ts';
import type { Sheet } from '../workbook/document.ts';
import type { Standing } from '../workbook/standing.ts';
import { type Selection, usedPart } from './grid/selection.ts';
import type { Page } from './sheets/page-head.tsx';

/** Where the person is: what is selected on one sheet. Kept for each, so that coming back is coming back to the same. */
export interface Spot {
  readonly sheetId: string;
  readonly cells: { readonly [sheetId: string]: Selection };
  /** Set while something else stands in place of the sheet. */
  readonly page?: Page;
  /** The cell whose formula is being written while the person picks cells of another sheet for it. */
  readonly writing?: { readonly sheetId: string; readonly address: CellAddress } | undefined;
}

/** Where one begins on a sheet: at the first cell that waits to be filled, or else at the first that measures something. */
export function firstSpot(sheet: Sheet | undefined, standing: Standing | undefined): CellAddress {
  const waits = standing?.concerns.find((concern) => concern.kind === 'fill');
  const cells = sheet ? [...cellsOf(sheet)] : [];
  const measured = cells.find(({ cell }) => cell.unit !== undefined && cell.content !== null);
  return waits?.address ?? measured?.address ?? { row: 0, column: 0 };
}

export function usedRange(sheet: Sheet | undefined, range: CellRange): CellRange {
  return sheet ? usedPart(sheet, range) : range;
}

export function backToWriting({ cells }: Spot, { sheetId, address }: NonNullable<Spot['writing']>): Spot {
  return { sheetId, cells: { ...cells, [sheetId]: { here: address, head: address } } };
}
