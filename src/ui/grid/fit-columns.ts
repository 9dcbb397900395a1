import type { CellAddress } from '../../base/address.ts';
import { acrossAt } from '../../workbook/across.ts';
import { cellAt } from '../../workbook/cells.ts';
import { readCheck } from '../../workbook/check.ts';
import { widthLimits } from '../../workbook/command/sight.ts';
import type { Sheet } from '../../workbook/document.ts';
import { columnAt } from '../../workbook/lines.ts';
import { showValue } from '../../workbook/show.ts';
import { shownValue } from '../../workbook/standing.ts';
import type { Values } from '../../workbook/values.ts';
import { charactersIn } from './column-pixels.ts';
import { runsOn } from './run-on.ts';
import type { TextMeasure } from './text-lines.ts';

const roomBeside = 26;
/** Past this a column is for reading on below, not for fitting. */
const widest = 60;

/** Widths at which everything in the columns can be read: what wraps or runs on takes no part. */
export function fittingWidths(
  sheet: Sheet,
  values: Values,
  { at, count }: { readonly at: number; readonly count: number },
  measure: TextMeasure,
): readonly number[] {
  return Array.from({ length: count }, (_, index) => {
    const column = at + index;
    let most = 0;
    for (let row = 0; row < sheet.rows.length; row += 1) {
      const cell = cellAt(sheet, { row, column });
      if (!cell || cell.style?.wraps || isWider(sheet, { row, column })) continue;
      const value = shownValue(sheet, { row, column }, cell, values);
      const said = cell.role === 'check' ? readCheck(value) : null;
      const words = said
        ? `✓  ${[said.verdict, said.sentence].filter(Boolean).join(': ')}`
        : showValue(value, cell.unit, cell.format).text;
      const isBold = cell.role === 'heading' || cell.role === 'check' || cell.style?.bold === true;
      most = Math.max(most, measure.width(words, isBold));
    }
    if (most === 0) return columnAt(sheet, column).width;
    return Math.min(widest, Math.max(widthLimits.least, Math.ceil(charactersIn(most + roomBeside))));
  });
}

/** Whether the words show over other columns too. */
function isWider(sheet: Sheet, address: CellAddress): boolean {
  return runsOn(sheet, address) || acrossAt(sheet, address) !== null;
}
