import { writeAddress } from '../base/address.ts';
import { sheetWithId } from '../workbook/cells.ts';
import { changeLines } from '../workbook/command/lines.ts';
import { allowancesSheet, counterpart } from '../workbook/comparison.ts';
import { applyDifference } from '../workbook/difference.ts';
import type { NamedRange, Row, Sheet, Workbook } from '../workbook/document.ts';
import type { RowPair } from '../workbook/row-pairs.ts';
import { type LinePairs, linePairs } from './line-pairs.ts';

/** The newer template with the rows that the shop has added to the tables of its allowances, each under the row that it
 *  stood under; formulas and names follow. Gives the places where they stand. */
export function withOwnRows(
  renewed: Workbook,
  job: Workbook,
  older: Workbook | undefined,
): { readonly workbook: Workbook; readonly places: readonly string[] } {
  const sheet = renewed.sheets.find(({ name }) => name.toLowerCase() === allowancesSheet.toLowerCase());
  const own = sheet && sheetWithId(job, sheet.id);
  if (!sheet || !own) return { workbook: renewed, places: [] };
  const pairs = linePairs(own, sheet);
  // Without the column that names the rows, none can be told from another.
  if (pairs.columnBefore(0) !== 0) return { workbook: renewed, places: [] };
  const spare = spareNames(own, sheet);
  const known = new Set((older && counterpart(older, own)?.rows.map(firstWords)) ?? []);
  let workbook = renewed;
  const places: string[] = [];
  let next = 0;
  let shift = 0;
  for (const { before, after } of apart(own, sheet, pairs)) {
    if (after !== null) next = after + shift + 1;
    const row = before === null ? undefined : own.rows[before];
    if (before === null || after !== null || !row) continue;
    const name = firstWords(row);
    if (name === '' || known.has(name)) continue;
    // Where as many of that name stand already, if elsewhere, none is the shop's.
    const left = spare.get(name) ?? 0;
    if (left === 0) continue;
    spare.set(name, left - 1);
    const inserted = changeLines(workbook, {
      type: 'insert_lines',
      sheet: sheet.id,
      axis: 'row',
      at: next,
      count: 1,
    });
    if (!inserted.ok) continue;
    const width = sheet.rows.reduce((most, one) => Math.max(most, one.length), row.length);
    const moved = Array.from({ length: width }, (_, column) => row[pairs.columnBefore(column) ?? -1] ?? null);
    workbook = withRow(applyDifference(workbook, inserted.value), sheet.id, next, moved);
    workbook = { ...workbook, names: namesOver(workbook, job, sheet.id, before, next) };
    places.push(`${sheet.name}!${writeAddress({ row: next, column: 0 })}`);
    next += 1;
    shift += 1;
  }
  return { workbook, places };
}

/** Rows that stand at one place and are called otherwise are two. */
function apart(own: Sheet, sheet: Sheet, pairs: LinePairs): readonly RowPair[] {
  return pairs.rows.flatMap((pair) => {
    const { before, after } = pair;
    if (before === null || after === null) return [pair];
    const [mine, theirs] = [firstWords(own.rows[before] ?? []), firstWords(sheet.rows[after] ?? [])];
    if (mine === '' || theirs === '' || mine === theirs) return [pair];
    return [
      { before, after: null },
      { before: null, after },
    ];
  });
}

function withRow(workbook: Workbook, id: string, at: number, row: Row): Workbook {
  const put = (sheet: Sheet) => ({
    ...sheet,
    rows: sheet.rows.map((one, index) => (index === at ? row : one)),
  });
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => (sheet.id === id ? put(sheet) : sheet)),
  };
}

/** A table that held the row in the job holds it again, at its end as well. */
function namesOver(
  { names }: Workbook,
  job: Workbook,
  sheet: string,
  before: number,
  at: number,
): Workbook['names'] {
  return Object.fromEntries(
    Object.entries(names).map(([name, named]): [string, NamedRange] => {
      const own = job.names[name];
      const held = own?.sheet === sheet && own.range.from.row <= before && own.range.to.row >= before;
      const { from, to } = named.range;
      if (!held || named.sheet !== sheet || to.row !== at - 1) return [name, named];
      return [name, { ...named, range: { from, to: { ...to, row: at } } }];
    }),
  );
}

/** How many rows of each name the job has more than the template. */
function spareNames(own: Sheet, sheet: Sheet): Map<string, number> {
  const spare = new Map<string, number>();
  for (const row of own.rows) spare.set(firstWords(row), (spare.get(firstWords(row)) ?? 0) + 1);
  for (const row of sheet.rows) {
    const name = firstWords(row);
    spare.set(name, Math.max(0, (spare.get(name) ?? 0) - 1));
  }
  return spare;
}

/** What a row begins with, as its name. One that is filled in names a line of a table, which is met as such. */
function firstWords(row: Row): string {
  const [cell] = row;
  return typeof cell?.content === 'string' && cell.role !== 'given' ? cell.content : '';
}
