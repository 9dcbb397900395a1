import type { CellAddress } from '../../base/address.ts';
import type { CellValue } from '../../base/value.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Cell, Sheet } from '../../workbook/document.ts';
import { shownValue } from '../../workbook/standing.ts';
import type { Values } from '../../workbook/values.ts';
import { type CellMarks, marksOf, type SheetMarks, sameMarks } from './cell-marks.ts';

/** What the grid is showing: one sheet with its values, and what is marked on it. */
export interface SheetSight extends SheetMarks {
  readonly sheet: Sheet;
  readonly values: Values;
}

/** Everything that decides how one cell of the grid looks. */
export interface CellSight extends CellMarks {
  readonly address: CellAddress;
  readonly sheet: Sheet;
  /** Of the whole workbook; what names the row may be figured. */
  readonly values: Values;
  readonly cell: Cell | null;
  readonly value: CellValue;
  readonly isInHeadingRow: boolean;
}

export function sightOf(sight: SheetSight, address: CellAddress): CellSight {
  const { sheet, values } = sight;
  const cell = cellAt(sheet, address);
  return {
    ...marksOf(sight, address),
    address,
    sheet,
    values,
    cell,
    value: shownValue(sheet, address, cell, values),
    isInHeadingRow: hasHeading(sheet, address.row),
  };
}

/** Whether both would be painted alike. Cells and values are never altered, so being the same one is enough. */
export function sameSight(one: CellSight, other: CellSight): boolean {
  return (
    one.cell === other.cell &&
    one.value === other.value &&
    one.isInHeadingRow === other.isInHeadingRow &&
    sameMarks(one, other)
  );
}

export function hasHeading(sheet: Sheet, row: number): boolean {
  return (sheet.rows[row] ?? []).some((cell) => cell?.role === 'heading');
}
