import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { cone } from '../../../src/trade/blank/cone.ts';
import {
  type EccentricCone,
  type EccentricSizes,
  eccentricCone,
} from '../../../src/trade/blank/eccentric-cone.ts';
import { distance, netArea, sideLength } from '../../../src/trade/blank/piece.ts';

const set = { numRuns: 200 };
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);
const bare = { seam: inches(0), firstEnd: inches(0), secondEnd: inches(0) } as const;

const twelveToEight: EccentricSizes = {
  ...bare,
  firstDiameter: inches(12),
  secondDiameter: inches(8),
  height: inches(12),
  offset: inches(2),
  divisions: 24,
  stepped: 'arcs',
  pieces: 1,
  seamOn: 'short line',
};

const anySize: fc.Arbitrary<EccentricSizes> = fc.record({
  seam: fc.constant(inches(0)),
  firstEnd: fc.constant(inches(0)),
  secondEnd: fc.constant(inches(0)),
  firstDiameter: size(2, 80),
  secondDiameter: size(2, 80),
  height: size(4, 80),
  offset: size(0, 40),
  divisions: fc.constantFrom(16, 24, 48, 96),
  stepped: fc.constantFrom('arcs' as const, 'chords' as const),
  pieces: fc.constantFrom(1 as const, 2 as const),
  seamOn: fc.constantFrom('short line' as const, 'long line' as const),
});

function made(sizes: EccentricSizes): EccentricCone {
  const outcome = eccentricCone(sizes);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

function sidesOf({ piece }: EccentricCone) {
  const [first = 0, right = 0, second = 0, left = 0] = piece.sides.map(sideLength);
  return { first, right, second, left, area: 144 * netArea(piece) * piece.pieces, pieces: piece.pieces };
}

it('by arcs both mouths go once round; by chords they fall short as a polygon does', () => {
  fc.assert(
    fc.property(anySize, (sizes) => {
      const { first, second, pieces } = sidesOf(made(sizes));
      const part = Math.PI / sizes.divisions;
      const share = sizes.stepped === 'arcs' ? 1 : Math.sin(part) / part;
      expect((first * pieces) / (Math.PI * sizes.firstDiameter * share)).toBeCloseTo(1, 8);
      expect((second * pieces) / (Math.PI * sizes.secondDiameter * share)).toBeCloseTo(1, 8);
    }),
    set,
  );
});

it('every line across the flat keeps its true length, and so do both seams', () => {
  fc.assert(
    fc.property(anySize, (sizes) => {
      const one = made(sizes);
      const { left, right } = sidesOf(one);
      expect(left).toBeCloseTo(one.lines[0] ?? Number.NaN, 7);
      expect(right).toBeCloseTo(one.lines.at(-1) ?? Number.NaN, 7);
      if (sizes.pieces === 1) expect(left).toBeCloseTo(right, 7);
      const drawn = one.piece.lines.map((line) => distance(line.from, line.to));
      for (const [index, length] of drawn.entries()) expect(length).toBeCloseTo(one.lines[index + 1] ?? 0, 7);
    }),
    set,
  );
});

it('the seam lies on the shortest line or on the longest', () => {
  fc.assert(
    fc.property(anySize, (sizes) => {
      const short = made({ ...sizes, pieces: 1, seamOn: 'short line' }).lines;
      const long = made({ ...sizes, pieces: 1, seamOn: 'long line' }).lines;
      expect(short[0]).toBeCloseTo(Math.min(...short, ...long), 8);
      expect(long[0]).toBeCloseTo(Math.max(...short, ...long), 8);
    }),
    set,
  );
});

it('the two halves together are the whole', () => {
  fc.assert(
    fc.property(anySize, (sizes) => {
      const [whole, halves] = ([1, 2] as const).map((pieces) => sidesOf(made({ ...sizes, pieces })).area);
      expect(Number(whole) / Number(halves)).toBeCloseTo(1, 8);
    }),
    set,
  );
});

it('by chords the area is that of the flat panels in space', () => {
  fc.assert(
    fc.property(anySize, (sizes) => {
      const { area } = sidesOf(made({ ...sizes, stepped: 'chords' }));
      expect(area / areaInSpace(sizes)).toBeCloseTo(1, 7);
    }),
    set,
  );
});

it('on center it comes to the exact sector', () => {
  const sizes = { ...twelveToEight, offset: inches(0), divisions: 96 };
  const exact = cone({ ...sizes, pieces: 1, largeEnd: inches(0), smallEnd: inches(0) });
  const one = made(sizes);
  expect(exact.ok && one.turn / exact.value.angle).toBeCloseTo(1, 4);
  expect(exact.ok && netArea(one.piece) / exact.value.area).toBeCloseTo(1, 3);
});

it('a slanted pipe of one size is as wide across its lines as a pipe cut square', () => {
  const slanted = made({ ...twelveToEight, secondDiameter: inches(12), offset: inches(12) });
  expect(slanted.turn).toBeCloseTo(0, 6);
  expect(slanted.apex).toBeNull();
  for (const line of slanted.lines) expect(line).toBeCloseTo(Math.hypot(12, 12), 9);
});

it('an upright pipe of one size is a rectangle', () => {
  const { first, second, left, area } = sidesOf(
    made({ ...twelveToEight, secondDiameter: inches(12), offset: inches(0) }),
  );
  expect([first, second, left]).toEqual([
    expect.closeTo(12 * Math.PI, 8),
    expect.closeTo(12 * Math.PI, 8),
    expect.closeTo(12, 8),
  ]);
  expect(area).toBeCloseTo(144 * Math.PI, 6);
});

it('arcs and chords come to the same angle as the divisions grow', () => {
  const turn = (stepped: 'arcs' | 'chords') => made({ ...twelveToEight, stepped, divisions: 4096 }).turn;
  expect(turn('arcs')).toBeCloseTo(turn('chords'), 4);
  expect(made({ ...twelveToEight, divisions: 24 }).turn).toBeCloseTo(turn('arcs'), 1);
});

/** The panels by their four corners in space: each is flat, so half of the cross of its diagonals is its area. */
function areaInSpace({ firstDiameter, secondDiameter, height, offset, divisions }: EccentricSizes): number {
  const at = (diameter: number, middle: number, up: number, index: number) => {
    const turn = (2 * Math.PI * index) / divisions;
    return [middle + (diameter / 2) * Math.cos(turn), (diameter / 2) * Math.sin(turn), up] as const;
  };
  return Array.from({ length: divisions }, (_, index) => {
    const [a, b] = [at(firstDiameter, 0, 0, index), at(firstDiameter, 0, 0, index + 1)];
    const [c, d] = [at(secondDiameter, offset, height, index + 1), at(secondDiameter, offset, height, index)];
    const [ux, uy, uz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
    const [vx, vy, vz] = [d[0] - b[0], d[1] - b[1], d[2] - b[2]];
    return Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx) / 2;
  }).reduce((sum, one) => sum + one, 0);
}
