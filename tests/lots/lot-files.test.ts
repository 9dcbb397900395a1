import { describe, expect, test } from 'vitest';
import { guessTargets, lotsToBringIn, readLots } from '../../src/lots/csv-in.ts';
import { lotsAsCsv, orderAsCsv } from '../../src/lots/csv-out.ts';
import { figureLots } from '../../src/lots/figure-lots.ts';
import { readLotTableFile, writeLotTableFile } from '../../src/lots/file.ts';
import { orderOfAll } from '../../src/lots/order-of-all.ts';
import { lotTotals } from '../../src/lots/totals.ts';
import { wordLotFault, wordLotFileFault } from '../../src/lots/wording.ts';
import { readCsv } from '../../src/workbook/csv.ts';
import { calculator, lot, smallHouse, tableOf } from './small-house.ts';

const types = [smallHouse(), smallHouse({ name: 'Town house' })];
const table = tableOf(
  [
    lot('Lot 7', { overrides: { 'House!B2': 174.53125, 'House!B4': 4 }, remark: 'corner; slab' }),
    lot('Lot 8', { type: 'Town house', options: { Insulation: 'R-8' } }),
  ],
  types,
);

describe('a lot table file', () => {
  const text = writeLotTableFile(table);
  const refused = (changed: string) => {
    const read = readLotTableFile(changed);
    return read.ok ? '' : wordLotFileFault(read.fault);
  };

  test('reads back to the same table', () => {
    expect(readLotTableFile(text)).toEqual({ ok: true, value: table });
  });

  test('may name a house type in another case, and the lot counts like any other', async () => {
    const read = readLotTableFile(text.replace('"type": "Town house"', '"type": "town HOUSE"'));
    expect(read).toEqual({ ok: true, value: table });
    const odd = { ...table, rows: table.rows.map((one) => ({ ...one, type: one.type.toLowerCase() })) };
    const totals = lotTotals(odd, await figureLots(odd, { calculator }));
    expect(totals.map(({ counted, leftOut }) => [counted, leftOut])).toEqual(totals.map(() => [2, []]));
  });

  test('that is damaged, newer or something else is refused with a sentence', () => {
    expect(refused(text.slice(0, 500))).toMatch(/cut off/);
    expect(refused('{"stretchout":1}')).toMatch(/not a lot table/);
    expect(refused(text.replace('"stretchoutLots": 1', '"stretchoutLots": 9'))).toMatch(/version 9/);
    expect(refused(text.replace('"name": "Lot 8"', '"name": "lot 7"'))).toMatch(/Two lots/);
    expect(refused(text.replace('"type": "Town house"', '"type": "Barn"'))).toMatch(/“Barn”, which is not/);
    expect(refused(text.replace('"remark"', '"__proto__"'))).toMatch(/can do harm/);
    expect(refused(text.replace('"remark"', '"colour"'))).toMatch(/does not belong/);
    expect(refused(text.replace('"kind": "template"', '"kind": "job"'))).toMatch(
      /House type 1 of this file is refused/,
    );
  });

  test('whose types have another locked cell than was sealed is refused', () => {
    expect(refused(text.replace('"content": 0.1', '"content": 0.01'))).toMatch(
      /locked cells of the sheet “House”/,
    );
  });
});

describe('lots from a CSV file', () => {
  const into = tableOf([lot('Lot 1')], types);
  const read = (text: string, instead = false) => {
    const [heads = [], ...rows] = readCsv(text);
    return readLots(into, rows, guessTargets(into, heads), instead);
  };
  const complaints = (text: string) =>
    read(text).lines.flatMap(({ fileLine, faults }) =>
      faults.map(({ column, fault }) => `${fileLine}.${column + 1}: ${wordLotFault(fault)}`),
    );

  test('are read as if they were typed: lengths off the tape, choices by name', () => {
    const lines = read(
      "Lot,Type,Insulation,Length of the trunk,Branches,Paint\r\nLot 2,town house,R-8,14' 6 1/2,3,blue\r\nLot 3,Bungalow,,,,\r\n",
    );
    expect(lotsToBringIn(lines)).toEqual([
      {
        name: 'Lot 2',
        type: 'Town house',
        options: { Insulation: 'R-8' },
        overrides: { 'House!B2': 174.5, 'House!B4': 3 },
      },
      { name: 'Lot 3', type: 'Bungalow', options: {}, overrides: {} },
    ]);
  });

  test('all that is wrong is told at once, and nothing goes in', () => {
    const text =
      'Lot,Type,Insulation,Length of the trunk,Branches\nLot 1,Bungalow,R-9,a mile,2.5\n,Barn,,,\nLot 5,Bungalow,R-8,=1+1,3\n';
    expect(complaints(text).map((one) => one.slice(0, 26))).toEqual([
      '2.1: There is a lot named ',
      '2.3: “R-9” is not one of t',
      expect.stringMatching(/^2\.4: /),
      expect.stringMatching(/^2\.5: /),
      '3.1: The lot has no name. ',
      '3.2: “Barn” is no house ty',
      '4.4: A lot holds values, a',
    ]);
    expect(lotsToBringIn(read(text))).toBeNull();
  });

  test('what a line says is kept though its type has the same, so that a newer revision cannot change it', () => {
    const [only] = lotsToBringIn(read('Lot,Type,Insulation,Branches\nLot 2,Bungalow,R-6,6\n')) ?? [];
    expect(only).toMatchObject({ options: { Insulation: 'R-6' }, overrides: { 'House!B4': 6 } });
  });

  test('in place of all others a name that was taken is free', () => {
    expect(lotsToBringIn(read('Lot,Type\nLot 1,Bungalow\n', true))).toHaveLength(1);
  });

  test('what was handed out comes to the same when it is brought in again, every digit of it', async () => {
    const outcomes = await figureLots(table, { calculator });
    const [heads = [], ...rows] = readCsv(lotsAsCsv(table, outcomes));
    const empty = { ...table, rows: [] };
    const again = lotsToBringIn(readLots(empty, rows, guessTargets(empty, heads), false)) ?? [];
    expect(again.map(({ overrides }) => overrides['House!B2'])).toEqual([174.53125, 360]);
    expect(lotsAsCsv({ ...table, rows: again }, outcomes)).toBe(lotsAsCsv(table, outcomes));
    expect(heads.slice(-4)).toEqual(['Wrap, sq ft', 'Rolls', 'R left, R', 'Price, $']);
    expect(rows[1]?.slice(-3)).toEqual(['1', '6.9', '330']);
  });

  test('no text of a lot can be run by another program', async () => {
    const armed = tableOf([lot('=HYPERLINK("x")', { remark: '@SUM(1)' })]);
    const text = lotsAsCsv(armed, [null]);
    expect(text).toContain(`"'=HYPERLINK(""x"")"`);
    expect(text).toContain(`'@SUM(1)`);
  });

  test('the order goes out with what each lot takes', async () => {
    const order = orderOfAll(table, await figureLots(table, { calculator }));
    expect(readCsv(orderAsCsv(order)).slice(1)).toEqual([
      ['Collars', '10', 'pieces', 'Lot 7: 4; Lot 8: 6'],
      ['R-6 wrap', '1', 'rolls', 'Lot 7: 1'],
      ['R-8 wrap', '1', 'rolls', 'Lot 8: 1'],
    ]);
  });
});
