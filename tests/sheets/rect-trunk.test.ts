import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rectTrunk } from '../../scripts/sheets/rect-trunk/template.ts';
import type { WorkedExample } from '../../src/workbook/document.ts';
import { filledIn, orderOf } from './support.ts';

const trunk = {
  'Job!B9': 24,
  'Pieces!A2': 'T1',
  'Pieces!C2': 20,
  'Pieces!D2': 8,
  'Pieces!E2': 120,
} as const;

const tapped = (line: Record<string, string | number>): WorkedExample['given'] => ({
  ...trunk,
  ...Object.fromEntries(Object.entries(line).map(([column, value]) => [`Taps!${column}2`, value])),
});

describe('from how many blanks a rectangular duct is made', () => {
  test.each([
    // Girth and seam against a stock sheet of 48 × 120 in: 2 × (20 + 8) + 1 1/4 = 57 1/4 lies along it.
    ['one piece', 20, 8, 57.25],
    // 2 × (40 + 20) + 1 1/4 = 121 1/4 does not; 40 + 20 + 1 1/4 does.
    ['two L halves', 40, 20, 61.25],
    // 80 + 60 + 1 1/4 does not either; the wide side with two pockets is 82 in.
    ['four pieces', 80, 60, 82],
  ])('%s, where it is the first that fits: %i × %i in', async (made, width, depth, first) => {
    const filled = await filledIn(rectTrunk, {
      ...trunk,
      'Pieces!C2': width,
      'Pieces!D2': depth,
      'Job!B14': 'not checked',
    });
    expect([filled.at('Blanks!B2'), filled.at('Blanks!C2')]).toEqual([made, first]);
    expect(filled.at('Blanks!H2')).toBe('holds');
  });

  test('a piece that is made its own way is, and stops where no sheet holds it', async () => {
    const filled = await filledIn(rectTrunk, {
      ...trunk,
      'Pieces!B2': 'one piece',
      'Pieces!C2': 40,
      'Pieces!D2': 20,
      'Job!B14': 'not checked',
    });
    expect(filled.at('Blanks!H2')).toMatch(/^stop: a blank is larger than the stock sheet/);
    expect(filled.at('Job!B27')).toContain('the order is without T1;');
  });

  test('every blank has its own seam: 1, 2, 2 and 4 lengths are sealed at 2 in. w.g.', async () => {
    const seams = await Promise.all(
      ['one piece', 'two L halves', 'U and flat', 'four pieces'].map(async (made) => {
        const filled = await filledIn(rectTrunk, { ...trunk, 'Job!B13': 2, 'Pieces!B2': made });
        return filled.numberAt('Seal and fasten!E2');
      }),
    );
    expect(seams).toEqual([120, 240, 240, 480]);
  });
});

describe('taps of a rectangular trunk', () => {
  test.each([
    ['wider than its side', { A: 'T1', B: 'round', C: 9, E: 1, F: 'narrow side' }, 'stop: the tap is wider'],
    ['longer together than the piece', { A: 'T1', B: 'rectangular', C: 50, D: 8, E: 3 }, 'stop: the taps on'],
    ['on no piece', { A: 'T9', B: 'round', C: 6, E: 1 }, 'stop: no piece on Pieces has this mark'],
    [
      'without a second size',
      { A: 'T1', B: 'rectangular', C: 6, E: 1 },
      'stop: still to fill in: size across',
    ],
  ])('a tap %s stops the order and is not counted', async (_, line, sentence) => {
    const filled = await filledIn(rectTrunk, tapped(line));
    expect(filled.at('Taps!G2')).toContain(sentence);
    expect(filled.stops).toEqual({ Job: 1, Taps: 1 });
    expect(filled.at('Job!B27')).toContain(`without taps of ${line.A};`);
    expect(orderOf(rectTrunk, filled).get('Tap collars')).toBe(0);
    expect(filled.faults).toEqual([]);
  });

  test('a tap that leaves too little metal beside it is worth a look', async () => {
    const filled = await filledIn(rectTrunk, tapped({ A: 'T1', B: 'round', C: 7, E: 1, F: 'narrow side' }));
    expect(filled.at('Taps!G2')).toMatch(/^look: less metal stays beside the tap/);
    expect(filled.stops).toEqual({});
  });

  test('the ring of facing goes round the wrap of a rectangular tap, its corners rounded', async () => {
    const filled = await filledIn(rectTrunk, tapped({ A: 'T1', B: 'rectangular', C: 12, D: 8, E: 1 }));
    // 2 × (12 + 8) + 2π × 2 1/4.
    expect(filled.numberAt('Taps!O2')).toBeCloseTo(40 + 2 * Math.PI * 2.25, 9);
  });
});

test('a cut that squeezes the wrap past half of its thickness stops in words, and nothing else is lost', async () => {
  // The published table for 2.2 in on a rectangular duct: (56 + 8.5 − 56 − 2) ÷ 2π is 1.03 in.
  const filled = await filledIn(rectTrunk, { ...trunk, 'Job!B10': 'R-6 wrap', 'Job!B11': 6 });
  expect(filled.at('Wrap!F2')).toMatch(/^stop: cut this way, less than half/);
  expect(filled.faults).toEqual([]);
  const byGeometry = await filledIn(rectTrunk, {
    ...trunk,
    'Job!B10': 'R-6 wrap',
    'Job!B11': 6,
    'Job!B12': 'geometry',
  });
  expect(byGeometry.at('Wrap!F2')).toBe('holds');
});

test('one more piece or one more tap never lowers the order', async () => {
  const size = fc.integer({ min: 4, max: 18 });
  await fc.assert(
    fc.asyncProperty(
      size,
      size,
      fc.integer({ min: 12, max: 300 }),
      fc.integer({ min: 1, max: 3 }),
      async (width, depth, length, taps) => {
        const before = await filledIn(rectTrunk, trunk);
        const after = await filledIn(rectTrunk, {
          ...trunk,
          'Pieces!A3': 'T2',
          'Pieces!C3': width,
          'Pieces!D3': depth,
          'Pieces!E3': length,
          'Taps!A2': 'T1',
          'Taps!B2': 'round',
          'Taps!C2': 6,
          'Taps!E2': taps,
        });
        expect(after.faults).toEqual([]);
        const later = orderOf(rectTrunk, after);
        for (const [item, many] of orderOf(rectTrunk, before)) {
          expect(later.get(item), item).toBeGreaterThanOrEqual(many);
        }
      },
    ),
    { numRuns: 8 },
  );
}, 60_000);
