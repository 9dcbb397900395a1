import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { distance, type Piece, sideLength } from '../../../src/trade/blank/piece.ts';
import {
  ends,
  type SquareToRound,
  type SquareToRoundSizes,
  squareToRound,
} from '../../../src/trade/blank/square-to-round.ts';

const set = { numRuns: 150 };
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const size = (min: number, max: number) => double(min, max).map(inches);

function made(sizes: SquareToRoundSizes): SquareToRound {
  const outcome = squareToRound(sizes);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

const bare = { seam: inches(0), squareEnd: inches(0), roundEnd: inches(0) } as const;
const twelve: SquareToRoundSizes = {
  ...bare,
  width: inches(12),
  depth: inches(12),
  diameter: inches(8),
  height: inches(8),
  offsetAcross: inches(0),
  offsetBack: inches(0),
  divisions: 24,
  stepped: 'chords',
  pieces: 1,
  seamOn: 'front',
};

const anySize: fc.Arbitrary<SquareToRoundSizes> = fc.record({
  seam: fc.constant(inches(0)),
  squareEnd: fc.constant(inches(0)),
  roundEnd: fc.constant(inches(0)),
  width: size(2, 80),
  depth: size(2, 80),
  diameter: size(2, 80),
  height: size(2, 80),
  offsetAcross: size(-40, 40),
  offsetBack: size(-40, 40),
  divisions: fc.constantFrom(8, 12, 24, 48, 96),
  stepped: fc.constant('chords' as const),
  pieces: fc.constantFrom(1 as const, 2 as const, 4 as const),
  seamOn: fc.constantFrom(...ends),
});

function total(blanks: readonly Piece[], name: string): number {
  return blanks.reduce(
    (sum, blank) =>
      sum + blank.sides.filter((side) => side.is === name).reduce((all, side) => all + sideLength(side), 0),
    0,
  );
}

it('the rectangular mouth goes once round the duct, however it is divided', () => {
  fc.assert(
    fc.property(anySize, (sizes) => {
      const around = 2 * (sizes.width + sizes.depth);
      expect(total(made(sizes).blanks, 'rectangular end') / around).toBeCloseTo(1, 8);
    }),
    set,
  );
});

it('the round mouth goes once round the pipe by arcs, and by chords falls short as a polygon does', () => {
  fc.assert(
    fc.property(anySize, (sizes) => {
      const part = Math.PI / sizes.divisions;
      const girth = Math.PI * sizes.diameter;
      expect((total(made(sizes).blanks, 'round end') / girth) * (part / Math.sin(part))).toBeCloseTo(1, 8);
      const arcs = squareToRound({ ...sizes, stepped: 'arcs' });
      if (arcs.ok) expect(total(arcs.value.blanks, 'round end') / girth).toBeCloseTo(1, 8);
    }),
    set,
  );
});

it('edges that meet in a seam are equally long', () => {
  fc.assert(
    fc.property(anySize, (sizes) => {
      const { blanks } = made(sizes);
      const edges = (piece: Piece | undefined, name: string) => total(piece ? [piece] : [], name);
      for (const [index, blank] of blanks.entries()) {
        const next = blanks[(index + 1) % blanks.length];
        expect(edges(blank, 'right seam')).toBeCloseTo(edges(next, 'left seam'), 8);
      }
    }),
    set,
  );
});

it('its area does not hang on where the seams are or how many there are', () => {
  fc.assert(
    fc.property(anySize, fc.constantFrom(...ends), (sizes, seamOn) => {
      const whole = made({ ...sizes, pieces: 1 }).area;
      for (const pieces of [1, 2, 4] as const)
        expect(made({ ...sizes, pieces, seamOn }).area / whole).toBeCloseTo(1, 8);
    }),
    set,
  );
});

it('the area is that of the triangles in space', () => {
  fc.assert(
    fc.property(anySize, (sizes) => {
      expect((144 * made(sizes).area) / areaInSpace(sizes)).toBeCloseTo(1, 7);
    }),
    set,
  );
});

it('every line across the flat is as long as between its two points in space', () => {
  const { blanks, corners } = made({ ...twelve, pieces: 4 });
  for (const [index, blank] of blanks.entries()) {
    const lengths = blank.lines.map((line) => distance(line.from, line.to));
    const wanted = corners[index]?.lines ?? [];
    expect(lengths).toHaveLength(wanted.length);
    for (const [place, length] of lengths.entries()) expect(length).toBeCloseTo(wanted[place] ?? 0, 9);
  }
});

it('on center all four corners are alike, and shifted to one side they are alike in pairs', () => {
  const first = ({ corners }: SquareToRound) => corners.map((corner) => corner.turn);
  for (const turn of first(made(twelve))) expect(turn).toBeCloseTo(first(made(twelve))[0] ?? 0, 9);
  const [a, b, c, d] = first(made({ ...twelve, offsetAcross: inches(3) }));
  expect(a).toBeCloseTo(b ?? 0, 9);
  expect(c).toBeCloseTo(d ?? 0, 9);
  expect(Math.abs((a ?? 0) - (c ?? 0))).toBeGreaterThan(1);
});

it('turning the whole by a quarter changes nothing but the names', () => {
  fc.assert(
    fc.property(anySize, (sizes) => {
      const turned = {
        ...sizes,
        width: sizes.depth,
        depth: sizes.width,
        offsetAcross: inches(-sizes.offsetBack),
        offsetBack: sizes.offsetAcross,
      };
      expect(made(turned).area / made(sizes).area).toBeCloseTo(1, 9);
    }),
    set,
  );
});

it('more divisions come nearer to the smooth skin from below', () => {
  const areas = [8, 12, 24, 48, 96, 2000].map((divisions) => made({ ...twelve, divisions }).area);
  expect([...areas].sort((a, b) => a - b)).toEqual(areas);
});

it('a bend line stands on both sides of every flat triangle, and marks between them', () => {
  const [whole] = made(twelve).blanks;
  const kinds = whole?.lines.map((line) => line.is) ?? [];
  expect(kinds.filter((kind) => kind === 'bend')).toHaveLength(8);
  expect(kinds.filter((kind) => kind === 'mark')).toHaveLength(4 * 5);
});

it('arcs longer than the two lines beside them are refused; more divisions help, and so do chords', () => {
  // One corner stands all but on the middle of a part of the circle.
  const low: SquareToRoundSizes = {
    ...twelve,
    width: inches(60),
    depth: inches(60),
    diameter: inches(80),
    height: inches(1),
    offsetAcross: inches(15.86),
    offsetBack: inches(4.14),
    divisions: 8,
    stepped: 'arcs',
  };
  expect(squareToRound(low)).toEqual({ ok: false, fault: { code: 'too_few_divisions', got: 8 } });
  expect(squareToRound({ ...low, divisions: 96 }).ok).toBe(true);
  expect(squareToRound({ ...low, stepped: 'chords' }).ok).toBe(true);
});

/** Triangles by their corners in space, with no flat in between. */
function areaInSpace(sizes: SquareToRoundSizes): number {
  const [x, y, r] = [sizes.width / 2, sizes.depth / 2, sizes.diameter / 2];
  const corners = [
    [x, -y],
    [x, y],
    [-x, y],
    [-x, -y],
  ].map(([across = 0, back = 0]) => [across, back, 0] as const);
  const mark = (index: number) => {
    const turn = -Math.PI / 2 + (2 * Math.PI * index) / sizes.divisions;
    return [
      sizes.offsetAcross + r * Math.cos(turn),
      sizes.offsetBack + r * Math.sin(turn),
      sizes.height,
    ] as const;
  };
  const each = sizes.divisions / 4;
  return corners.reduce((sum, corner, index) => {
    const after = corners[(index + 1) % 4] ?? corner;
    const fan = Array.from({ length: each }, (_, place) =>
      triangle(corner, mark(index * each + place), mark(index * each + place + 1)),
    );
    return sum + triangle(corner, after, mark((index + 1) * each)) + fan.reduce((all, one) => all + one, 0);
  }, 0);
}

type Corner = readonly [number, number, number];

function triangle(a: Corner, b: Corner, c: Corner): number {
  const [u, v] = [b, c].map((to) => to.map((one, axis) => one - (a[axis] ?? 0)));
  const [ux = 0, uy = 0, uz = 0] = u ?? [];
  const [vx = 0, vy = 0, vz = 0] = v ?? [];
  return Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx) / 2;
}
