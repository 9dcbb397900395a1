import { writeAddress } from '../base/address.ts';
import { cellAt, sheetWithId, withCells } from '../workbook/cells.ts';
import { changeTableLine } from '../workbook/command/table-line.ts';
import { counterpart } from '../workbook/comparison.ts';
import { applyDifference } from '../workbook/difference.ts';
import { isFormula, type Workbook } from '../workbook/document.ts';
import { type PairedTable, pairTables } from './pair-lines.ts';
import { type AskingLine, askingTables } from './table-lines.ts';

export interface OwnLines {
  readonly workbook: Workbook;
  readonly tables: readonly PairedTable[];
  /** Where the lines stand that were put in and hold answers. */
  readonly places: readonly string[];
  /** Lines of the job that hold answers and that the newer template's tables cannot take. */
  readonly without: readonly string[];
}

/** The newer template with as many lines in its tables as the job has, those of the tables that follow them included. A
 *  line that the older revision had and the newer one has no more is not the shop's, and does not come again. */
export function withOwnLines(renewed: Workbook, job: Workbook, older: Workbook | undefined): OwnLines {
  let workbook = renewed;
  let tables = pairTables(job, workbook, older);
  const put = new Set<string>();
  const passed = new Set<string>();
  const without: string[] = [];
  for (;;) {
    const next = firstWithout(tables, passed);
    if (!next) break;
    const { table, line } = next;
    const place = placeOf(table, line);
    const grown = isTemplates(table, line, older) ? null : lineBelow(workbook, next);
    const paired = grown && pairTables(job, grown, older);
    if (grown && paired && rowTaking(paired, place) !== null) {
      [workbook, tables] = [grown, paired];
      put.add(place);
      continue;
    }
    passed.add(place);
    // What the template's own words named is told of answer by answer.
    if (isAnswered(line) && table.namedBy !== 'words') without.push(place);
  }
  const places = tables.flatMap((table) =>
    table.lines.flatMap(({ mine, theirs }) =>
      mine && theirs && put.has(placeOf(table, mine)) && isAnswered(mine)
        ? [`${table.sheet.name}!${writeAddress({ row: theirs.row, column: 0 })}`]
        : [],
    ),
  );
  return { workbook, tables, places, without };
}

interface WithoutLine {
  readonly table: PairedTable;
  readonly line: AskingLine;
  /** The line of the newer template that it comes below. */
  readonly above: AskingLine | null;
}

function firstWithout(tables: readonly PairedTable[], passed: ReadonlySet<string>): WithoutLine | null {
  for (const table of tables) {
    let above: AskingLine | null = null;
    for (const { mine, theirs } of table.lines) {
      if (mine && !theirs && !passed.has(placeOf(table, mine))) {
        return { table, line: mine, above: above ?? table.lines.find((one) => one.theirs)?.theirs ?? null };
      }
      above = theirs ?? above;
    }
  }
  return null;
}

function lineBelow(workbook: Workbook, { table, line, above }: WithoutLine): Workbook | null {
  const column = above?.cells[0]?.column;
  // Lines that follow another table's come with those.
  if (!above || column === undefined || table.namedBy === 'leader') return null;
  const sheet = table.sheet.id;
  const put = changeTableLine(workbook, {
    type: 'put_in_line',
    sheet,
    address: { row: above.row, column },
  });
  return put.ok ? named(applyDifference(workbook, put.value), table, line, above.row + 1) : null;
}

/** The workbook with the name of the job's line in a row, by which the two are met. */
function named(workbook: Workbook, { own, sheet: { id } }: PairedTable, line: AskingLine, row: number) {
  const sheet = sheetWithId(workbook, id);
  const column = (own.rows[line.row] ?? []).findIndex(
    (cell) => cell !== null && cell.content !== null && !isFormula(cell.content),
  );
  const mine = own.rows[line.row]?.[column];
  if (!sheet || !mine || line.name === '') return workbook;
  const asks = mine.role === 'given' ? mine.question?.asks : undefined;
  const at =
    asks === undefined ? column : (sheet.rows[row] ?? []).findIndex((cell) => cell?.question?.asks === asks);
  if (at < 0) return workbook;
  const cell = cellAt(sheet, { row, column: at });
  const after = cell ? { ...cell, content: mine.content } : mine;
  const changed = withCells(sheet, [{ address: { row, column: at }, after }]);
  return { ...workbook, sheets: workbook.sheets.map((one) => (one.id === id ? changed : one)) };
}

function isTemplates({ own, namedBy }: PairedTable, line: AskingLine, older: Workbook | undefined): boolean {
  const old = older && counterpart(older, own);
  if (!older || !old || namedBy !== 'words' || line.name === '') return false;
  return askingTables(older, old).some(({ stretches }) =>
    stretches.flat().some(({ name }) => name === line.name),
  );
}

function rowTaking(tables: readonly PairedTable[], place: string): number | null {
  for (const table of tables) {
    for (const { mine, theirs } of table.lines) {
      if (mine && theirs && placeOf(table, mine) === place) return theirs.row;
    }
  }
  return null;
}

function placeOf({ own }: PairedTable, { row }: AskingLine): string {
  return `${own.name}!${writeAddress({ row, column: 0 })}`;
}

function isAnswered({ cells }: AskingLine): boolean {
  return cells.some(({ cell }) => cell.content !== null);
}
