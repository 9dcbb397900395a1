import type { CellAddress, CellRange } from '../../base/address.ts';
import { isInRange, sameAddress } from '../../base/address.ts';
import type { CellValue } from '../../base/value.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Cell, Sheet } from '../../workbook/document.ts';
import { shownValue } from '../../workbook/standing.ts';
import type { Values } from '../../workbook/values.ts';
import type { TaggedCells } from '../formula/tagged-cells.ts';
import { isOneCell } from './selection.ts';

/** What the grid is showing: one sheet with its values, where the person is, and what that cell comes from. */
export interface SheetSight {
  readonly sheet: Sheet;
  readonly values: Values;
  readonly selected: CellAddress;
  readonly marked: readonly CellRange[];
  /** What is selected around the cell where the person is; that cell alone, most of the time. */
  readonly range: CellRange;
  /** Cells with a dashed line around them: those cut out and not yet put in, or those that a pull would fill. */
  readonly outlined: CellRange | null;
  /** Cells of this sheet that the formula being written reads. */
  readonly tagged: readonly TaggedCells[];
}

/** Everything that decides how one cell of the grid looks. */
export interface CellSight {
  readonly address: CellAddress;
  readonly sheet: Sheet;
  /** Of the whole workbook; what names the row may be figured. */
  readonly values: Values;
  readonly cell: Cell | null;
  readonly value: CellValue;
  /** Where the person is. */
  readonly isHere: boolean;
  readonly isSelected: boolean;
  readonly isMarked: boolean;
  /** Which sides of a selection of several cells run along this one: `top left`. Null off such a selection. */
  readonly rim: string | null;
  readonly outline: string | null;
  /** Whether the corner to fill from is here. */
  readonly isCorner: boolean;
  readonly isInHeadingRow: boolean;
  readonly tags: readonly CellTag[];
}

/** The number of a stretch of cells in the formula being written, and which of its sides run along this cell. */
export interface CellTag {
  readonly tag: number;
  readonly rim: string;
  /** How many numbers stand before its own; the number itself stands in the first cell only, else null. */
  readonly place: number | null;
}

const noTags: readonly CellTag[] = [];

export function sightOf(sight: SheetSight, address: CellAddress): CellSight {
  const { sheet, values, selected, marked, range, outlined, tagged } = sight;
  const cell = cellAt(sheet, address);
  return {
    address,
    sheet,
    values,
    cell,
    value: shownValue(sheet, address, cell, values),
    isHere: sameAddress(address, selected),
    isSelected: isInRange(address, range),
    rim: isOneCell(range) ? null : rimOf(address, range),
    outline: outlined ? rimOf(address, outlined) : null,
    isCorner: sameAddress(address, range.to),
    isMarked: marked.some((range) => isInRange(address, range)),
    isInHeadingRow: hasHeading(sheet, address.row),
    tags: tagged.length === 0 ? noTags : tagsOf(address, tagged),
  };
}

/** Whether both would be painted alike. Cells and values are never altered, so being the same one is enough. */
export function sameSight(one: CellSight, other: CellSight): boolean {
  return (
    one.cell === other.cell &&
    one.value === other.value &&
    one.isHere === other.isHere &&
    one.isSelected === other.isSelected &&
    one.rim === other.rim &&
    one.outline === other.outline &&
    one.isCorner === other.isCorner &&
    one.isMarked === other.isMarked &&
    one.isInHeadingRow === other.isInHeadingRow &&
    sameTags(one.tags, other.tags)
  );
}

function tagsOf(address: CellAddress, tagged: readonly TaggedCells[]): readonly CellTag[] {
  let numbers = 0;
  return tagged.flatMap(({ tag, range }) => {
    const rim = rimOf(address, range);
    if (rim === null) return [];
    const place = sameAddress(address, range.from) ? numbers++ : null;
    return [{ tag, rim, place }];
  });
}

function sameTags(some: readonly CellTag[], others: readonly CellTag[]): boolean {
  return (
    some.length === others.length &&
    some.every(({ tag, rim }, at) => tag === others[at]?.tag && rim === others[at]?.rim)
  );
}

function rimOf(address: CellAddress, range: CellRange): string | null {
  if (!isInRange(address, range)) return null;
  const sides = [
    address.row === range.from.row && 'top',
    address.row === range.to.row && 'bottom',
    address.column === range.from.column && 'left',
    address.column === range.to.column && 'right',
  ];
  return sides.filter(Boolean).join(' ');
}

export function hasHeading(sheet: Sheet, row: number): boolean {
  return (sheet.rows[row] ?? []).some((cell) => cell?.role === 'heading');
}
