import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type CellRange, readAddress, writeRange } from '../../src/base/address.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { cellAt, sheetNamed } from '../../src/workbook/cells.ts';
import { runCommand } from '../../src/workbook/commands.ts';
import { applyDifference } from '../../src/workbook/difference.ts';
import type { Cell, Sheet, Workbook } from '../../src/workbook/document.ts';
import { readWorkbookFile } from '../../src/workbook/file.ts';
import { followersOf } from '../../src/workbook/followers.ts';
import { tornPair } from '../../src/workbook/paired-ranges.ts';
import { orderBy } from '../../src/workbook/row-order.ts';
import { shownValue } from '../../src/workbook/standing.ts';
import { rowsAround } from '../../src/workbook/table-rows.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { formula, heading, sheetOf, words } from './sample.ts';

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
  return { id: 'follow', title: 'Larkspur Lane, lot 7', kind: 'job', sheets, names: {}, examples: [] };
}

const pieces = sheetOf('pieces', 'Pieces', [
  [heading('Piece'), heading('Length')],
  ...[1, 2, 3].map((one) => [words(`S${one}`), number(one)]),
]);

function followers(...others: readonly Sheet[]): readonly string[] {
  return followersOf(workbookOf(pieces, ...others), pieces, range('A2:B4')).map(
    (one) => `${one.sheet} ${writeRange(one.range)}`,
  );
}

describe('a table of another sheet follows', () => {
  const lines = (...texts: readonly string[]) => texts.map((text) => [formula(text)]);

  test('where each of its lines reads the line in the same place, further down or not', () => {
    expect(
      followers(sheetOf('wrap', 'Wrap', [[], ...lines('Pieces!B2', 'Pieces!B3*2', 'pieces!A4&""')])),
    ).toEqual(['wrap A2:A4']);
    const low = [
      [],
      [],
      [],
      [heading('x')],
      ...lines('Pieces!B2', 'Pieces!B3', 'Pieces!B4').map((row) => [...row, words('note')]),
    ];
    expect(followers(sheetOf('wrap', 'Wrap', low))).toEqual(['wrap A5:B7']);
  });

  test('through another one that follows', () => {
    const blanks = sheetOf('blanks', 'Blanks', [[], ...lines('Pieces!B2', 'Pieces!B3', 'Pieces!B4')]);
    const wrap = sheetOf('wrap', 'Wrap', [[], ...lines('Blanks!A2', 'Blanks!A3', 'Blanks!A4')]);
    expect(followers(wrap, blanks)).toEqual(['blanks A2:A4', 'wrap A2:A4']);
  });

  test('not where it reads only some lines, in another order, or fixed', () => {
    for (const texts of [
      ['Pieces!B2', 'Pieces!B3'],
      ['Pieces!B4', 'Pieces!B3', 'Pieces!B2'],
      ['Pieces!B$2', 'Pieces!B$3', 'Pieces!B$4'],
      ['Pieces!B2', 'Pieces!B3-Pieces!B2', 'Pieces!B4'],
      ['SUM(Pieces!B2:B4)', 'SUM(Pieces!B2:B4)', 'SUM(Pieces!B2:B4)'],
    ]) {
      expect(followers(sheetOf('wrap', 'Wrap', [[], ...lines(...texts)]))).toEqual([]);
    }
  });
});

describe('a formula that goes by the place of a line', () => {
  const block = [{ sheet: 'pieces', range: range('A2:B4') }];
  const torn = (text: string, names: Workbook['names'] = {}) => {
    const other = sheetOf('other', 'Other', [[formula(text)]]);
    return tornPair({ ...workbookOf(pieces, other), names }, block);
  };

  test.each([
    'INDEX(Pieces!B2:B4,MATCH("S1",Wrap!A2:A4,0))',
    'INDEX(Other!B2:B4,1+MATCH("S1",Pieces!A2:A4,0))',
    'SUMIF(Pieces!A2:A4,"S1",Other!B2:B4)',
    'IF(TRUE,SUMIFS(Other!B2:B4,Other!C2:C4,">1",Pieces!A2:A4,"S1"),0)',
  ])('is told where only one of its columns changes places: %s', (text) => {
    const wrap = sheetOf('wrap', 'Wrap', []);
    const other = sheetOf('other', 'Other', [[formula(text)]]);
    expect(tornPair(workbookOf(pieces, wrap, other), block)?.reader).toBe('Other!A1');
  });

  test.each([
    'INDEX(Pieces!B2:B4,MATCH("S1",Pieces!A2:A4,0))',
    'SUMIF(Other!A2:A4,"S1",Other!B2:B4)',
    'SUM(Pieces!B2:B4,Other!B2:B4)',
    'INDEX(Pieces!B2:B4,MATCH("S1",Other!A2:A9,0))',
    'SUM(Pieces!B2:B4)/SUM(Other!B2:B4)',
  ])('is left alone where both do or none, or where order makes no difference: %s', (text) => {
    expect(torn(text)).toBeNull();
  });

  test('is found by the names of its columns too, and its rows are not sorted', () => {
    const names = {
      marks: { sheet: 'other', range: range('B1:B3') },
      lengths: { sheet: 'pieces', range: range('B2:B4') },
    };
    expect(torn('INDEX(lengths,MATCH("S1",Marks,0))', names)).toEqual({
      reader: 'Other!A1',
      one: 'lengths',
      other: 'Marks',
    });
    const other = sheetOf('other', 'Other', [[formula('INDEX(lengths,MATCH("S1",marks,0))')]]);
    const outcome = runCommand(
      { ...workbookOf(pieces, other), names },
      { type: 'sort_rows', sheet: 'pieces', range: range('A2:B4'), order: [2, 1, 0] },
    );
    expect(outcome.ok ? '' : wordCommandFault(outcome.fault)).toMatch(
      /^All stays as it is: Other!A1 finds a line in lengths and takes the same line of marks/,
    );
  });
});

test('the pieces of the demo job are sorted, and every figure of a piece and of its taps goes along', async () => {
  const read = readWorkbookFile(
    readFileSync(new URL('../../sheets/demo.job.stretchout.json', import.meta.url), 'utf8'),
  );
  if (!read.ok) throw new Error('no demo');
  const { workbook } = read.value;
  const sheet = sheetNamed(workbook, 'Pieces');
  if (!sheet) throw new Error('no pieces');
  const rows = rowsAround(sheet, at('C3'));
  if (!rows) throw new Error('no rows');
  expect(followersOf(workbook, sheet, rows).map((one) => one.sheet)).toEqual(
    expect.arrayContaining(['blanks', 'wrap', 'seal']),
  );
  const calculator = createCalculator({ functions: tradeFunctions });
  const was = await figureWorkbook(workbook, calculator);
  const order = orderBy(sheet, was, rows, 2, 'rising');
  const outcome = runCommand(workbook, { type: 'sort_rows', sheet: sheet.id, range: rows, order });
  if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
  const after = applyDifference(workbook, outcome.value);
  const is = await figureWorkbook(after, calculator);
  // Sums of the same figures in another order differ in their last binary place.
  const rounded = (value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(12)) : value);
  const line = (own: Workbook, values: typeof was, name: string, row: number) => {
    const found = sheetNamed(own, name);
    return (found?.rows[row] ?? []).map((_, column) =>
      found ? rounded(shownValue(found, { row, column }, cellAt(found, { row, column }), values)) : null,
    );
  };
  for (const name of ['Pieces', 'Blanks', 'Wrap']) {
    for (const [to, from] of order.entries()) {
      expect(line(after, is, name, rows.from.row + to)).toEqual(
        line(workbook, was, name, rows.from.row + from),
      );
    }
  }
  for (const name of ['Taps', 'Job']) {
    for (const row of workbook.sheets.find((one) => one.name === name)?.rows.keys() ?? []) {
      expect(line(after, is, name, row)).toEqual(line(workbook, was, name, row));
    }
  }
});
