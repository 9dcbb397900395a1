import { units } from '../../base/unit.ts';
import type { CellValue } from '../../base/value.ts';
import type { ResultColumn } from '../../lots/columns.ts';
import { showValue } from '../../workbook/show.ts';

/** The unit that stands once over the figures of a result; null where each says its own, as a price and a tape length do. */
export function unitOver({ cell: { unit, format } }: ResultColumn): string | null {
  if (!unit || unit === 'money' || unit === 'percent' || unit === 'deg' || unit === 'r') return null;
  if (format && format.type !== 'decimal') return null;
  return units[unit].label || null;
}

/** A figure under its heading. */
export function showResult(column: ResultColumn, value: CellValue): string {
  const { unit, format } = column.cell;
  return showValue(value, unitOver(column) === null ? unit : undefined, format).text;
}
