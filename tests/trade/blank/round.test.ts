import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { type MeasuredAt, roundBlank } from '../../../src/trade/blank/round.ts';

const diameters = fc.double({ min: 2, max: 120, noNaN: true });
const thicknesses = fc.double({ min: 0.01, max: 0.25, noNaN: true });

function girth(diameter: number, thickness: number, measured: MeasuredAt): number {
  return roundBlank(inches(diameter), inches(thickness), measured, inches(0)).girth;
}

it('an outside diameter has the same girth as the inside diameter of the same pipe', () => {
  fc.assert(
    fc.property(diameters, thicknesses, (diameter, thickness) => {
      const fromOutside = girth(diameter + 2 * thickness, thickness, 'outside');
      expect(fromOutside).toBeCloseTo(girth(diameter, thickness, 'inside'), 9);
    }),
  );
});

it('the girth grows with the diameter, and thickness only counts where it is not ignored', () => {
  fc.assert(
    fc.property(diameters, thicknesses, (diameter, thickness) => {
      expect(girth(diameter + 1, thickness, 'inside')).toBeGreaterThan(girth(diameter, thickness, 'inside'));
      expect(girth(diameter, thickness, 'ignored')).toBe(girth(diameter, 0, 'inside'));
    }),
  );
});

it('the seam is added once, to the girth', () => {
  const blank = roundBlank(inches(6), inches(0), 'ignored', inches(1));
  expect(blank.width - blank.girth).toBeCloseTo(1, 12);
});
