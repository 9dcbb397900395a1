import { describe, expect, test } from 'vitest';
import { type CellRange, readAddress } from '../../src/base/address.ts';
import type { SortCommand } from '../../src/workbook/command/sort.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { overwrittenNews, sortNews } from '../../src/workbook/deed-news.ts';
import { applyDifference } from '../../src/workbook/difference.ts';
import type { Cell, Sheet, Workbook } from '../../src/workbook/document.ts';
import { tableColumnName } from '../../src/workbook/row-order.ts';
import { rowsAround } from '../../src/workbook/table-rows.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { diameter, formula, heading, sheetOf, words } from './sample.ts';

const at = (place: string) => {
  const address = readAddress(place);
  if (!address) throw new Error(place);
  return address;
};
const range = (places: string): CellRange => {
  const [from = '', to = from] = places.split(':');
  return { from: at(from), to: at(to) };
};
const number = (content: number): Cell => ({ content, role: 'text' });

function workbookOf(...sheets: readonly Sheet[]): Workbook {
  return { id: 'news', title: 'Larkspur Lane, lot 7', kind: 'job', sheets, names: {}, examples: [] };
}

function differenceOf(workbook: Workbook, command: Command) {
  const outcome = runCommand(workbook, command);
  if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
  return outcome.value;
}

describe('a sort says', () => {
  const pieces = sheetOf('pieces', 'Pieces', [
    [heading('Piece')],
    [words('S1'), number(3)],
    [words('S2'), number(1)],
  ]);
  const sort: SortCommand = { type: 'sort_rows', sheet: 'pieces', range: range('A2:B3'), order: [1, 0] };

  test('how many rows it sorted, and which sheets read them line by line', () => {
    const byLine = sheetOf('wrap', 'Wrap', [[], [formula('Pieces!B2')], [formula('pieces!B3*2')]]);
    const inAll = sheetOf('sums', 'Sums', [[formula('SUM(Pieces!B2:B3)')], [formula('Pieces!B2')]]);
    expect(sortNews(workbookOf(pieces), sort)).toBe('2 rows sorted.');
    expect(sortNews(workbookOf(pieces, inAll), sort)).toBe('2 rows sorted.');
    expect(sortNews(workbookOf(pieces, byLine, inAll), sort)).toBe(
      '2 rows sorted. The same lines of Wrap went along, since these tables go line by line.',
    );
    const turned = sheetOf('list', 'List', [[formula('Pieces!B3')], [formula('Pieces!B2')]]);
    expect(sortNews(workbookOf(pieces, turned), sort)).toBe(
      '2 rows sorted. List reads some of them: its rows stay where they are, and each goes on reading the row that it read.',
    );
  });

  test('what is so: lines that follow go along, others stay and read the row that they read', () => {
    const byLine = sheetOf('wrap', 'Wrap', [
      [],
      [formula('Pieces!B2'), words('x')],
      [formula('Pieces!B3'), words('y')],
    ]);
    const turned = sheetOf('list', 'List', [[formula('Pieces!B3')], [formula('Pieces!B2')]]);
    const workbook = workbookOf(pieces, byLine, turned);
    const after = applyDifference(workbook, differenceOf(workbook, sort));
    expect(after.sheets[1]?.rows[1]).toEqual([formula('Pieces!B2'), words('y')]);
    expect(after.sheets[2]?.rows[0]).toEqual([formula('Pieces!B2')]);
    expect(after.sheets[0]?.rows[2]?.[1]).toEqual(number(3));
  });
});

describe('the rows to be sorted', () => {
  test('leave out a first row that is only typed, over a column of something else', () => {
    const typed = sheetOf('pieces', 'Pieces', [
      [words('Piece'), words('Girth'), words('Note')],
      [words('S2'), number(4), words('x')],
      [words('S1'), number(3), null],
    ]);
    for (const place of ['A1', 'B2', 'C3']) expect(rowsAround(typed, at(place))).toEqual(range('A2:C3'));
    expect(tableColumnName(typed, range('A2:C3'), 1)).toBe('Girth');
    const given = sheetOf('pieces', 'Pieces', [
      [words('Piece'), words('Width')],
      [words('S2'), diameter],
      [words('S1'), diameter],
    ]);
    expect(rowsAround(given, at('A2'))).toEqual(range('A2:B3'));
  });

  test('are all of them where the first is like the others, or nothing else tells it apart', () => {
    const allWords = sheetOf('pieces', 'Pieces', [
      [words('S3'), words('round')],
      [words('S1'), words('flat')],
    ]);
    expect(rowsAround(allWords, at('A1'))).toEqual(range('A1:B2'));
    const numbered = sheetOf('pieces', 'Pieces', [
      [words('S3'), number(1)],
      [words('S1'), number(2)],
    ]);
    expect(rowsAround(numbered, at('A1'))).toEqual(range('A1:B2'));
  });

  test('are no totals where each takes in those before it', () => {
    const running = sheetOf('pieces', 'Pieces', [
      [heading('Length'), heading('So far')],
      ...[2, 3, 4, 5].map((row) => [number(row), formula(`SUM(A$2:A${row - 1})`)]),
      [formula('SUM(A2:A5)'), formula('MAX(B2:B5)')],
    ]);
    expect(rowsAround(running, at('A3'))).toEqual(range('A2:B5'));
  });

  test('take along that they are hidden', () => {
    const sheet: Sheet = {
      ...sheetOf('pieces', 'Pieces', [[number(3)], [number(2)], [number(1)]]),
      hiddenRows: [0, 7],
    };
    const workbook = workbookOf(sheet);
    const difference = differenceOf(workbook, {
      type: 'sort_rows',
      sheet: 'pieces',
      range: range('A1:A3'),
      order: [2, 1, 0],
    });
    expect(applyDifference(workbook, difference).sheets[0]?.hiddenRows).toEqual([2, 7]);
  });
});

describe('cells written over others say', () => {
  const rows = Array.from({ length: 9 }, (_, row) => [number(row), row > 5 ? formula('A1*2') : null]);
  const sheet: Sheet = {
    ...sheetOf('pieces', 'Pieces', rows),
    columns: [{ width: 9 }, { width: 9 }, { width: 9, hidden: true }],
    hiddenRows: [2, 3],
  };
  const workbook = workbookOf(sheet);
  const newsOf = (command: Command, covered: string) =>
    overwrittenNews(sheet, differenceOf(workbook, command), range(covered));
  const filled = (from: string, to: string): Command => ({
    type: 'fill',
    sheet: 'pieces',
    from: range(from),
    to: range(to),
  });

  test('how many of the rows and columns are hidden', () => {
    expect(newsOf(filled('D1:D1', 'D1:D6'), 'D1:D6')).toBe('');
    const write: Command = {
      type: 'write',
      sheet: 'pieces',
      at: at('D2'),
      rows: [['a'], ['b'], ['c'], ['d']],
    };
    expect(newsOf(write, 'D2:D5')).toBe('2 of the 4 rows written are hidden.');
    expect(newsOf({ ...write, at: at('C5'), rows: [['a', 'b']] }, 'C5:D5')).toBe(
      '1 of the 2 columns written is hidden.',
    );
    expect(newsOf({ ...write, at: at('D4'), rows: [['a']] }, 'D4')).toBe(
      'The row that was written is hidden.',
    );
  });

  test('which formulas they replaced', () => {
    const copy = (to: string): Command => ({
      type: 'copy',
      from: { sheet: 'pieces', range: range('A1') },
      to: { sheet: 'pieces', range: range(to) },
    });
    expect(newsOf(copy('B8'), 'B8')).toBe('This replaced the formula in B8.');
    expect(newsOf(copy('B7:B9'), 'B7:B9')).toBe('This replaced 3 formulas: B7, B8 and B9.');
    expect(newsOf({ ...copy('B7'), from: { sheet: 'pieces', range: range('B7') } } as Command, 'B7')).toBe(
      '',
    );
  });
});
