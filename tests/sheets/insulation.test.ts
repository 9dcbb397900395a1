import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { insulation } from '../../scripts/sheets/insulation/template.ts';
import { filledIn, orderOf } from './support.ts';

const round = { 'Job!B10': 12, 'Job!B12': 240, 'Job!B15': 6, 'Job!B17': 'R-6 wrap' } as const;

test('an empty template waits, stops nothing and orders nothing', async () => {
  const blank = await filledIn(insulation, {});
  expect(blank.faults).toEqual([]);
  expect(blank.stops).toEqual({});
  expect([...orderOf(insulation, blank).values()].every((many) => many === 0)).toBe(true);
});

test('a rectangular duct asks for its depth, in words', async () => {
  const filled = await filledIn(insulation, { ...round, 'Job!B9': 'rectangular' });
  expect(filled.at('Job!C9')).toBe('stop: still to fill in: depth');
  expect(filled.faults).toEqual([]);
});

describe('the wrap that is bought', () => {
  test.each([
    ['R-4 wrap', /^stop: it cannot be cut so/],
    ['R-9 wrap', /^stop: no wrap on Allowances has this name/],
    ['R-11 wrap', /^look: see Compare/],
    ['R-6 wrap', /^holds$/],
  ])('%s', async (wrap, says) => {
    const filled = await filledIn(insulation, { ...round, 'Job!B17': wrap });
    expect(filled.at('Job!C17')).toMatch(says);
    expect(filled.faults).toEqual([]);
  });

  test('a wrap without a figure for the way that was chosen is not ordered unseen', async () => {
    const filled = await filledIn(insulation, { ...round, 'Job!B17': 'R-11 wrap' });
    expect(filled.at('Job!B27')).toMatch(/^stop: the order is without the wrap/);
    expect(orderOf(insulation, filled).get('Wrap')).toBe(0);
  });

  test('a wrap without a price is compared without money', async () => {
    const priced = await filledIn(insulation, round);
    expect(priced.at('Compare!E24')).toBe(79);
    expect(priced.at('Job!B34')).toBe(79);
  });
});

describe('sweating', () => {
  const attic = { ...round, 'Job!B20': 90, 'Job!B22': 55 };

  test('half of the air told is not enough', async () => {
    expect((await filledIn(insulation, attic)).at('Job!C22')).toBe('stop: still to fill in: its humidity');
  });

  test('the wetter the air, the more R is needed, and a wrap that would sweat stops', async () => {
    const needed: number[] = [];
    for (const humidity of [0.5, 0.7, 0.8, 0.9]) {
      const filled = await filledIn(insulation, { ...attic, 'Job!B21': humidity });
      needed.push(filled.numberAt('Compare!E34'));
    }
    expect(needed).toEqual([...needed].sort((one, other) => one - other));
    const wet = await filledIn(insulation, { ...attic, 'Job!B21': 0.9 });
    expect(wet.at('Job!C17')).toBe('stop: it would sweat; see Compare');
  });

  test('air in the duct that is warmer than the dew point wets nothing', async () => {
    const filled = await filledIn(insulation, { ...attic, 'Job!B21': 0.3 });
    expect(filled.at('Compare!E34')).toBe(0);
    expect(filled.at('Compare!F32')).toBe('suits');
  });
});

test('a longer run never takes fewer rolls, tape or staples', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 4, max: 24 }),
      fc.integer({ min: 12, max: 4000 }),
      fc.integer({ min: 1, max: 2000 }),
      async (diameter, length, more) => {
        const run = (inches: number) =>
          filledIn(insulation, { ...round, 'Job!B10': diameter, 'Job!B12': inches });
        const [short, long] = [
          orderOf(insulation, await run(length)),
          orderOf(insulation, await run(length + more)),
        ];
        for (const [item, many] of short) expect(long.get(item), item).toBeGreaterThanOrEqual(many);
      },
    ),
    { numRuns: 12 },
  );
}, 60_000);
