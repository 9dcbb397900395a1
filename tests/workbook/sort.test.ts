import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CellAddress, readAddress, writeAddress } from '../../src/base/address.ts';
import { type CellValue, isFault } from '../../src/base/value.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { cellAt } from '../../src/workbook/cells.ts';
import { runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../src/workbook/difference.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../../src/workbook/document.ts';
import { orderBy } from '../../src/workbook/row-order.ts';
import { shownValue } from '../../src/workbook/standing.ts';
import { rowsAround } from '../../src/workbook/table-rows.ts';
import { noValues, type Values } from '../../src/workbook/values.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { formula, heading, sheetOf, words } from './sample.ts';

const number = (content: number): Cell => ({ content, role: 'text' });

function at(place: string): CellAddress {
  const address = readAddress(place);
  if (!address) throw new Error(place);
  return address;
}

function workbookOf(
  rows: Sheet['rows'],
  others: Sheet['rows'] = [],
  names: Workbook['names'] = {},
): Workbook {
  return {
    id: 'sort',
    title: 'Larkspur Lane, lot 7',
    kind: 'job',
    sheets: [sheetOf('runs', 'Runs', rows), sheetOf('sums', 'Sums', others)],
    names,
    examples: [],
  };
}

function sorted(workbook: Workbook, range: string, order: readonly number[]) {
  const [from = '', to = ''] = range.split(':');
  return runCommand(workbook, {
    type: 'sort_rows',
    sheet: 'runs',
    range: { from: at(from), to: at(to) },
    order,
  });
}

function contentAt(workbook: Workbook, sheet: number, place: string): unknown {
  const own = workbook.sheets[sheet];
  const content = own ? (cellAt(own, at(place))?.content ?? null) : null;
  return isFormula(content) ? `=${content.formula}` : content;
}

const block = { from: at('A2'), to: at('D6') };
const rowCount = 5;
const reference = fc
  .tuple(
    fc.constantFrom('', '', 'Runs!'),
    fc.constantFrom('', '$'),
    fc.constantFrom('A', 'B', 'C', 'D', 'F'),
    fc.constantFrom('', '$'),
    fc.integer({ min: 1, max: 8 }),
  )
  .map((parts) => parts.join(''));
const whole = fc.constantFrom('A2:A6', 'B$2:B$6', 'A2:D6', 'A1:B8', '$C$2:$C$6', 'F2:F4');
const text = fc.oneof(
  fc.tuple(reference, fc.constantFrom('+', '*', '-'), reference).map((parts) => parts.join('')),
  whole.map((range) => `SUM(${range})`),
  fc.tuple(reference, reference).map(([one, other]) => `IF(${one}>3,${other},first)`),
);
const cell: fc.Arbitrary<Cell | null> = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: -9, max: 9 }).map(number) },
  { weight: 3, arbitrary: text.map((one) => formula(one)) },
  fc.constantFrom('S1', 'S10', 'S2').map(words),
  fc.constant(null),
);
const rowsOf = (count: number, columns: number) =>
  fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), {
    minLength: count,
    maxLength: count,
  });

function figureOf(workbook: Workbook, values: Values, sheet: number, address: CellAddress): unknown {
  const own = workbook.sheets[sheet];
  const value: CellValue = own ? shownValue(own, address, cellAt(own, address), values) : null;
  // A block with several faults tells the first, and which one that is changes with the order.
  return isFault(value) ? 'no figure' : value;
}

test('sorted rows keep their values, and so does all that reads them, whatever the order; undo brings all back', async () => {
  const calculator = createCalculator({ functions: [] });
  await fc.assert(
    fc.asyncProperty(
      rowsOf(8, 6),
      rowsOf(3, 2),
      fc.shuffledSubarray([0, 1, 2, 3, 4], { minLength: rowCount, maxLength: rowCount }),
      async (rows, others, order) => {
        const before = workbookOf(rows, others, {
          first: { sheet: 'runs', range: { from: at('B2'), to: at('B2') } },
        });
        const outcome = sorted(before, 'A2:D6', order);
        if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
        const after = applyDifference(before, outcome.value);
        const [was, is] = [await figureWorkbook(before, calculator), await figureWorkbook(after, calculator)];
        for (let row = 0; row < 8; row += 1) {
          for (let column = 0; column < 6; column += 1) {
            const isIn = row >= block.from.row && row <= block.to.row && column <= block.to.column;
            const to = isIn ? order.indexOf(row - block.from.row) + block.from.row : row;
            expect(figureOf(after, is, 0, { row: to, column }), writeAddress({ row, column })).toBe(
              figureOf(before, was, 0, { row, column }),
            );
          }
        }
        for (let row = 0; row < 3; row += 1) {
          for (let column = 0; column < 2; column += 1) {
            expect(figureOf(after, is, 1, { row, column })).toBe(figureOf(before, was, 1, { row, column }));
          }
        }
        const back = applyDifference(after, invertDifference(outcome.value));
        for (const [at, sheet] of before.sheets.entries()) {
          for (const [row, cells] of sheet.rows.entries()) {
            expect(back.sheets[at]?.rows[row]).toEqual(cells);
          }
        }
        expect(back.names).toEqual(before.names);
      },
    ),
    { numRuns: 100 },
  );
}, 60_000);

describe('references to rows that are sorted', () => {
  const rows = [
    [heading('Piece'), heading('Length'), heading('Twice')],
    [words('S2'), number(30), formula('B2*2')],
    [words('S10'), number(10), formula('b3*2')],
    [words('S1'), number(20), formula('$B$4*2')],
  ];

  test('go along with their row, written as they were', () => {
    const workbook = workbookOf(rows, [[formula('SUM(Runs!B2:B4)+Runs!$B$2'), formula('SUM(Runs!B3:B4)')]]);
    const outcome = sorted(workbook, 'A2:C4', [1, 2, 0]);
    if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
    const after = applyDifference(workbook, outcome.value);
    expect(['C2', 'C3', 'C4'].map((place) => contentAt(after, 0, place))).toEqual([
      '=b2*2',
      '=$B$3*2',
      '=B4*2',
    ]);
    expect(contentAt(after, 1, 'A1')).toBe('=SUM(Runs!B2:B4)+Runs!$B$4');
    // Both of its rows still lie together.
    expect(contentAt(after, 1, 'B1')).toBe('=SUM(Runs!B2:B3)');
  });

  test('hold the rows in place where they take in only some of them, and the sentence says which', () => {
    const outcome = sorted(workbookOf(rows, [[formula('SUM(Runs!B2:B3)')]]), 'A2:C4', [0, 2, 1]);
    if (outcome.ok) throw new Error('sorted');
    expect(wordCommandFault(outcome.fault)).toMatch(/Sums!A1 takes in Runs!B2:B3, only some of these rows/);
  });

  test.each([
    ['C2', 'SUM(B3:B5)', 'B3:B5, the rows below its own'],
    ['C4', 'SUM(B$1:B3)', 'B$1:B3, the rows above its own'],
    ['C3', 'SUM(B$2:B3)', 'B$2:B3, rows around its own'],
  ])(
    'tell that the order counts where a row itself reads others by where they stand: %s with %s',
    (place, reads, told) => {
      const { row, column } = at(place);
      const own = rows.map((cells, index) => (index === row ? cells.with(column, formula(reads)) : cells));
      const outcome = sorted(workbookOf(own), 'A2:C4', [1, 2, 0]);
      if (outcome.ok) throw new Error('sorted');
      expect(wordCommandFault(outcome.fault)).toContain(
        `their order counts here: Runs!${place} takes in ${told}`,
      );
    },
  );

  test('are ordered by numbers and by words with numbers in them, empty rows last either way', () => {
    const sheet = sheetOf('runs', 'Runs', [...rows, [words('S3'), null, null]]);
    const range = { from: at('A2'), to: at('C5') };
    expect(orderBy(sheet, noValues, range, 1, 'rising')).toEqual([1, 2, 0, 3]);
    expect(orderBy(sheet, noValues, range, 1, 'falling')).toEqual([0, 2, 1, 3]);
    expect(orderBy(sheet, noValues, range, 0, 'rising')).toEqual([2, 0, 3, 1]);
  });

  test('are those of the table around a cell, without its headings and the totals below', () => {
    const sheet = sheetOf('runs', 'Runs', [
      [words('What is hung')],
      [],
      ...rows,
      [words('In all'), formula('SUM(B4:B6)')],
      [],
      [words('S9'), number(3)],
    ]);
    expect(rowsAround(sheet, at('B5'))).toEqual({ from: at('A4'), to: at('C6') });
    expect(rowsAround(sheet, at('B3'))).toEqual({ from: at('A4'), to: at('C6') });
    expect(rowsAround(sheet, at('E5'))).toBeNull();
    expect(rowsAround(sheet, at('A9'))).toBeNull();
  });
});
