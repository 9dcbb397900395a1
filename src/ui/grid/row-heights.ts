import type { Row, Sheet } from '../../workbook/document.ts';
import { columnAt } from '../../workbook/lines.ts';
import { showValue } from '../../workbook/show.ts';
import { shownValue } from '../../workbook/standing.ts';
import type { Values } from '../../workbook/values.ts';
import { columnPixels } from './column-pixels.ts';
import { coveringOf } from './covering.ts';
import { countLines, type TextMeasure } from './text-lines.ts';

export const usualHeight = 34;
const lineHeight = 20;
const roomAbove = 12;
const roomBeside = 20;
/** Before the words of a check. */
const roomForSign = 24;
/** A row is never higher than what can be looked at. */
const mostLines = 24;

const known = new WeakMap<Row, boolean>();

/** Whether any cell of a row wraps; all other rows are as high as usual. */
function wraps(row: Row): boolean {
  const told = known.get(row);
  if (told !== undefined) return told;
  const does = row.some((cell) => cell?.style?.wraps === true);
  known.set(row, does);
  return does;
}

const knownOfAll = new WeakMap<Sheet['rows'], boolean>();

export function anyRowWraps({ rows }: Sheet): boolean {
  const told = knownOfAll.get(rows);
  if (told !== undefined) return told;
  const does = rows.some(wraps);
  knownOfAll.set(rows, does);
  return does;
}

/** High enough for the longest of its cells that wrap. */
export function heightOf(sheet: Sheet, values: Values, row: number, measure: TextMeasure): number {
  const cells = sheet.rows[row];
  if (!cells || !wraps(cells)) return usualHeight;
  const lines = cells.map((cell, column) => {
    const look = columnAt(sheet, column);
    if (!cell?.style?.wraps || look.hidden) return 1;
    const { text } = showValue(shownValue(sheet, { row, column }, cell, values), cell.unit, cell.format);
    const isCheck = cell.role === 'check';
    const isBold = cell.style.bold === true || cell.role === 'heading' || isCheck;
    const width = coveringOf(sheet, { row, column })?.width ?? columnPixels(look.width);
    const room = width - roomBeside - (isCheck ? roomForSign : 0);
    return countLines(text, room, (words) => measure.width(words, isBold));
  });
  const most = Math.min(mostLines, Math.max(...lines));
  return most === 1 ? usualHeight : most * lineHeight + roomAbove;
}
