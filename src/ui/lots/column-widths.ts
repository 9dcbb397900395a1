import type { LotTable } from '../../lots/lot-table.ts';
import { type GridColumn, gridCell, headOf } from './grid-columns.ts';

/** How wide each column is, as a grid template: as its longest cell among the first lots, and the longest word over it. */
export function columnWidths(table: LotTable, columns: readonly GridColumn[]): string {
  const some = table.rows.slice(0, 60);
  return columns
    .map((column) => {
      const head = Math.max(
        ...headOf(column)
          .split(/[\s,]+/)
          .map((word) => word.length),
        headOf(column).length / 2,
      );
      const cells = some.map((lot) => gridCell(table, lot, column, null).text.length);
      const [least, most] = leastAndMost(column.kind);
      return `${Math.min(most, Math.max(least, head, ...cells) + 2)}ch`;
    })
    .join(' ');
}

function leastAndMost(kind: GridColumn['kind']): readonly [least: number, most: number] {
  switch (kind) {
    case 'name':
      return [7, 22];
    case 'remark':
      return [20, 40];
    case 'state':
      return [15, 22];
    case 'result':
      return [12, 24];
    default:
      return [6, 26];
  }
}
