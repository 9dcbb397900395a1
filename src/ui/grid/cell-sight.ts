import type { CellAddress, CellRange } from '../../base/address.ts';
import { isInRange, sameAddress } from '../../base/address.ts';
import type { CellValue } from '../../base/value.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Cell, Sheet } from '../../workbook/document.ts';
import { shownValue } from '../../workbook/standing.ts';
import type { Values } from '../../workbook/values.ts';

/** What the grid is showing: one sheet with its values, where the person is, and what that cell comes from. */
export interface SheetSight {
  readonly sheet: Sheet;
  readonly values: Values;
  readonly selected: CellAddress;
  readonly marked: readonly CellRange[];
}

/** Everything that decides how one cell of the grid looks. */
export interface CellSight {
  readonly address: CellAddress;
  readonly sheet: Sheet;
  /** Of the whole workbook; what names the row may be figured. */
  readonly values: Values;
  readonly cell: Cell | null;
  readonly value: CellValue;
  readonly isSelected: boolean;
  readonly isMarked: boolean;
  readonly isInHeadingRow: boolean;
}

export function sightOf({ sheet, values, selected, marked }: SheetSight, address: CellAddress): CellSight {
  const cell = cellAt(sheet, address);
  return {
    address,
    sheet,
    values,
    cell,
    value: shownValue(sheet, address, cell, values),
    isSelected: sameAddress(address, selected),
    isMarked: marked.some((range) => isInRange(address, range)),
    isInHeadingRow: hasHeading(sheet, address.row),
  };
}

/** Whether both would be painted alike. Cells and values are never altered, so being the same one is enough. */
export function sameSight(one: CellSight, other: CellSight): boolean {
  return (
    one.cell === other.cell &&
    one.value === other.value &&
    one.isSelected === other.isSelected &&
    one.isMarked === other.isMarked &&
    one.isInHeadingRow === other.isInHeadingRow
  );
}

export function hasHeading(sheet: Sheet, row: number): boolean {
  return (sheet.rows[row] ?? []).some((cell) => cell?.role === 'heading');
}
