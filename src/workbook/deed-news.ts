import { type CellRange, isInRange, writeAddress } from '../base/address.ts';
import { sheetWithId } from './cells.ts';
import type { LinesCommand } from './command/lines.ts';
import { isHidden } from './command/sight.ts';
import type { SortCommand } from './command/sort.ts';
import type { Change, Difference } from './difference.ts';
import { isFormula, type Sheet, type Workbook } from './document.ts';
import { goingAlong, tornPair } from './paired-ranges.ts';
import { rowReaders } from './row-readers.ts';
import { rowsAround } from './table-rows.ts';

/** What the person has to know about a sort that has been done, in sentences. The workbook is as it was before. */
export function sortNews(workbook: Workbook, { sheet: id, range, order }: SortCommand): string {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return '';
  const going = goingAlong(workbook, sheet, range);
  const others = going.ok ? going.value.filter((one) => one.sheet !== id) : [];
  const along = namesOf(
    workbook,
    others.map((one) => one.sheet),
  );
  const readers = rowReaders(workbook, sheet, range).flatMap(({ name }) =>
    along.includes(name) ? [] : [name],
  );
  return [
    `${order.length} rows sorted.`,
    along.length === 0
      ? ''
      : `The same lines of ${listed(along)} went along, since these tables go line by line.`,
    staying(readers),
  ]
    .filter(Boolean)
    .join(' ');
}

/** The same of a line that was put in, taken out or moved: which tables went along. Empty where none did. */
export function lineNews(workbook: Workbook, sheetId: string, difference: Difference): string {
  const touched = difference.flatMap((change) =>
    change.type === 'lines' || change.type === 'lines_place' ? [change.sheet] : [],
  );
  const names = namesOf(
    workbook,
    touched.filter((id) => id !== sheetId),
  );
  if (names.length === 0) return '';
  return `The same was done in ${listed(names)}, since these tables go line by line.`;
}

/** Of rows that came or went inside a table: what finds its lines in the wrong place from now on. */
export function tornNews(workbook: Workbook, { type, sheet: id, axis, at, count }: LinesCommand): string {
  const sheet = sheetWithId(workbook, id);
  if (!sheet || axis !== 'row') return '';
  const row = type === 'insert_lines' ? at - 1 : at;
  const column = (sheet.rows[row] ?? []).findIndex((cell) => cell !== null);
  const rows = row < 0 || column < 0 ? null : rowsAround(sheet, { row, column });
  const isInside =
    rows &&
    (type === 'insert_lines'
      ? at > rows.from.row && at <= rows.to.row
      : at <= rows.to.row && at + count > rows.from.row);
  const torn = isInside ? tornPair(workbook, [{ sheet: id, range: rows }]) : null;
  if (!torn) return '';
  const instead =
    type === 'insert_lines' ? 'put in a line like the one above' : 'take out the line in all its tables';
  return `${torn.reader} finds a line in ${torn.one} and takes the same line of ${torn.other}, and the two no longer go together, so its figures may be wrong. Take this back, and ${instead} instead.`;
}

function staying(readers: readonly string[]): string {
  if (readers.length === 0) return '';
  const [reads, their] = readers.length === 1 ? ['reads', 'its'] : ['read', 'their'];
  return `${listed(readers)} ${reads} some of them: ${their} rows stay where they are, and each goes on reading the row that it read.`;
}

/** What the person might not see of cells that were written over others: those that are hidden, and formulas that are gone.
 *  Empty where there is nothing to say. The sheet is as it was before. */
export function overwrittenNews(sheet: Sheet, difference: Difference, covered: CellRange): string {
  const cells = difference.flatMap((change) => {
    const isOwn = change.type === 'cell' && change.sheet === sheet.id && isInRange(change.address, covered);
    return isOwn ? [change] : [];
  });
  const told = [hiddenNews(sheet, cells, 'row'), hiddenNews(sheet, cells, 'column'), formulaNews(cells)];
  return told.filter(Boolean).join(' ');
}

type CellChange = Extract<Change, { type: 'cell' }>;

/** `3 of the 8 rows written are hidden.` */
function hiddenNews(sheet: Sheet, cells: readonly CellChange[], axis: 'row' | 'column'): string {
  const lines = [...new Set(cells.map(({ address }) => address[axis]))];
  const hidden = lines.filter((line) => isHidden(sheet, axis, line)).length;
  if (hidden === 0) return '';
  if (lines.length === 1) return `The ${axis} that was written is hidden.`;
  return `${hidden} of the ${lines.length} ${axis}s written ${hidden === 1 ? 'is' : 'are'} hidden.`;
}

const placesTold = 3;

function formulaNews(cells: readonly CellChange[]): string {
  const places = cells.flatMap(({ address, before, after }) => {
    if (!before || !isFormula(before.content)) return [];
    const isSame = after && isFormula(after.content) && after.content.formula === before.content.formula;
    return isSame ? [] : [writeAddress(address)];
  });
  if (places.length === 0) return '';
  if (places.length === 1) return `This replaced the formula in ${places[0]}.`;
  const told = places.slice(0, placesTold);
  const rest = places.length - told.length;
  return `This replaced ${places.length} formulas: ${listed(rest > 0 ? [...told, `${rest} more`] : told)}.`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** In the order of the list of sheets. */
function namesOf(workbook: Workbook, ids: readonly string[]): readonly string[] {
  return workbook.sheets.flatMap(({ id, name }) => (ids.includes(id) ? [name] : []));
}
