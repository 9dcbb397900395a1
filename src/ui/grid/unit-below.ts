import { units } from '../../base/unit.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Cell, Sheet } from '../../workbook/document.ts';
import { showValue } from '../../workbook/show.ts';

/** The unit of what stands under a heading, where all of it has the same and its figures do not show it: `R`. */
export function unitBelow(sheet: Sheet, row: number, column: number): string | null {
  const head = cellAt(sheet, { row, column });
  if (head?.role !== 'heading') return null;
  let label: string | null = null;
  let before: Cell | null = null;
  for (let below = row + 1; below < sheet.rows.length; below += 1) {
    const cell = cellAt(sheet, { row: below, column });
    if (!cell) break;
    if (cell.role === 'heading') {
      if (label !== null) break;
      continue;
    }
    // Most of a long column is alike.
    if (before && cell.unit === before.unit && cell.format === before.format) continue;
    before = cell;
    const own = cell.unit ? units[cell.unit].label : '';
    if (own === '' || (label !== null && own !== label) || showValue(1, cell.unit, cell.format).text !== '1')
      return null;
    label = own;
  }
  const isSaid =
    label !== null &&
    String(head.content ?? '')
      .split(/[^\p{L}]+/u)
      .includes(label);
  return isSaid ? null : label;
}
