import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fittingsDemo } from '../../scripts/sheets/fittings/demo.ts';
import { kinds } from '../../scripts/sheets/fittings/kinds.ts';
import { fittings } from '../../scripts/sheets/fittings/template.ts';
import { filledIn, orderOf } from './support.ts';

test('an empty template waits, and asks for nothing on a line that nobody has begun', async () => {
  const blank = await filledIn(fittings, {});
  expect(blank.faults).toEqual([]);
  expect(blank.stops).toEqual({});
  expect(blank.at('Job!B27')).toBe('');
});

describe('each kind of fitting', () => {
  test.each(kinds.map((kind) => [kind.sheet, kind] as const))(
    '%s: a line with a mark alone says what is missing',
    async (sheet, kind) => {
      const filled = await filledIn(fittings, { [`${sheet}!A2`]: 'X1' });
      const check = String.fromCharCode('A'.charCodeAt(0) + kind.asks.length + 2);
      expect(filled.at(`${sheet}!${check}2`)).toMatch(/^stop: still to fill in: /);
      expect(filled.stops).toEqual({ Job: 2, [sheet]: 1 });
      expect(filled.at('Job!B27')).toContain('the order is without X1;');
      expect(filled.faults).toEqual([]);
    },
  );
});

test('sizes that make no fitting are told at its own line, and the others keep their figures', async () => {
  const sound = { 'Gored elbows!A3': 'E2', 'Gored elbows!B3': 8 };
  // A 30 in elbow on a radius of 10 in has its center inside the duct.
  const filled = await filledIn(fittings, {
    ...sound,
    'Gored elbows!A2': 'E1',
    'Gored elbows!B2': 30,
    'Gored elbows!E2': 10,
  });
  expect(filled.at('Gored elbows!G2')).toMatch(/^stop: it cannot be laid out/);
  expect(filled.at('Gored elbows!G3')).toBe('holds');
  expect(filled.at('Cut list!A2')).toBe('E2');
  expect(filled.at('Job!B27')).toContain('the order is without E1;');
});

test('a blank that no stock sheet holds stops its line', async () => {
  // 40π + 1 is 126.7 in, and the sheet is 120 in long.
  const filled = await filledIn(fittings, { 'Gored elbows!A2': 'E1', 'Gored elbows!B2': 40 });
  expect(filled.at('Gored elbows!G2')).toMatch(/^stop: a blank is larger than the stock sheet/);
});

test('two lines with one mark stop both', async () => {
  const filled = await filledIn(fittings, {
    'Gored elbows!A2': 'E1',
    'Gored elbows!B2': 8,
    'Gored elbows!A3': 'E1',
    'Gored elbows!B3': 10,
  });
  expect(filled.stops['Gored elbows']).toBe(2);
});

test('an elbow of two pieces has ends and no gore', async () => {
  const filled = await filledIn(fittings, {
    'Gored elbows!A2': 'E1',
    'Gored elbows!B2': 8,
    'Gored elbows!D2': 2,
  });
  expect(filled.at('Gored elbows!G2')).toBe('holds');
  expect(['N', 'O', 'P'].map((column) => filled.at(`Gored elbows!${column}2`))).toEqual(['', '', '']);
  expect(filled.at('Cut list!A4')).toBe('');
});

test('the cut list holds every blank of the sheets, without a gap', async () => {
  const filled = await filledIn(fittingsDemo(), {});
  expect(filled.stops).toEqual({});
  expect(filled.faults).toEqual([]);
  const listed: number[] = [];
  for (let row = 2; filled.at(`Cut list!A${row}`) !== ''; row += 1) {
    listed.push(filled.numberAt(`Cut list!E${row}`));
  }
  // Elbows 3 + 3, reducers 1 + 1, elbow 3, transition 4, 1, offset 3, taps 1 + 1, boot 2, caps 1 + 1.
  expect(listed).toHaveLength(25);
  // (1 + 1 + 3) + 2 × (1 + 1 + 1), 2, 4, 4, 1, 4, 3 + 4, 6 × 2, 2.
  expect(listed.reduce((sum, many) => sum + many, 0)).toBe(5 + 6 + 2 + 4 + 4 + 1 + 4 + 7 + 12 + 2);
  expect(filled.at('Job!B21')).toBe(47);
});

test('one more fitting never lowers the order', async () => {
  const demo = fittingsDemo();
  const before = orderOf(demo, await filledIn(demo, {}));
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 4, max: 20 }),
      fc.integer({ min: 1, max: 12 }),
      async (diameter, alike) => {
        const filled = await filledIn(demo, {
          'Gored elbows!A4': 'E9',
          'Gored elbows!B4': diameter,
          'Gored elbows!F4': alike,
        });
        const after = orderOf(demo, filled);
        for (const [item, many] of before) expect(after.get(item), item).toBeGreaterThanOrEqual(many);
      },
    ),
    { numRuns: 5 },
  );
}, 60_000);
