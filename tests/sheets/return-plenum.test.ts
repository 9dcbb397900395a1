import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { returnPlenumDemo } from '../../scripts/sheets/return-plenum/demo.ts';
import { returnPlenum } from '../../scripts/sheets/return-plenum/template.ts';
import type { WorkedExample } from '../../src/workbook/document.ts';
import { filledIn, orderOf } from './support.ts';

const box = {
  'Air!B2': 1000,
  'Air!B5': 20,
  'Air!B6': 25,
  'Plenum!B2': 20,
  'Plenum!B3': 20,
  'Plenum!B4': 30,
} as const;

const withReturn = (line: Record<string, string | number>): WorkedExample['given'] => ({
  ...box,
  ...Object.fromEntries(Object.entries(line).map(([column, value]) => [`Returns!${column}2`, value])),
});

const whole = { A: 'R1', B: 500, C: 20, D: 14, E: 12, F: 120, G: 'right' };

test('an empty template waits for its measures, stops nothing and orders nothing but what is sure', async () => {
  const blank = await filledIn(returnPlenum, {});
  expect(blank.faults).toEqual([]);
  expect(blank.stops).toEqual({});
  expect(blank.at('Job!B18')).toBe('look: the box on Plenum is not measured yet');
  expect([...orderOf(returnPlenum, blank).values()].every((many) => many === 0)).toBe(true);
});

describe('air that is too fast', () => {
  // One 20 × 25 in filter is 3.4722 sq ft: 1,041 cfm is 299.8 fpm, 1,042 cfm is 300.1, and 1,389 cfm is 400.03.
  test.each([
    [1041, /^holds$/],
    [1042, /^look: air is fast for a filter; it takes 500 sq in/],
    [1389, /^stop: air is too fast for a filter/],
  ])('%i cfm at the filter', async (cfm, says) => {
    const filled = await filledIn(returnPlenum, { ...box, 'Air!B2': cfm });
    expect(filled.at('Air!C9')).toMatch(says);
  });

  test('the limits are allowances of the shop', async () => {
    const filled = await filledIn(returnPlenum, { ...box, 'Air!B2': 1389, 'Allowances!B3': 500 });
    expect(filled.at('Air!C9')).toMatch(/^look/);
  });

  test('a drop of 20 × 12 in carries 1,000 cfm at 600 fpm, and 1,200 cfm stops', async () => {
    const drop = { ...box, 'Air!B13': 20, 'Air!B14': 12, 'Air!B15': 60 };
    expect((await filledIn(returnPlenum, drop)).at('Air!C17')).toBe('holds');
    const faster = await filledIn(returnPlenum, { ...drop, 'Air!B2': 1200 });
    expect(faster.at('Air!C17')).toMatch(/^stop: air is too fast in the drop/);
    expect(faster.at('Job!B18')).toBe('stop: the air is too fast; see Air');
  });
});

describe('a return by flex', () => {
  test.each([
    ['with a collar larger than its wall', { ...whole, E: 20 }, 'stop: the collar is too large'],
    ['without a wall', { A: 'R1', B: 500, C: 20, D: 14, E: 12, F: 120 }, 'stop: still to fill in: wall'],
  ])('%s stops the order and is not counted', async (_, line, sentence) => {
    const filled = await filledIn(returnPlenum, withReturn(line));
    expect(filled.at('Returns!H2')).toContain(sentence);
    expect(filled.at('Job!B21')).toContain('the order is without R1;');
    expect(orderOf(returnPlenum, filled).get('Return grilles')).toBe(0);
    expect(filled.faults).toEqual([]);
  });

  test('a small grille and a small flex are worth a look', async () => {
    // 500 cfm through 10 × 10 in: 720 fpm; in 10 in flex 917 fpm.
    const grille = await filledIn(returnPlenum, withReturn({ ...whole, C: 10, D: 10 }));
    expect(grille.at('Returns!H2')).toMatch(/^look: air is fast at this grille/);
    const flex = await filledIn(returnPlenum, withReturn({ ...whole, E: 10 }));
    expect(flex.at('Returns!H2')).toMatch(/^look: air is fast in this flex/);
  });

  test('nothing stands on a top that is open, nor on the way of too many openings', async () => {
    const open = await filledIn(returnPlenum, { ...withReturn({ ...whole, G: 'top' }), 'Plenum!B5': 'open' });
    expect(open.at('Returns!H2')).toMatch(/^stop: the plenum has no top/);
    const crowded = await filledIn(returnPlenum, {
      ...withReturn({ ...whole, E: 14 }),
      ...Object.fromEntries(
        Object.entries({ ...whole, A: 'R2', E: 14 }).map(([column, value]) => [`Returns!${column}3`, value]),
      ),
    });
    // Two collars of 14 in with an inch on each side take 32 in; the wall is 20 × 30 in.
    expect(crowded.at('Returns!H3')).toMatch(/^look: side by side the openings are wider/);
  });
});

test('each size of flex has a line of its own on the order, the smallest first', async () => {
  const filled = await filledIn(returnPlenumDemo(), {});
  const flex = [...orderOf(returnPlenum, filled)].filter(([item]) => item.startsWith('Flex, '));
  // 88 in of 9 in; 174 1/2 in of 10 in; 126 in of 14 in; 25 ft in a box.
  expect(flex).toEqual([
    ['Flex, 9 in', 1],
    ['Flex, 10 in', 1],
    ['Flex, 14 in', 1],
  ]);
  expect(filled.stops).toEqual({});
});

test('one more return never lowers the order', async () => {
  const before = orderOf(returnPlenum, await filledIn(returnPlenum, box));
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 6, max: 16 }),
      fc.integer({ min: 8, max: 30 }),
      fc.integer({ min: 12, max: 600 }),
      async (flex, grille, length) => {
        const filled = await filledIn(
          returnPlenum,
          withReturn({ ...whole, B: 200, C: grille, D: grille, E: flex, F: length }),
        );
        expect(filled.faults).toEqual([]);
        const after = orderOf(returnPlenum, filled);
        for (const [item, many] of before) expect(after.get(item), item).toBeGreaterThanOrEqual(many);
        expect(after.get('Return grilles')).toBe(1);
      },
    ),
    { numRuns: 10 },
  );
}, 60_000);
