import type { CellAddress } from '../../base/address.ts';
import { acrossAt } from '../../workbook/across.ts';
import type { Cell, Sheet } from '../../workbook/document.ts';
import { columnAt } from '../../workbook/lines.ts';
import { columnPixels } from './column-pixels.ts';

/** The heading or the words that show in a cell because they go across it; each covered cell shows its own part. */
export interface Covering {
  readonly cell: Cell;
  readonly head: CellAddress;
  /** The last column that is covered. */
  readonly lastColumn: number;
  /** How far to the left the whole begins, and how wide it is, in pixels. */
  readonly from: number;
  readonly width: number;
}

export function coveringOf(sheet: Sheet, address: CellAddress): Covering | null {
  const across = acrossAt(sheet, address);
  if (!across) return null;
  const { cell, head, columns } = across;
  return {
    cell,
    head,
    lastColumn: head.column + columns - 1,
    from: widthOf(sheet, head.column, address.column),
    width: widthOf(sheet, head.column, head.column + columns),
  };
}

/** From one column up to another, without those that are hidden. */
function widthOf(sheet: Sheet, from: number, to: number): number {
  let pixels = 0;
  for (let column = from; column < to; column += 1) {
    const look = columnAt(sheet, column);
    pixels += look.hidden ? 0 : columnPixels(look.width);
  }
  return pixels;
}

export function sameCovering(one: Covering | null, other: Covering | null): boolean {
  if (one === null || other === null) return one === other;
  return one.cell === other.cell && one.from === other.from && one.width === other.width;
}
