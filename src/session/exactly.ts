import type { CellValue } from '../base/value.ts';
import type { Cell } from '../workbook/document.ts';
import { showValue } from '../workbook/show.ts';

const places = 4;

/** What the look of a cell leaves out of its value: `66.4014 in, shown up to the next 1/16`. Null when it leaves out
 *  nothing that could be measured. */
export function exactly(value: CellValue, cell: Cell | null): string | null {
  if (typeof value !== 'number' || !cell?.format) return null;
  const { format, unit } = cell;
  const full = showValue(value, unit, { type: 'decimal', places }).text;
  switch (format.type) {
    case 'tape': {
      const marks = (unit === 'ft' ? value * 12 : value) * format.denominator;
      if (Math.abs(marks - Math.round(marks)) < 1e-6) return null;
      const mark = format.denominator === 1 ? 'inch' : `1/${format.denominator}`;
      const way = format.round === 'up' ? `up to the next ${mark}` : `to the nearest ${mark}`;
      return `${full}, shown ${way}`;
    }
    case 'decimal':
      return differs(value, format.places) ? full : null;
    case 'percent':
      return differs(value * 100, format.places) ? showValue(value, 'percent').text : null;
    case 'millimetres':
    case 'metres':
      return full;
  }
}

function differs(value: number, shownPlaces: number): boolean {
  return shownPlaces < places && Math.abs(value - Number(value.toFixed(shownPlaces))) > 10 ** -(places + 1);
}
