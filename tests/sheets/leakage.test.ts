import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leakage } from '../../scripts/sheets/leakage/template.ts';
import type { WorkedExample } from '../../src/workbook/document.ts';
import { filledIn } from './support.ts';

const run = { A: 'S1', B: 'round', C: 12, E: 240, F: 'attic', G: 'supply', H: 8.3, I: 26 } as const;

function withRuns(...lines: readonly Record<string, string | number>[]): WorkedExample['given'] {
  return {
    'Job!B16': 800,
    ...Object.fromEntries(
      lines.flatMap((line, index) =>
        Object.entries(line).map(([column, value]) => [`Runs!${column}${index + 2}`, value]),
      ),
    ),
  };
}

test('an empty template waits for its first run, and stops nothing', async () => {
  const blank = await filledIn(leakage, {});
  expect(blank.faults).toEqual([]);
  expect(blank.stops).toEqual({});
  expect(blank.at('Job!B36')).toBe('look: no run is filled in yet');
});

describe('a run', () => {
  test.each([
    [
      'with less R than the code asks for',
      { ...run, H: 6 },
      /^stop: the code asks for R 8, and the wrap has R 6/,
    ],
    [
      'without wrap',
      { A: 'S1', B: 'round', C: 12, E: 240, F: 'attic', G: 'supply', I: 26 },
      /and the wrap has R 0/,
    ],
    ['of too light a sheet', { ...run, C: 18, I: 30 }, /^stop: 30 ga is too light/],
    [
      'whose gauge is not told',
      { A: 'S1', B: 'round', C: 12, E: 240, F: 'inside', G: 'supply' },
      /^look: its gauge/,
    ],
    ['as the code asks', run, /^holds$/],
  ])('%s', async (_, line, says) => {
    const filled = await filledIn(leakage, withRuns(line));
    expect(filled.at('Runs!J2')).toMatch(says);
    expect(filled.faults).toEqual([]);
  });

  test('a place for which the code tells no R stops with the reason in its own cell', async () => {
    // The table for buried duct tells of nothing else.
    const filled = await filledIn(leakage, { ...withRuns(run), 'Job!B9': 'IRC 2018 buried duct' });
    expect(filled.at('Runs!J2')).toMatch(/^stop: this code tells no R for such a run/);
    expect(filled.at('Job!B36')).toMatch(/^stop/);
  });

  test('that is not finished is named, and the others keep their leakage', async () => {
    const whole = await filledIn(leakage, withRuns(run));
    const half = await filledIn(leakage, withRuns(run, { A: 'S2', B: 'round', C: 10 }));
    expect(half.at('Runs!J3')).toBe('stop: still to fill in: length, where it hangs, duty');
    expect(half.at('Job!C22')).toContain('it is without S2;');
    expect(half.at('Job!B23')).toBe(whole.at('Job!B23'));
  });

  test('unsealed round duct has no class in the manual, so its leakage is named as not counted', async () => {
    const filled = await filledIn(leakage, { ...withRuns(run), 'Job!B18': 'unsealed', 'Job!B19': '1985' });
    expect(filled.at('Runs!J2')).toMatch(/^look: the manual tells no leakage class/);
    expect(filled.at('Job!C22')).toContain('it is without S1;');
  });
});

describe('how the duct must be sealed', () => {
  test.each([
    [1.9, 'unsealed', /^look: energy codes/],
    [2, 'unsealed', /^stop: from 2 in/],
    [2.9, 'C', /^holds$/],
    [3, 'C', /^stop: from 3 in/],
    [4, 'B', /^stop: from 4 in/],
    [4, 'A', /^holds$/],
  ])('at %f in. w.g., sealed to %s', async (pressure, seal, says) => {
    const filled = await filledIn(leakage, { 'Job!B17': pressure, 'Job!B18': seal });
    expect(filled.at('Job!C18')).toMatch(says);
  });
});

test('one more run never leaks less, and a higher pressure never either', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 4, max: 24 }),
      fc.integer({ min: 12, max: 600 }),
      fc.double({ min: 0.1, max: 1.8, noNaN: true }),
      async (diameter, length, pressure) => {
        const one = await filledIn(leakage, { ...withRuns(run), 'Job!B17': pressure });
        const two = await filledIn(leakage, {
          ...withRuns(run, { ...run, A: 'S2', C: diameter, E: length }),
          'Job!B17': pressure,
        });
        const higher = await filledIn(leakage, { ...withRuns(run), 'Job!B17': pressure + 0.1 });
        expect(two.numberAt('Job!B23')).toBeGreaterThan(one.numberAt('Job!B23'));
        expect(higher.numberAt('Job!B23')).toBeGreaterThan(one.numberAt('Job!B23'));
      },
    ),
    { numRuns: 10 },
  );
}, 60_000);
