import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { endCap } from '../../../src/trade/blank/end-cap.ts';
import { areaWithin, blankSize, cutOutline, netArea } from '../../../src/trade/blank/piece.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);

it('a cap is its rectangle of sheet with a square notch in each corner', () => {
  fc.assert(
    fc.property(double(2, 120), double(2, 120), double(0, 6), double(-1, 1), (width, depth, flange, ease) => {
      const cap = endCap(width, depth, flange, ease);
      const size = blankSize(cap);
      expect(areaWithin(cutOutline(cap))).toBeCloseTo(size.width * size.length - 4 * flange ** 2, 6);
      expect(144 * netArea(cap)).toBeCloseTo((width + ease) * (depth + ease), 6);
    }),
  );
});

it('four flanges, four bend lines; without a flange there is nothing to bend', () => {
  const lines = (flange: number) => endCap(inches(20), inches(8), inches(flange), inches(0)).lines.length;
  expect([lines(1), lines(0)]).toEqual([4, 0]);
});
