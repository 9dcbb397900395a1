import { describe, expect, test } from 'vitest';
import { roundTrunk } from '../../scripts/sheets/round-trunk/template.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { bookOf } from '../../src/engine/book.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { type DuctSize, rectangularSizes, roundSizes, sideBySide } from '../../src/session/side-by-side.ts';

async function figured(wrap: string, sizes: readonly DuctSize[]) {
  const calculator = createCalculator({ functions: tradeFunctions });
  await calculator.open(bookOf(roundTrunk));
  return sideBySide(roundTrunk, wrap, sizes, (sheet, asked) => calculator.evaluate(sheet, asked));
}

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
