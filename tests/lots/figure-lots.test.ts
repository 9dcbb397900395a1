import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../fixed-seed.ts';
import type { Calculator } from '../../src/engine/calculator.ts';
import { figureLots, type LotOutcome } from '../../src/lots/figure-lots.ts';
import { lotGivens, lotJob, lotWorkbook } from '../../src/lots/lot-givens.ts';
import type { Lot } from '../../src/lots/lot-table.ts';
import { orderOfAll } from '../../src/lots/order-of-all.ts';
import { lotTotals } from '../../src/lots/totals.ts';
import { wordFaultOfLot } from '../../src/lots/wording.ts';
import type { Sheet } from '../../src/workbook/document.ts';
import { calculator, lot, smallHouse, tableOf } from './small-house.ts';

const figures = (outcome: LotOutcome | null | undefined) => {
  if (outcome?.type !== 'figured') throw new Error(JSON.stringify(outcome));
  return outcome.figures;
};

describe('the givens of a lot', () => {
  const type = smallHouse();

  test('are those of the type, a blank one by its usual value, then the choices, then what the lot itself says', () => {
    expect(lotGivens(type, lot('1'))).toEqual({
      'House!B2': 360,
      'House!B3': 16,
      'House!B4': 6,
      'House!B5': 'R-6',
      'House!B6': 0,
    });
    const own = lot('2', { options: { Insulation: 'R-8' }, overrides: { 'House!B2': 480 } });
    expect(lotGivens(type, own)).toMatchObject({ 'House!B2': 480, 'House!B5': 'R-8', 'House!B6': 0 });
  });

  test('an override goes before the choice of an option that fills the same given', () => {
    const both = { ...type, house: { ...type.house, varies: ['House!B6'] } } as typeof type;
    const own = lot('1', { options: { 'Bonus room': 'with' }, overrides: { 'House!B6': 5 } });
    expect(lotGivens(both, own)['House!B6']).toBe(5);
  });

  test('what the type does not know and what a given refuses keeps a lot from being figured, all at once', () => {
    const wrong = lot('1', {
      options: { Roof: 'flat', Insulation: 'R-4' },
      overrides: { 'House!B2': 5000, 'House!B11': 0.5 },
    });
    const filled = lotWorkbook(type, wrong);
    expect(!filled.ok && filled.fault.map(({ code }) => code)).toEqual([
      'option_gone',
      'choice_gone',
      'given_refuses',
      'given_gone',
    ]);
  });

  test('a job from a lot is filled in, keeps type and revision, and its locks hold', () => {
    const job = lotJob(type, lot('Lot 3', { overrides: { 'House!B4': 9 } }), { id: 'j', title: 'Lot 3' });
    if (!job.ok) throw new Error('refused');
    expect(job.value).toMatchObject({
      kind: 'job',
      template: { name: 'Bungalow', revision: 1 },
      title: 'Lot 3',
    });
    expect(job.value.house).toBeUndefined();
    expect(job.value.sheets[0]?.rows[3]?.[1]?.content).toBe(9);
    expect(job.value.sheets[0]?.rows[10]?.[1]?.locked).toBe(true);
  });
});

describe('the name of a lot', () => {
  const named = (lotName: string) => {
    const type = smallHouse();
    return { ...type, house: { ...type.house, lotName } } as typeof type;
  };

  test('stands where the house type says, in its job as well, and over a choice but under the lot’s own answer', () => {
    const type = named('House!B5');
    expect(lotGivens(type, lot('Lot 3', { options: { Insulation: 'R-8' } }))['House!B5']).toBe('Lot 3');
    expect(lotGivens(type, lot('Lot 3', { overrides: { 'House!B5': 'R-6' } }))['House!B5']).toBe('R-6');
    const bare = { ...type, sheets: type.sheets.map((sheet) => withNameAt(sheet)) };
    const job = lotJob(bare, lot('Lot 3'), { id: 'j', title: 'Lot 3, Larkspur Lane' });
    expect(job.ok && job.value.sheets[0]?.rows[4]?.[1]?.content).toBe('Lot 3');
  });

  test('is told where the given takes no name, and left out where no given stands there any more', () => {
    const told = lotWorkbook(named('House!B3'), lot('Lot 3'));
    expect(!told.ok && told.fault.map(wordFaultOfLot)).toEqual([
      expect.stringMatching(/^The name of the lot: .*“?Lot 3/),
    ]);
    expect(lotGivens(named('House!B9'), lot('Lot 3'))).not.toHaveProperty('House!B9');
    expect(lotWorkbook(named('Attic!B1'), lot('Lot 3')).ok).toBe(true);
  });

  test('is read by formulas, so lots that differ in nothing else are figured apart', async () => {
    const type = named('House!B5');
    const lots = ['R-8', 'R-6', 'R-6 once more'].map((name) => lot(name));
    const own = { ...type, sheets: type.sheets.map((sheet) => withNameAt(sheet)) };
    const outcomes = await figureLots(tableOf(lots, [own]), { calculator });
    expect(outcomes.map((one) => figures(one).results[2])).toEqual([6.9, 5.2, 5.2]);
  });

  /** The choice of a wrap turned into plain words. */
  function withNameAt(sheet: Sheet): Sheet {
    const rows = sheet.rows.map((row) =>
      row.map((cell) =>
        cell?.question?.choices ? { ...cell, question: { asks: 'What is it called?' } } : cell,
      ),
    );
    return { ...sheet, rows };
  }
});

describe('figuring lots', () => {
  test('three lots, by hand: wrap area π × 16 × 360 ÷ 144 × 1.1, whole rolls of 200 sq ft, collars for each branch', async () => {
    const table = tableOf([
      lot('1'),
      lot('2', { options: { Insulation: 'R-8', 'Bonus room': 'with' }, overrides: { 'House!B2': 600 } }),
      lot('3'),
    ]);
    const outcomes = await figureLots(table, { calculator });
    const [one, two, three] = outcomes.map(figures);
    expect(one?.results[0]).toBeCloseTo(138.2301, 4);
    expect(one?.results.slice(1)).toEqual([1, 5.2, 290]);
    expect(two?.results[0]).toBeCloseTo(230.3835, 4);
    expect(two?.results.slice(1)).toEqual([2, 6.9, 560]);
    expect(three).toEqual(one);
    expect(orderOfAll(table, outcomes).lines.map(({ item, quantity }) => [item, quantity])).toEqual([
      ['Collars', 20],
      ['R-6 wrap', 2],
      ['R-8 wrap', 2],
    ]);
    const [wrap, rolls, left, price] = lotTotals(table, outcomes);
    expect(wrap?.sum).toBeCloseTo(506.8436, 3);
    expect(rolls?.sum).toBe(4);
    expect(left).toMatchObject({ sum: null, least: 5.2, most: 6.9, counted: 3 });
    expect(price?.sum).toBe(1140);
  });

  test('a lot that cannot be figured is left out of every total and of the order, and says why', async () => {
    const table = tableOf([lot('1'), lot('2', { overrides: { 'House!B2': 3 } })]);
    const outcomes = await figureLots(table, { calculator });
    expect(outcomes[1]?.type).toBe('refused');
    expect(orderOfAll(table, outcomes)).toMatchObject({
      counted: 1,
      leftOut: [{ lot: '2', why: { code: 'refused' } }],
    });
    for (const total of lotTotals(table, outcomes)) {
      expect(total).toMatchObject({ counted: 1, leftOut: [{ lot: '2', why: { code: 'refused' } }] });
    }
  });

  test('a lot whose check says stop is counted and named', async () => {
    const table = tableOf([lot('1', { overrides: { 'House!B2': 1100 } })]);
    const outcomes = await figureLots(table, { calculator });
    expect(orderOfAll(table, outcomes)).toMatchObject({ counted: 1, stopped: ['1'] });
    expect(figures(outcomes[0]).concerns).toEqual([
      { kind: 'stop', place: 'House!B15', sentence: 'too long for one blower' },
    ]);
  });

  test('a stop between lots leaves the rest unfigured', async () => {
    const seen: number[] = [];
    const outcomes = await figureLots(tableOf([lot('1'), lot('2'), lot('3')]), {
      calculator,
      onLot: (at) => {
        seen.push(at);
      },
      stop: () => seen.length === 2,
    });
    expect(outcomes.map((one) => one?.type ?? null)).toEqual(['figured', 'figured', null]);
  });

  test('a calculator that remembers what it should not is found out by every fiftieth lot and by the last', async () => {
    const forgetful = (): Calculator => {
      const own = calculator();
      let edits = 0;
      return {
        ...own,
        apply: async (given) => {
          edits += 1;
          return edits < 10 ? own.apply(given) : [];
        },
      };
    };
    const lots = Array.from({ length: 60 }, (_, at) =>
      lot(`Lot ${at + 1}`, { overrides: { 'House!B2': 100 + at } }),
    );
    const outcomes = await figureLots(tableOf(lots), { calculator: forgetful });
    const wrong = outcomes.flatMap((one, at) => (one?.type === 'disagrees' ? [[at, one.place]] : []));
    expect(wrong).toEqual([
      [49, 'House!B9'],
      [59, 'House!B9'],
    ]);
    expect(orderOfAll(tableOf(lots), outcomes).leftOut).toHaveLength(2);
  });
});

const anyLot = fc.record({
  options: fc.constantFrom<Lot['options']>(
    {},
    { Insulation: 'R-8' },
    { Insulation: 'R-6', 'Bonus room': 'with' },
  ),
  overrides: fc.constantFrom<Lot['overrides']>(
    {},
    { 'House!B2': 123.4 },
    { 'House!B2': 1150, 'House!B4': 3 },
    { 'House!B3': 9.7 },
    { 'House!B4': 0 },
    { 'House!B3': 99 },
  ),
  type: fc.constantFrom('Bungalow', 'Town house'),
});

describe('laws of lots', () => {
  const types = [smallHouse(), smallHouse({ name: 'Town house', waste: 0.07 })];

  test('a lot among others comes to exactly what it comes to alone', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyLot, { minLength: 2, maxLength: 8 }), async (some) => {
        const rows = some.map((one, at) => lot(`Lot ${at}`, one));
        const together = await figureLots(tableOf(rows, types), { calculator });
        for (const [at, one] of rows.entries()) {
          expect(await figureLots(tableOf([one], types), { calculator })).toEqual([together[at]]);
        }
      }),
      { numRuns: 12 },
    );
  }, 30_000);

  test('the order of the rows changes no total and no order line, not in the last digit', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyLot, { minLength: 2, maxLength: 12 }), async (some) => {
        const rows = some.map((one, at) => lot(`Lot ${at}`, one));
        const totals = async (lots: readonly Lot[]) => {
          const table = tableOf(lots, types);
          const outcomes = await figureLots(table, { calculator });
          return {
            totals: lotTotals(table, outcomes).map(({ leftOut, ...total }) => ({
              ...total,
              out: leftOut.length,
            })),
            order: orderOfAll(table, outcomes).lines.map(({ item, unit, quantity }) => ({
              item,
              unit,
              quantity,
            })),
          };
        };
        expect(await totals(rows.toReversed())).toEqual(await totals(rows));
      }),
      { numRuns: 12 },
    );
  }, 30_000);
});
