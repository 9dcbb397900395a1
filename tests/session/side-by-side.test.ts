import { describe, expect, test } from 'vitest';
import { roundTrunk } from '../../scripts/sheets/round-trunk/template.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { bookOf } from '../../src/engine/book.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { type DuctSize, rectangularSizes, roundSizes, sideBySide } from '../../src/session/side-by-side.ts';
import { markFor, missingReasons } from '../../src/session/side-by-side-reasons.ts';

async function figured(wrap: string, sizes: readonly DuctSize[]) {
  const calculator = createCalculator({ functions: tradeFunctions });
  await calculator.open(bookOf(roundTrunk));
  return sideBySide(roundTrunk, wrap, sizes, (sheet, asked) => calculator.evaluate(sheet, asked));
}

test('the cut of geometry leaves the 2 1/4 in that it was figured with, and the published one more', async () => {
  const calculator = createCalculator({ functions: tradeFunctions });
  await calculator.open(bookOf(roundTrunk));
  const left = (way: string) =>
    `WRAP.THICKNESS("round",16,,WRAP.STRETCHOUT("round",16,,"R-8 wrap",wraps,"${way}"),"R-8 wrap",wraps)`;
  const [geometry, published] = await calculator.evaluate('Allowances', [
    left('geometry'),
    left('published'),
  ]);
  // Published R table at 25 % squeeze: 3 in wrap is 2.25 in on the duct. Geometry: π(16 + 2 × 2.25) + 2 = 66.40, and back.
  expect(geometry).toBeCloseTo(2.25, 9);
  // Published stretch-out table (round, 3 in: perimeter + 17 in): (17 − 2) ÷ 2π = 2.387.
  expect(published).toBeCloseTo(15 / (2 * Math.PI), 9);
});

describe('reasons for figures that are missing', () => {
  test('stand once for all sizes, with what is said of single sizes beside it', async () => {
    const sizes = await figured('R-5 wrap', [...roundSizes, ...rectangularSizes]);
    const reasons = missingReasons(sizes);
    expect(reasons.map(({ mark }) => mark)).toEqual(['a']);
    expect(reasons[0]?.says).toMatch(/^This cut would squeeze .* and cold metal would sweat\.$/);
    const short = sizes.filter(({ ways }) => ways.published.r === null);
    expect(reasons[0]?.of.map(({ figures }) => figures)).toEqual(short);
    for (const { says } of reasons[0]?.of ?? []) expect(says).toMatch(/^Cut at least \d/);
    for (const { ways } of short) expect(markFor(reasons, ways.published.why ?? '')).toBe('a');
  });

  test('are each there, and none where nothing is missing', async () => {
    expect(missingReasons(await figured('R-4 wrap', roundSizes))).toEqual([]);
    const reasons = missingReasons(await figured('no such wrap', [...roundSizes, ...rectangularSizes]));
    expect(reasons.map(({ says }) => says)).toEqual([expect.stringContaining('no such wrap')]);
  });
});

test('what is to be minded comes from the function that tells the R left', async () => {
  const [tight] = await figured('R-5 wrap', [{ shape: 'rectangular', width: 8, depth: 8 }]);
  const levels = (way: 'geometry' | 'published') => tight?.ways[way].cautions.map(({ level }) => level);
  expect(levels('geometry')).toContain('care');
  const [wide] = await figured('R-8 wrap', [{ shape: 'rectangular', width: 8, depth: 8 }]);
  expect(wide?.ways.published.cautions.map(({ sentence }) => sentence)).toContainEqual(
    expect.stringContaining('not the rated R 8.3'),
  );
});

describe('a wrap by the three ways, size by size', () => {
  test('16 in round in 3 in wrap is 67 5/16 by the published table and 66 7/16 by geometry', async () => {
    // Published stretch-out table (round, 3 in: perimeter + 17 in, 2 in lap included): 67.27; geometry: π(16 + 4.5) + 2 = 66.40.
    const [row] = await figured('R-8 wrap', [{ shape: 'round', width: 16, depth: null }]);
    expect(row?.ways.published.cut).toBe(67.3125);
    expect(row?.ways.geometry.cut).toBe(66.4375);
    // The shop adds 17 1/2 in: 50.2655 + 17.5 = 67.7655.
    expect(row?.ways.shop.cut).toBe(67.8125);
    expect(row?.ways.geometry.r).toBeCloseTo(8.313, 2);
    expect(row?.ways.published.r).toBeCloseTo(8.642, 2);
  });

  test('every size has a cut by geometry, and a longer cut never leaves less R', async () => {
    for (const { ways } of await figured('R-8 wrap', [...roundSizes, ...rectangularSizes])) {
      const { geometry, published, shop } = ways;
      expect(geometry.cut).toBeGreaterThan(0);
      const figures = [geometry, published, shop].filter(({ cut, r }) => cut !== null && r !== null);
      const sorted = figures.toSorted((one, other) => Number(one.cut) - Number(other.cut));
      for (const [at, { r }] of sorted.entries()) {
        expect(Number(r)).toBeGreaterThanOrEqual(Number(sorted[at - 1]?.r ?? 0) - 1e-9);
      }
    }
  });

  test('a way without a figure says why, and the others are there all the same', async () => {
    const [row] = await figured('no such wrap', [{ shape: 'round', width: 16, depth: null }]);
    expect(row?.ways.geometry).toMatchObject({
      cut: null,
      r: null,
      why: expect.stringContaining('no such wrap'),
    });
    const calculator = createCalculator({ functions: tradeFunctions });
    const bare = {
      ...roundTrunk,
      sheets: roundTrunk.sheets.map((sheet) =>
        sheet.id === 'allowances'
          ? {
              ...sheet,
              rows: sheet.rows.map((cells, at) =>
                at === 4
                  ? cells.map((cell, column) => (column === 7 && cell ? { ...cell, content: null } : cell))
                  : cells,
              ),
            }
          : sheet,
      ),
    };
    await calculator.open(bookOf(bare));
    const [without] = await sideBySide(
      bare,
      'R-8 wrap',
      [{ shape: 'round', width: 16, depth: null }],
      (sheet, asked) => calculator.evaluate(sheet, asked),
    );
    expect(without?.ways.shop.cut).toBeNull();
    expect(without?.ways.shop.why).toContain('R-8 wrap');
    expect(without?.ways.published.cut).toBe(67.3125);
  });
});
