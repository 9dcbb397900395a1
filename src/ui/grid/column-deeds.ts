import type { RefObject } from 'react';
import type { SessionState } from '../../session/state.ts';
import type { Sheet } from '../../workbook/document.ts';
import { pullEdge } from './column-edge.ts';
import { charactersIn } from './column-pixels.ts';
import { fittingWidths } from './fit-columns.ts';
import type { RangeDeeds } from './range-deeds.ts';
import type { SheetTable } from './sheet-table.ts';
import { createTextMeasure } from './text-lines.ts';

/** How wide columns are, by what stands in them or by hand. */
export interface ColumnDeeds {
  readonly fitColumns: (at: number, count: number) => void;
  readonly pullColumn: (column: number, pixels: number, x: number) => void;
}

export function columnDeeds({
  state,
  sheet,
  host,
  table,
  changeLines,
}: {
  readonly state: SessionState;
  readonly sheet: Sheet;
  readonly host: RefObject<HTMLElement | null>;
  readonly table: RefObject<SheetTable | null>;
  readonly changeLines: RangeDeeds['changeLines'];
}): ColumnDeeds {
  function fitColumns(at: number, count: number): void {
    if (!host.current) return;
    const widths = fittingWidths(sheet, state.values, { at, count }, createTextMeasure(host.current));
    changeLines({ type: 'resize_column', sheet: sheet.id, at, widths });
  }

  function pullColumn(column: number, pixels: number, x: number): void {
    pullEdge({
      x,
      pixels,
      onWidth: (width) => table.current?.tryWidth(column, width),
      onEnd: (width) => {
        const isMoved = width !== null && Math.abs(width - pixels) >= 2;
        const widths = isMoved ? [charactersIn(width)] : [];
        const isTaken = changeLines({ type: 'resize_column', sheet: sheet.id, at: column, widths });
        if (!isTaken || !isMoved) table.current?.tryWidth(column, pixels);
      },
    });
  }

  return { fitColumns, pullColumn };
}
