import type { CellAddress } from '../../base/address.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';
import { showValue } from '../../workbook/show.ts';

/** What a given asks, with the range that it takes: `How wide is the opening? 2″ to 60″, because …`. */
export function questionWords(sheet: Sheet, address: CellAddress): string {
  const cell = cellAt(sheet, address);
  if (!cell?.question) return '';
  const { asks, least, most, why } = cell.question;
  const say = (value: number) => showValue(value, cell.unit, cell.format).text;
  const range =
    least !== undefined && most !== undefined
      ? `${say(least)} to ${say(most)}`
      : least !== undefined
        ? `${say(least)} or more`
        : most !== undefined
          ? `up to ${say(most)}`
          : '';
  const because = range !== '' && why ? `${range}, because ${why}` : range;
  return [asks, because].filter(Boolean).join(' · ');
}
