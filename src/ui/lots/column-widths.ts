import { units } from '../../base/unit.ts';
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
      const [least, most] = leastAndMost(column);
      return `${Math.min(most, Math.max(least, head, ...cells) + 2)}ch`;
    })
    .join(' ');
}

function leastAndMost(column: GridColumn): readonly [least: number, most: number] {
  switch (column.kind) {
    case 'name':
      return [7, 22];
    case 'remark':
      return [20, 40];
    case 'state':
      return [12, 22];
    case 'result': {
      const { unit } = column.column.cell;
      // Seven digits and the mark of the unit, since the figures themselves come later.
      return [Math.max(9, (unit ? units[unit].label.length : 0) + 7), 26];
    }
    default:
      return [6, 26];
  }
}
