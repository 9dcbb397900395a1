import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { type Cone, type ConeSizes, cone } from '../../../src/trade/blank/cone.ts';
import { blankSize, netArea, netOutline, sideLength } from '../../../src/trade/blank/piece.ts';

const set = { numRuns: 300 };
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);
const bare = { pieces: 1, seam: inches(0), largeEnd: inches(0), smallEnd: inches(0) };

function made(sizes: ConeSizes): Cone {
  const outcome = cone(sizes);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

const anyCone = fc
  .record({
    firstDiameter: size(2, 120),
    secondDiameter: size(0, 120),
    height: size(1, 120),
    pieces: fc.integer({ min: 1, max: 12 }),
    seam: size(0, 3),
    largeEnd: size(0, 3),
    smallEnd: size(0, 3),
  })
  .filter(({ firstDiameter, secondDiameter }) => Math.abs(firstDiameter - secondDiameter) > 0.02);

function lengthOf({ piece }: Cone, name: string): number {
  const sides = piece.sides.filter((side) => side.is === name);
  return piece.pieces * sides.reduce((sum, side) => sum + sideLength(side), 0);
}

it('each mouth of the rolled sector is as far round as its end', () => {
  fc.assert(
    fc.property(anyCone, (sizes) => {
      const one = made(sizes);
      expect(lengthOf(one, 'large end') / (Math.PI * one.large)).toBeCloseTo(1, 9);
      expect(lengthOf(one, 'small end')).toBeCloseTo(Math.PI * one.small, 6);
    }),
    set,
  );
});

it('the edges that meet in a seam are as long as the slant', () => {
  fc.assert(
    fc.property(anyCone, (sizes) => {
      const one = made(sizes);
      for (const name of ['left seam', 'right seam'])
        expect(lengthOf(one, name) / one.piece.pieces / one.slant).toBeCloseTo(1, 7);
    }),
    set,
  );
});

it('every point of the curves, rolled back, lies on the cone', () => {
  const one = made({ ...bare, firstDiameter: inches(14), secondDiameter: inches(10), height: inches(12) });
  for (const at of netOutline(one.piece)) {
    const toTip = Math.hypot(at.across, at.up);
    // The half angle of the cone is the same all the way up.
    const radius = (toTip * (one.large / 2)) / one.outerRadius;
    expect([one.large / 2, one.small / 2].some((end) => Math.abs(end - radius) < 1e-9)).toBe(true);
  }
});

it('the area of the pieces is that of the frustum', () => {
  fc.assert(
    fc.property(anyCone, (sizes) => {
      const one = made(sizes);
      expect((netArea(one.piece) * one.piece.pieces) / one.area).toBeCloseTo(1, 5);
    }),
    set,
  );
});

it('a sector of more than half a circle is as wide as its circle', () => {
  const one = made({ ...bare, firstDiameter: inches(20), secondDiameter: inches(4), height: inches(3) });
  expect(one.angle).toBeGreaterThan(180);
  expect(blankSize(one.piece).width).toBeCloseTo(2 * one.outerRadius, 9);
});

it('it does not matter which end is named first', () => {
  const [a, b] = [inches(9), inches(16)];
  const rest = { ...bare, height: inches(11) };
  expect(made({ ...rest, firstDiameter: a, secondDiameter: b })).toEqual(
    made({ ...rest, firstDiameter: b, secondDiameter: a }),
  );
});

it('ends alike make a straight pipe, which is no cone', () => {
  expect(
    cone({ ...bare, firstDiameter: inches(8), secondDiameter: inches(8), height: inches(6) }),
  ).toMatchObject({ ok: false, fault: { code: 'no_taper', first: 8, second: 8 } });
});
