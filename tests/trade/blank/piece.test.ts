import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import {
  arcSpots,
  areaWithin,
  blankSize,
  cutOutline,
  netArea,
  netOutline,
  type Piece,
  type Side,
  sideLength,
  spot,
} from '../../../src/trade/blank/piece.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

function piece(...sides: readonly Side[]): Piece {
  return { part: 1, name: 'trial', pieces: 1, sides, lines: [] };
}

function box(width: number, length: number, added: readonly number[]): Piece {
  const corners = [spot(0, 0), spot(width, 0), spot(width, length), spot(0, length), spot(0, 0)];
  return piece(
    ...[0, 1, 2, 3].map((side) => ({
      is: `side ${side}`,
      spots: corners.slice(side, side + 2),
      added: inches(added[side] ?? 0),
    })),
  );
}

it('a rectangle with flanges is notched at its corners: the cut area is the net and a strip a side', () => {
  fc.assert(
    fc.property(
      double(2, 120),
      double(2, 120),
      fc.array(double(0, 3), { minLength: 4, maxLength: 4 }),
      (width, length, added) => {
        const one = box(width, length, added);
        const [a = 0, b = 0, c = 0, d = 0] = added;
        expect(144 * netArea(one)).toBeCloseTo(width * length, 6);
        expect(areaWithin(cutOutline(one))).toBeCloseTo(
          width * length + width * (a + c) + length * (b + d),
          6,
        );
        const size = blankSize(one);
        expect([size.width, size.length]).toEqual([
          expect.closeTo(width + b + d, 8),
          expect.closeTo(length + a + c, 8),
        ]);
      },
    ),
  );
});

it('a sector has the area and the arcs of a ring, however few its chords', () => {
  fc.assert(
    fc.property(
      double(1, 60),
      double(1, 60),
      double(5, 180),
      fc.integer({ min: 1, max: 48 }),
      (inner, wide, angle, divisions) => {
        const outer = inner + wide;
        const heel = { center: spot(0, 0), radius: outer, from: 0, to: angle };
        const throat = { center: spot(0, 0), radius: inner, from: angle, to: 0 };
        const [heelSpots, throatSpots] = [arcSpots(heel, divisions), arcSpots(throat, divisions)];
        const end = [heelSpots.at(-1) ?? spot(0, 0), throatSpots[0] ?? spot(0, 0)];
        const heelSide: Side = { is: 'heel', spots: heelSpots, added: inches(0), arcs: [heel] };
        const one = piece(
          { is: 'start', spots: [spot(inner, 0), spot(outer, 0)], added: inches(0) },
          heelSide,
          { is: 'end', spots: end, added: inches(0) },
          { is: 'throat', spots: throatSpots, added: inches(0), arcs: [throat] },
        );
        const turn = (angle * Math.PI) / 180;
        expect(144 * netArea(one)).toBeCloseTo((turn * (outer ** 2 - inner ** 2)) / 2, 6);
        expect(sideLength(heelSide)).toBeCloseTo(turn * outer, 9);
        expect(blankSize(one).length).toBeCloseTo(angle < 90 ? outer * Math.sin(turn) : outer, 9);
      },
    ),
  );
});

it('a side of no length leaves no trace in the outline', () => {
  const corners = [spot(0, 0), spot(4, 0), spot(4, 3)];
  const [a, b, c] = [corners[0] ?? spot(0, 0), corners[1] ?? spot(0, 0), corners[2] ?? spot(0, 0)];
  const one = piece(
    { is: 'low', spots: [a, b], added: inches(1) },
    { is: 'nothing', spots: [b, b], added: inches(2) },
    { is: 'right', spots: [b, c], added: inches(0) },
    { is: 'slant', spots: [c, a], added: inches(0) },
  );
  expect(netOutline(one)).toEqual(corners);
  expect(cutOutline(one)).toEqual([spot(0, -1), spot(4, -1), b, c, a]);
});

it('a hollow arc tighter than its flange is wide keeps the flange up to its center, and no farther', () => {
  fc.assert(
    fc.property(double(0.001, 0.2), double(10, 170), (radius, angle) => {
      const throat = { center: spot(0, 0), radius, from: angle, to: 0 };
      const throatSpots = arcSpots(throat, 12);
      const [far, near] = [
        spot(12 * Math.cos((angle * Math.PI) / 180), 12 * Math.sin((angle * Math.PI) / 180)),
        spot(12, 0),
      ];
      const one = piece(
        { is: 'start', spots: [spot(radius, 0), near], added: inches(0) },
        { is: 'heel', spots: [near, far], added: inches(0) },
        { is: 'end', spots: [far, throatSpots[0] ?? far], added: inches(0) },
        { is: 'throat', spots: throatSpots, added: inches(0.25), arcs: [throat] },
      );
      const sector = 6 * radius ** 2 * Math.sin((angle * Math.PI) / 180 / 12);
      expect(areaWithin(cutOutline(one)) - areaWithin(netOutline(one))).toBeCloseTo(sector, 9);
    }),
  );
});

it('flanges of two short edges in an inward corner taper to it, where they would meet past their ends', () => {
  const corner = (added: number) =>
    piece(
      { is: 'low', spots: [spot(0, -1), spot(9, -1)], added: inches(0) },
      { is: 'outside', spots: [spot(9, -1), spot(9, 9), spot(-1, 9)], added: inches(0) },
      { is: 'end', spots: [spot(-1, 9), spot(-1, 0)], added: inches(0) },
      { is: 'throat', spots: [spot(-1, 0), spot(0, 0), spot(0, -1)], added: inches(added) },
    );
  expect(cutOutline(corner(0.25))).toContainEqual(spot(-0.25, -0.25));
  expect(cutOutline(corner(1.5))).toContainEqual(spot(0, 0));
});
