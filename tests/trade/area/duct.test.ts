import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { ductArea } from '../../../src/trade/area/duct.ts';
import { rectangularParts } from '../../../src/trade/blank/rectangular.ts';
import { roundBlank } from '../../../src/trade/blank/round.ts';

const sides = fc.double({ min: 2, max: 120, noNaN: true }).map(inches);
const lengths = fc.double({ min: 1, max: 1200, noNaN: true }).map(inches);
const none = inches(0);

it('the area of a round duct is the area of its flat blank without a seam', () => {
  fc.assert(
    fc.property(sides, lengths, (diameter, length) => {
      const { width } = roundBlank(diameter, none, 'ignored', none);
      const { area } = ductArea({ shape: 'round', diameter }, length);
      expect(area * 144).toBeCloseTo(width * length, 6);
    }),
  );
});

it('the area of a rectangular duct is the area of its one-piece blank without seams', () => {
  fc.assert(
    fc.property(sides, sides, lengths, (width, depth, length) => {
      const sizes = { width, depth, pocket: none, flange: none, bendDeduction: none };
      const blank = rectangularParts('one piece', sizes)[0]?.width ?? Number.NaN;
      const { area } = ductArea({ shape: 'rectangular', width, depth }, length);
      expect(area * 144).toBeCloseTo(blank * length, 6);
    }),
  );
});

it('a run of two lengths has the area of both', () => {
  fc.assert(
    fc.property(sides, lengths, lengths, (diameter, one, other) => {
      const section = { shape: 'round', diameter } as const;
      const both = ductArea(section, inches(one + other)).area;
      expect(both).toBeCloseTo(ductArea(section, one).area + ductArea(section, other).area, 6);
    }),
  );
});
