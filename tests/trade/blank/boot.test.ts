import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import {
  type Boot,
  type BootSizes,
  boot,
  bootCorner,
  bootCorners,
  bootMakes,
  bootMouth,
} from '../../../src/trade/blank/boot.ts';
import { divisionsOfCircle } from '../../../src/trade/blank/divisions.ts';
import { cutOutline, netArea, type Piece, sideLength } from '../../../src/trade/blank/piece.ts';
import type { SpacePoint } from '../../../src/trade/blank/unfold.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);
const anySizes: fc.Arbitrary<BootSizes> = fc
  .record({
    made: fc.constantFrom(...bootMakes),
    width: double(2, 60),
    depth: double(2, 60),
    diameter: double(2, 40),
    above: double(1, 60),
    reach: double(-40, 40),
    shift: double(-40, 40),
    turn: double(0, 90),
    divisions: fc.constantFrom(...divisionsOfCircle),
    stepped: fc.constantFrom('arcs' as const, 'chords' as const),
    squareEnd: double(0, 3),
    roundEnd: double(0, 3),
    seam: double(0, 3),
  })
  .map(({ above, ...sizes }) => ({
    ...sizes,
    height: inches(above + (sizes.diameter / 2) * Math.sin((sizes.turn * Math.PI) / 180)),
  }));

function made(sizes: BootSizes): Boot | null {
  const outcome = boot(sizes);
  if (!outcome.ok) expect(outcome.fault.code).toMatch(/^(too_few_divisions|pattern_over_itself)$/);
  return outcome.ok ? outcome.value : null;
}

const along = (one: Boot, is: string) => one.pieces.reduce((sum, piece) => sum + side(piece, is), 0);

function side(piece: Piece, is: string): number {
  const found = piece.sides.find((one) => one.is === is);
  if (!found) throw new Error(is);
  return sideLength(found);
}

function triangle(a: SpacePoint, b: SpacePoint, c: SpacePoint): number {
  const [u, v] = [b, c].map((to) => ({ x: to.x - a.x, y: to.y - a.y, z: to.z - a.z }));
  if (!u || !v) return Number.NaN;
  return Math.hypot(u.y * v.z - u.z * v.y, u.z * v.x - u.x * v.z, u.x * v.y - u.y * v.x) / 2;
}

it('the pattern goes once round the rectangle and, stepped off in arcs, once round the pipe', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const one = made(sizes);
      if (!one) return;
      expect(along(one, 'rectangular end')).toBeCloseTo(2 * (sizes.width + sizes.depth), 6);
      const girth = Math.PI * sizes.diameter;
      const chords = sizes.divisions * sizes.diameter * Math.sin(Math.PI / sizes.divisions);
      expect(along(one, 'round end')).toBeCloseTo(sizes.stepped === 'arcs' ? girth : chords, 6);
    }),
  );
});

it('edges that meet in a seam have one length', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const pieces = made(sizes)?.pieces ?? [];
      for (const [index, piece] of pieces.entries()) {
        const next = pieces[(index + 1) % pieces.length] ?? piece;
        expect(side(piece, 'right seam')).toBeCloseTo(side(next, 'left seam'), 6);
      }
    }),
  );
});

it('in chords it has the area of its triangles in the room', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const one = made({ ...sizes, stepped: 'chords' });
      const each = sizes.divisions / 4;
      const at = (mark: number) => bootMouth(sizes, (2 * Math.PI * mark) / sizes.divisions);
      const inRoom = bootCorners.reduce((sum, name, index) => {
        const corner = bootCorner(sizes, name);
        const next = bootCorner(sizes, bootCorners[(index + 1) % 4] ?? name);
        const first = (index - 1) * each;
        const fan = Array.from({ length: each }, (_, mark) =>
          triangle(corner, at(first + mark), at(first + mark + 1)),
        );
        return fan.reduce((all, area) => all + area, sum) + triangle(corner, next, at(first + each));
      }, 0);
      if (!one) return;
      const flat = one.pieces.reduce((sum, piece) => sum + 144 * netArea(piece), 0);
      expect(flat / inRoom).toBeCloseTo(1, 6);
    }),
  );
});

it('without a shift the two halves are mirror images', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const one = made({ ...sizes, made: 'two halves', shift: inches(0) });
      const [right, left] = one?.pieces ?? [];
      if (!right || !left) return;
      expect(side(right, 'left seam')).toBeCloseTo(side(left, 'right seam'), 6);
      expect(netArea(right)).toBeCloseTo(netArea(left), 6);
    }),
  );
});

it('a straight boot is a square to round: 12 × 12 in to 8 in, 8 in high, 12 parts', () => {
  const one = made({
    made: 'one piece',
    width: inches(12),
    depth: inches(12),
    diameter: inches(8),
    height: inches(8),
    reach: inches(0),
    shift: inches(0),
    turn: 0,
    divisions: 12,
    stepped: 'chords',
    squareEnd: inches(0),
    roundEnd: inches(0),
    seam: inches(0),
  });
  expect(one?.corners.map((corner) => corner.lines.map((line) => line.toFixed(4)))).toEqual(
    Array(4).fill(['10.1980', '9.2968', '9.2968', '10.1980']),
  );
  expect(144 * (one?.pieces ?? []).reduce((sum, piece) => sum + netArea(piece), 0)).toBeCloseTo(308.4395, 3);
});

it('a pipe that would dip into the plane of the rectangle is refused', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const least = (sizes.diameter / 2) * Math.sin((sizes.turn * Math.PI) / 180);
      expect(boot({ ...sizes, height: inches(least * 0.99) })).toMatchObject({
        ok: false,
        fault: { code: 'boot_too_low' },
      });
    }),
  );
});

it('every point of every cut outline is a number', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      for (const piece of made(sizes)?.pieces ?? []) {
        expect(cutOutline(piece).every((at) => Number.isFinite(at.across + at.up))).toBe(true);
      }
    }),
  );
});

it('a low, wide boot in one piece would run over itself; in halves it is laid out', () => {
  const low: Omit<BootSizes, 'made'> = {
    width: inches(12),
    depth: inches(12),
    diameter: inches(6),
    height: inches(1),
    reach: inches(0),
    shift: inches(0),
    turn: 0,
    divisions: 16,
    stepped: 'chords',
    squareEnd: inches(0.5),
    roundEnd: inches(0),
    seam: inches(1),
  };
  expect(boot({ ...low, made: 'one piece' })).toEqual({
    ok: false,
    fault: { code: 'pattern_over_itself', piece: 'boot' },
  });
  expect(boot({ ...low, made: 'two halves' }).ok).toBe(true);
});
