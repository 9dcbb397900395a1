import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { type GoredElbow, type GoredElbowSizes, goredElbow } from '../../../src/trade/blank/gore.ts';
import { blankSize, netArea, type Piece, sideLength } from '../../../src/trade/blank/piece.ts';

const set = { numRuns: 200 };
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);
const plain = {
  divisions: 12,
  seamAt: 'throat',
  seam: inches(0),
  singleEdge: inches(0),
  doubleEdge: inches(0),
  firstCollar: inches(0),
  lastCollar: inches(0),
} as const;
const eight: GoredElbowSizes = { ...plain, diameter: inches(8), radius: inches(12), angle: 90, pieces: 5 };

function made(sizes: GoredElbowSizes): GoredElbow {
  const outcome = goredElbow(sizes);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

const anyElbow = fc
  .record({
    diameter: size(2, 60),
    wider: size(0, 60),
    angle: fc.double({ min: 5, max: 180, noNaN: true }),
    pieces: fc.integer({ min: 3, max: 20 }),
    seamAt: fc.constantFrom('throat', 'heel'),
    firstCollar: size(0, 6),
    lastCollar: size(0, 6),
  })
  .map(({ wider, ...rest }) => ({ ...plain, ...rest, radius: inches(rest.diameter / 2 + wider) }));

const sideOf = (piece: Piece, name: string) => piece.sides.find((side) => side.is.startsWith(name));

it('each edge of a gore, rolled up, lies flat in the plane of its miter through the center of the turn', () => {
  fc.assert(
    fc.property(anyElbow, (sizes) => {
      const { ordinates, miter } = made(sizes);
      const slope = Math.tan((miter * Math.PI) / 180);
      for (const [index, ordinate] of ordinates.entries()) {
        const turn = (2 * Math.PI * index) / (ordinates.length - 1);
        const outward = (sizes.seamAt === 'throat' ? -1 : 1) * (sizes.diameter / 2) * Math.cos(turn);
        expect(ordinate).toBeCloseTo((sizes.radius + outward) * slope, 8);
      }
    }),
    set,
  );
});

it('edges that meet are equally long, and the straight ends go once round', () => {
  fc.assert(
    fc.property(anyElbow, (sizes) => {
      const { gores, girth } = made(sizes);
      const joints = gores.flatMap((gore) => gore.sides.filter((side) => side.is.startsWith('joint')));
      const lengths = joints.map(sideLength);
      for (const length of lengths) expect(length / (lengths[0] ?? 0)).toBeCloseTo(1, 9);
      for (const gore of gores.slice(0, 2)) {
        const end = sideOf(gore, 'straight end');
        expect(end && sideLength(end) / (Math.PI * sizes.diameter)).toBeCloseTo(1, 9);
      }
      expect(girth).toBeCloseTo(Math.PI * sizes.diameter, 9);
    }),
    set,
  );
});

it('the miter is an ellipse: its edge is as long as an ellipse of those axes', () => {
  const { gores, miter } = made({ ...eight, pieces: 2, angle: 90 });
  const [first] = gores;
  const edge = first && sideOf(first, 'joint');
  const [a, b] = [4 / Math.cos((miter * Math.PI) / 180), 4];
  // Once round an ellipse by its midpoint sum, which is exact to many digits for a smooth closed curve.
  const parts = 5000;
  const around = Array.from({ length: parts }, (_, index) => {
    const turn = (2 * Math.PI * (index + 0.5)) / parts;
    return Math.hypot(a * Math.sin(turn), b * Math.cos(turn));
  }).reduce((sum, one) => sum + one, 0);
  expect(edge && sideLength(edge)).toBeCloseTo((around * 2 * Math.PI) / parts, 2);
});

it('the gores together have the area of a pipe along the center line', () => {
  fc.assert(
    fc.property(anyElbow, (sizes) => {
      const { gores, surface, girth } = made(sizes);
      const collars = (girth * (sizes.firstCollar + sizes.lastCollar)) / 144;
      const all = gores.reduce((sum, gore) => sum + gore.pieces * netArea(gore), 0);
      expect(all / (surface + collars)).toBeCloseTo(1, 9);
    }),
    set,
  );
});

it('there are as many gores as pieces, and two of them are ends', () => {
  for (const pieces of [2, 3, 5, 20]) {
    const counts = made({ ...eight, pieces }).gores.map((gore) => gore.pieces);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(pieces);
    expect(counts.slice(0, 2)).toEqual([1, 1]);
  }
});

it('more gores come nearer to the smooth arc, and never under it', () => {
  const misses = [3, 4, 5, 8, 20].map((pieces) => {
    const { centerline, arc } = made({ ...eight, pieces });
    return centerline - arc;
  });
  expect([...misses].sort((a, b) => b - a)).toEqual(misses);
  expect(Math.min(...misses)).toBeGreaterThan(0);
});

it('a joint takes a single edge of one gore and a double edge of its mate', () => {
  const { gores } = made({ ...eight, singleEdge: inches(0.25), doubleEdge: inches(0.5) });
  expect(gores.map((gore) => gore.sides.map((side) => side.added))).toEqual([
    [0, 0, 0.25, 0],
    [0.5, 0, 0, 0],
    [0.5, 0, 0.25, 0],
  ]);
});

it('a collar lengthens its end and nothing else', () => {
  const lengths = (collar: number) =>
    made({ ...eight, firstCollar: inches(collar) }).gores.map((gore) => blankSize(gore).length);
  const [bare, collared] = [lengths(0), lengths(2)];
  expect(collared.map((length, index) => length - (bare[index] ?? 0))).toEqual([
    expect.closeTo(2, 9),
    expect.closeTo(0, 9),
    expect.closeTo(0, 9),
  ]);
});

it('a radius inside the duct and a joint past 90° are refused with what would do', () => {
  expect(goredElbow({ ...eight, radius: inches(3) })).toMatchObject({
    ok: false,
    fault: { code: 'radius_inside_elbow', least: 4 },
  });
  expect(goredElbow({ ...eight, angle: 135, pieces: 2 })).toMatchObject({
    ok: false,
    fault: { code: 'too_few_gores', least: 3 },
  });
  expect(goredElbow({ ...eight, angle: 180, pieces: 3 })).toMatchObject({ ok: true });
});
