import { describe, expect, test } from 'vitest';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { compareCells, compareNamed, compareOrders } from '../../src/workbook/comparison.ts';
import { applyDifference } from '../../src/workbook/difference.ts';
import type { Workbook } from '../../src/workbook/document.ts';
import { formula, heading, sampleWorkbook, sheetOf, words } from './sample.ts';

const figure = async (workbook: Workbook) => ({
  workbook,
  values: await figureWorkbook(workbook, createCalculator({ functions: tradeFunctions })),
});

function having(workbook: Workbook, command: Command): Workbook {
  const outcome = runCommand(workbook, command);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return applyDifference(workbook, outcome.value);
}

const wider: Command = { type: 'enter', sheet: 'pieces', address: { row: 1, column: 1 }, typed: '20' };

describe('two workbooks side by side', () => {
  test('have no difference when they are the same, read twice', async () => {
    expect(compareCells(await figure(sampleWorkbook()), await figure(sampleWorkbook()))).toEqual([]);
  });

  test('differ in the given that was typed and in what is figured from it, by how much', async () => {
    const before = await figure(sampleWorkbook());
    const after = await figure(having(sampleWorkbook(), wider));
    const compared = compareCells(before, after);
    expect(compared.map(({ place, kind, label }) => [place, kind, label])).toEqual([
      ['Pieces!B2', 'given', 'Diameter of S1 trunk'],
      ['Wrap round!B2', 'figured', 'Girth of S1 trunk'],
    ]);
    expect(compared[0]).toMatchObject({ by: 4, before: { shown: { text: '16″' } }, after: { value: 20 } });
    expect(compared[1]?.by).toBeCloseTo(Math.PI * 4, 12);
  });

  test('turned round, differ in the same cells with before and after swapped', async () => {
    const [one, other] = [await figure(sampleWorkbook()), await figure(having(sampleWorkbook(), wider))];
    const there = compareCells(one, other);
    const back = compareCells(other, one);
    expect(back.map(({ place }) => place)).toEqual(there.map(({ place }) => place));
    expect(back.map(({ before, after }) => [after, before])).toEqual(
      there.map(({ before, after }) => [before, after]),
    );
  });

  test('tell a formula that was written otherwise and comes to the same', async () => {
    const before = await figure(sampleWorkbook());
    const after = await figure(
      having(sampleWorkbook(), {
        type: 'enter',
        sheet: 'wrap',
        address: { row: 1, column: 1 },
        typed: '=Pieces!B2*PI()',
      }),
    );
    expect(compareCells(before, after)).toMatchObject([
      { place: 'Wrap round!B2', before: { formula: 'PI()*Pieces!B2' }, after: { formula: 'Pieces!B2*PI()' } },
    ]);
  });

  test('differ in a row that one of them has more, and not in all the rows below it', async () => {
    const before = await figure(sampleWorkbook());
    const longer = having(
      having(sampleWorkbook(), { type: 'insert_lines', sheet: 'pieces', axis: 'row', at: 1, count: 1 }),
      { type: 'write', sheet: 'pieces', at: { row: 1, column: 0 }, rows: [['S0 trunk', '9']] },
    );
    expect(compareCells(before, await figure(longer)).map(({ place, before: was }) => [place, was])).toEqual([
      ['Pieces!A2', null],
      ['Pieces!B2', null],
    ]);
  });

  test('tell every cell of a sheet that only one of them has', async () => {
    const before = await figure(sampleWorkbook());
    const after = await figure(having(sampleWorkbook(), { type: 'remove_sheet', sheet: 'wrap' }));
    const compared = compareCells(before, after).filter(({ sheet }) => sheet === 'Wrap round');
    expect(compared).toHaveLength(6);
    expect(compared.every((one) => one.after === null)).toBe(true);
  });
});

describe('two orders side by side', () => {
  const withOrder = (rolls: string, pails: string): Workbook => ({
    ...sampleWorkbook(),
    sheets: [
      sheetOf('order', 'Order', [
        [heading('What'), heading('How many'), heading('Of what')],
        [words('Wrap'), formula(rolls), words('rolls')],
        [words('Mastic'), formula(pails), words('pails')],
        [words('Price'), formula(`(${rolls})*80`, { unit: 'money' })],
      ]),
    ],
    names: {
      order: { sheet: 'order', range: { from: { row: 0, column: 0 }, to: { row: 2, column: 2 } } },
      price: { sheet: 'order', range: { from: { row: 3, column: 1 }, to: { row: 3, column: 1 } } },
    },
  });

  test('say how many more of each, and what is on one of them only', async () => {
    const before = await figure(withOrder('3', '0'));
    const after = await figure(withOrder('5', '1'));
    expect(compareOrders(before, after).map(({ item, by }) => [item, by])).toEqual([
      ['Wrap', 2],
      ['Mastic', 1],
    ]);
    expect(compareOrders(after, before).map(({ item, by, after: line }) => [item, by, line])).toMatchObject([
      ['Wrap', -2, { shows: '3' }],
      ['Mastic', -1, null],
    ]);
    expect(compareNamed(before, after, 'Price')).toMatchObject({
      by: 160,
      after: { shown: { text: '$400.00' } },
    });
    expect(compareNamed(before, after, 'labor_hours')).toBeNull();
  });

  test('have no number where one of them has no figure', async () => {
    const before = await figure(withOrder('3', '0'));
    const after = await figure(withOrder('1/0', '0'));
    expect(compareOrders(before, after)).toMatchObject([
      { item: 'Wrap', by: null, isSame: false, after: { quantity: null } },
    ]);
    expect(compareOrders(after, after)).toMatchObject([{ item: 'Wrap', by: null, isSame: true }]);
  });
});
