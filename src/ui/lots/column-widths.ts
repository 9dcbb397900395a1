import type { LotTable } from '../../lots/lot-table.ts';
import { type GridColumn, gridCell, headOf, unitUnder } from './grid-columns.ts';

/** Words are narrower than as many digits. */
const wordWidth = 0.78;

/** How wide each column is, as a grid template: as its longest cell among the first lots, and the longest word over it. */
export function columnWidths(table: LotTable, columns: readonly GridColumn[]): string {
  const some = table.rows.slice(0, 60);
  return columns
    .map((column) => {
      const head = [...headOf(column).split(/[\s,]+/), unitUnder(column) ?? ''].map((word) => word.length);
      const cells = some.map((lot) => gridCell(table, lot, column, null).text.length);
      const longest = Math.max(...head, headOf(column).length / 2, ...cells);
      const [least, most] = leastAndMost(column);
      return `${Math.min(most, Math.max(least, Math.ceil(longest * wordWidth))) + 2}ch`;
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
      return [11, 22];
    case 'result': {
      // The figures themselves come later: a price, a tape length or a word, or else a plain number.
      const { unit, format } = column.column.cell;
      const isPlain = unit !== undefined && unit !== 'money' && (!format || format.type === 'decimal');
      return [isPlain ? 7 : 10, 26];
    }
    default:
      return [6, 26];
  }
}
