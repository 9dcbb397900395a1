import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import type { DuctSection } from '../../../src/trade/section.ts';
import { type CutOut, cutOut, halfAround } from '../../../src/trade/wrap/cut-out.ts';

const set = { numRuns: 200 };
const round = (diameter: number): DuctSection => ({ shape: 'round', diameter: inches(diameter) });
const on = (diameter: number) => ({ type: 'round', diameter: inches(diameter) }) as const;

function hole(branch: DuctSection, trunk: Parameters<typeof cutOut>[1], thickness: number, ease = 0): CutOut {
  const found = cutOut(branch, trunk, inches(thickness), inches(ease));
  if (!found.ok) throw new Error(found.fault.code);
  return found.value;
}

describe('the hole in the wrap for a branch', () => {
  test('on a flat side is the branch with its ease all round', () => {
    expect(hole(round(8), { type: 'flat' }, 2.25, 0.25)).toMatchObject({
      along: 8.5,
      around: 8.5,
      face: null,
    });
    const branch: DuctSection = { shape: 'rectangular', width: inches(12), depth: inches(6) };
    expect(hole(branch, { type: 'flat' }, 1.5)).toMatchObject({ along: 12, around: 6 });
  });

  test('on a round trunk lies over the branch all round once the facing is rolled up', () => {
    const branch = fc.double({ min: 2, max: 40, noNaN: true });
    const more = fc.double({ min: 0, max: 40, noNaN: true });
    const place = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        branch,
        more,
        fc.double({ min: 0.2, max: 4, noNaN: true }),
        place,
        (d, wider, thick, at) => {
          const cut = hole(round(d), on(d + wider), thick);
          expect(cut.around).toBeGreaterThanOrEqual(d);
          // A point of the hole, rolled back on the face: its two distances from the branch axis make the radius.
          const radius = (d + wider) / 2 + thick;
          const sideways = radius * Math.sin(halfAround(cut, true, at) / radius);
          expect(Math.hypot((at * cut.along) / 2, sideways)).toBeCloseTo(d / 2, 6);
          expect(halfAround(cut, true, 0) * 2).toBeCloseTo(cut.around, 9);
        },
      ),
      set,
    );
  });

  test('comes close to the branch on a very large trunk, and is refused on a smaller one', () => {
    expect(hole(round(8), on(8000), 2).around).toBeCloseTo(8, 4);
    expect(cutOut(round(12), on(10), inches(1.5), inches(0))).toMatchObject({
      fault: { code: 'tap_wider_than_trunk', across: 12, trunk: 10 },
    });
  });
});
