import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches, poundsPerSquareFoot } from '../../../src/base/quantity.ts';
import { rectangularParts } from '../../../src/trade/blank/rectangular.ts';
import { ductWeight } from '../../../src/trade/weight/duct.ts';
import { blankWeight } from '../../../src/trade/weight/sheet.ts';

const sides = fc.double({ min: 2, max: 120, noNaN: true }).map(inches);
const lengths = fc.double({ min: 1, max: 1200, noNaN: true }).map(inches);
const sheetWeights = fc.double({ min: 0.1, max: 4, noNaN: true }).map(poundsPerSquareFoot);

it('a duct weighs what its one-piece blank weighs', () => {
  fc.assert(
    fc.property(sides, sides, lengths, sheetWeights, (width, depth, length, perSquareFoot) => {
      const sizes = { width, depth, pocket: inches(1), flange: inches(0.25), bendDeduction: inches(0) };
      const blank = rectangularParts('one piece', sizes)[0]?.width ?? inches(Number.NaN);
      const section = { shape: 'rectangular', width, depth } as const;
      const { weight } = ductWeight(section, length, perSquareFoot, inches(1.25), 0);
      expect(weight).toBeCloseTo(blankWeight(blank, length, perSquareFoot).weight, 6);
    }),
  );
});

it('waste is a share of the metal, seams included', () => {
  const section = { shape: 'round', diameter: inches(6) } as const;
  const { metal, weight } = ductWeight(section, inches(12), poundsPerSquareFoot(0.906), inches(1), 0.1);
  expect(weight / metal).toBeCloseTo(1.1, 12);
});

it('weight grows with size, length and sheet', () => {
  fc.assert(
    fc.property(sides, lengths, sheetWeights, (diameter, length, perSquareFoot) => {
      const of = (d: number, l: number, w: number) =>
        ductWeight({ shape: 'round', diameter: inches(d) }, inches(l), poundsPerSquareFoot(w), inches(0), 0)
          .weight;
      const base = of(diameter, length, perSquareFoot);
      expect(of(diameter + 1, length, perSquareFoot)).toBeGreaterThan(base);
      expect(of(diameter, length + 1, perSquareFoot)).toBeGreaterThan(base);
      expect(of(diameter, length, perSquareFoot + 0.1)).toBeGreaterThan(base);
    }),
  );
});
