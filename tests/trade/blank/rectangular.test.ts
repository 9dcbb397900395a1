import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import {
  type Make,
  makes,
  partNumbered,
  type RectangularPart,
  type RectangularSizes,
  rectangularParts,
} from '../../../src/trade/blank/rectangular.ts';

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);
const anySizes = fc.record({
  width: size(2, 120),
  depth: size(2, 120),
  pocket: size(0, 3),
  flange: size(0, 3),
  bendDeduction: size(0, 0.5),
});
const twentyByEight: RectangularSizes = {
  width: inches(20),
  depth: inches(8),
  pocket: inches(1),
  flange: inches(0.25),
  bendDeduction: inches(0),
};

function total(parts: readonly RectangularPart[], of: (part: RectangularPart) => number): number {
  return parts.reduce((sum, part) => sum + part.pieces * of(part), 0);
}

const seams: Readonly<Record<Make, number>> = {
  'one piece': 1,
  'two L halves': 2,
  'U and flat': 2,
  'four pieces': 4,
};

it.each(makes)('made as %s, the sides together go once round the duct', (make) => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const flat = { ...sizes, bendDeduction: inches(0), pocket: inches(0), flange: inches(0) };
      const around = 2 * (sizes.width + sizes.depth);
      expect(total(rectangularParts(make, flat), (part) => part.width)).toBeCloseTo(around, 9);
    }),
  );
});

it.each(makes)('made as %s, every seam has one pocket and one flange', (make) => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const parts = rectangularParts(make, sizes);
      const count = (is: string) =>
        total(parts, (part) => part.strips.filter((strip) => strip.is === is).length);
      expect([count('pocket'), count('flange')]).toEqual([seams[make], seams[make]]);
    }),
  );
});

it.each(makes)('made as %s, bends and seams are the four corners of the duct', (make) => {
  const parts = rectangularParts(make, twentyByEight);
  expect(total(parts, (part) => part.bends) + seams[make]).toBe(4);
});

it.each(makes)('made as %s, each bend takes its deduction off the flat', (make) => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const sharp = rectangularParts(make, { ...sizes, bendDeduction: inches(0) });
      for (const [index, part] of rectangularParts(make, sizes).entries()) {
        const sharpWidth = sharp[index]?.width ?? Number.NaN;
        expect(sharpWidth - part.width).toBeCloseTo(part.bends * sizes.bendDeduction, 9);
      }
    }),
  );
});

it.each(makes)('made as %s, the blanks grow with the duct', (make) => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const larger = rectangularParts(make, {
        ...sizes,
        width: inches(sizes.width + 1),
        depth: inches(sizes.depth + 1),
      });
      for (const [index, part] of rectangularParts(make, sizes).entries()) {
        expect(larger[index]?.width).toBeGreaterThan(part.width);
      }
    }),
  );
});

it('the lines of a one-piece wrap stand where they are scribed, from the pocket edge', () => {
  expect(rectangularParts('one piece', twentyByEight)[0]?.lines).toEqual([1, 21, 29, 49, 57]);
});

it('a seam allowance of nothing leaves no line on the edge', () => {
  const bare = { ...twentyByEight, pocket: inches(0), flange: inches(0) };
  expect(rectangularParts('one piece', bare)[0]?.lines).toEqual([20, 28, 48]);
});

it('L halves are all alike, so there is no second kind of blank', () => {
  const parts = rectangularParts('two L halves', twentyByEight);
  expect(partNumbered(parts, 'two L halves', 2)).toEqual({
    ok: false,
    fault: { code: 'no_such_part', make: 'two L halves', part: 2 },
  });
});
