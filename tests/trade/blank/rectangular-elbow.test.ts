import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import {
  areaWithin,
  blankSize,
  cutOutline,
  netArea,
  netOutline,
  type Piece,
  sideLength,
} from '../../../src/trade/blank/piece.ts';
import {
  type ElbowSizes,
  elbowForms,
  mostMiter,
  type RectangularElbow,
  rectangularElbow,
} from '../../../src/trade/blank/rectangular-elbow.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);
const sizesWith = (most: number) =>
  fc.record({
    form: fc.constantFrom(...elbowForms),
    width: double(2, 120),
    depth: double(2, 120),
    angle: double(1, most),
    throatRadius: fc.oneof(fc.constant(inches(0)), double(0.5, 240)),
    firstNeck: double(0, 24),
    secondNeck: double(0, 24),
    pocket: double(0, 3),
    flange: double(0, 3),
    divisions: fc.integer({ min: 4, max: 96 }),
  });
const anySizes = sizesWith(mostMiter).map(withRoom);

/** The flanges of a tight throat need room between the straight ends. */
function withRoom(sizes: ElbowSizes): ElbowSizes {
  const outcome = rectangularElbow(sizes);
  return outcome.ok || outcome.fault.code !== 'throat_flanges_meet' ? sizes : { ...sizes, flange: inches(0) };
}

function elbow(sizes: ElbowSizes): RectangularElbow {
  const outcome = rectangularElbow(sizes);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

function part(made: RectangularElbow, number: number): Piece {
  const found = made.pieces.find((piece) => piece.part === number);
  if (!found) throw new Error(`no part ${number}`);
  return found;
}

function side(piece: Piece, is: string): number {
  const found = piece.sides.find((one) => one.is === is);
  if (!found) throw new Error(is);
  return sideLength(found);
}

it('heel and throat are as long as the edges of the cheek that they meet, and as wide as the duct is deep', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const made = elbow(sizes);
      const cheek = part(made, 1);
      for (const [number, name] of [
        [2, 'heel'],
        [3, 'throat'],
      ] as const) {
        if (number === 3 && side(cheek, 'throat') < 1e-6) continue;
        expect(side(part(made, number), 'cheek edge')).toBeCloseTo(side(cheek, name), 7);
        expect(side(part(made, number), 'first end')).toBe(sizes.depth);
      }
      expect(side(cheek, 'first end')).toBeCloseTo(sizes.width, 7);
      expect(side(cheek, 'second end')).toBeCloseTo(sizes.width, 7);
    }),
  );
});

it('a cheek has the area of the centerline times the width (Pappus), straight ends and all', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const made = elbow(sizes);
      const along = sizes.firstNeck + made.centerline + sizes.secondNeck;
      expect((144 * netArea(part(made, 1))) / (along * sizes.width)).toBeCloseTo(1, 9);
    }),
  );
});

it('the points of a radius cheek lie within its area, closer with more of them', () => {
  const sizes = (divisions: number): ElbowSizes => ({
    form: 'radius',
    width: inches(12),
    depth: inches(8),
    angle: 90,
    throatRadius: inches(6),
    firstNeck: inches(0),
    secondNeck: inches(0),
    pocket: inches(0),
    flange: inches(0),
    divisions,
  });
  const missing = (divisions: number) =>
    72 * Math.PI - areaWithin(netOutline(part(elbow(sizes(divisions)), 1)));
  expect(missing(12)).toBeLessThan(1);
  expect(missing(12) / missing(24)).toBeCloseTo(4, 1);
});

it('a square turn fits a square with the heel radius for its side, and flanges beyond', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const flange = inches(0.25);
      const made = elbow({
        ...sizes,
        form: 'radius',
        angle: 90,
        firstNeck: inches(0),
        secondNeck: inches(0),
        flange,
      });
      const { width, length } = blankSize(part(made, 1));
      expect(width).toBeCloseTo(made.heelRadius + flange, 2);
      expect(length).toBeCloseTo(width, 9);
    }),
  );
});

it('a mitered elbow and a sharp-throated one have the same throat; the mitered heel is longer', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const sharp = { ...sizes, throatRadius: inches(0), flange: inches(0) };
      const mitered = elbow({ ...sharp, form: 'mitered' });
      const round = elbow({ ...sharp, form: 'radius' });
      expect([mitered.throatLength, round.throatLength]).toEqual([0, 0]);
      expect(mitered.heelLength).toBeGreaterThan(round.heelLength);
    }),
  );
});

it('a sharp throat without straight ends is a bend line, and no strip', () => {
  const bare = {
    form: 'mitered',
    width: inches(14),
    depth: inches(8),
    angle: 90,
    throatRadius: inches(0),
  } as const;
  const none = { firstNeck: inches(0), secondNeck: inches(0), pocket: inches(1), flange: inches(0.25) };
  const made = elbow({ ...bare, ...none, divisions: 24 });
  expect(made.pieces.map((piece) => piece.name)).toEqual(['cheek', 'heel']);
});

it('a miter near a half turn is refused, a radius is not', () => {
  fc.assert(
    fc.property(sizesWith(180).map(withRoom), (sizes) => {
      const outcome = rectangularElbow(sizes);
      expect(outcome.ok).toBe(sizes.form === 'radius' || sizes.angle <= mostMiter);
      if (!outcome.ok) return;
      for (const piece of outcome.value.pieces) {
        expect(cutOutline(piece).every((at) => Number.isFinite(at.across + at.up))).toBe(true);
      }
    }),
  );
});

it('flanges in a sharp throat are refused where they would lie over each other, and the least length will do', () => {
  const sizes = (neck: number, flange: number): ElbowSizes => ({
    form: 'mitered',
    width: inches(14),
    depth: inches(8),
    angle: 120,
    throatRadius: inches(0),
    firstNeck: inches(neck),
    secondNeck: inches(neck),
    pocket: inches(1),
    flange: inches(flange),
    divisions: 24,
  });
  const outcome = rectangularElbow(sizes(0.25, 0.25));
  if (outcome.ok || outcome.fault.code !== 'throat_flanges_meet') throw new Error('laid out');
  expect(outcome.fault.least).toBeCloseTo(0.25 * Math.sqrt(3), 9);
  expect(rectangularElbow(sizes(outcome.fault.least, 0.25)).ok).toBe(true);
  expect(rectangularElbow(sizes(0, 0.25)).ok).toBe(true);
});
