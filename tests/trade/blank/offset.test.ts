import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { type Offset, type OffsetSizes, offset, offsetForms } from '../../../src/trade/blank/offset.ts';
import { cutOutline, netArea, type Piece, sideLength } from '../../../src/trade/blank/piece.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);
const anySizes: fc.Arbitrary<OffsetSizes> = fc.record({
  form: fc.constantFrom(...offsetForms),
  width: double(2, 120),
  depth: double(2, 120),
  shift: double(0.25, 120),
  length: double(1, 240),
  angle: fc.constant(null),
  firstNeck: double(0, 24),
  secondNeck: double(0, 24),
  pocket: double(0, 3),
  flange: double(0, 3),
  divisions: fc.integer({ min: 4, max: 48 }),
});

/** Sizes that can be made; a tight ogee cannot. */
function made(sizes: OffsetSizes): Offset | null {
  const outcome = offset(sizes);
  if (!outcome.ok) expect(outcome.fault.code).toBe('offset_too_tight');
  return outcome.ok ? outcome.value : null;
}

function part(of: Offset, number: number): Piece {
  const found = of.pieces.find((piece) => piece.part === number);
  if (!found) throw new Error(`no part ${number}`);
  return found;
}

function side(piece: Piece, is: string): number {
  const found = piece.sides.find((one) => one.is === is);
  if (!found) throw new Error(is);
  return sideLength(found);
}

it('each side is as long as the edge of the cheek that it meets', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const one = made(sizes);
      if (!one) return;
      for (const [number, name] of [
        [2, 'near side'],
        [3, 'far side'],
      ] as const) {
        expect(side(part(one, number), 'cheek edge')).toBeCloseTo(side(part(one, 1), name), 6);
      }
      expect(side(part(one, 1), 'first end')).toBeCloseTo(sizes.width, 7);
      expect(side(part(one, 1), 'second end')).toBeCloseTo(sizes.width, 7);
    }),
  );
});

it('a cheek has the area of its centerline times the clear width', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const one = made(sizes);
      if (!one) return;
      const corners = sizes.form === 'angled' ? sizes.width * Math.tan((one.turn * Math.PI) / 360) : 0;
      const straight = sizes.firstNeck + sizes.secondNeck + corners;
      const area = sizes.width * (straight + one.travel * one.throughShare);
      expect((144 * netArea(part(one, 1))) / area).toBeCloseTo(1, 8);
    }),
  );
});

it('an angled offset comes to the same by its angle as by the length that follows from it', () => {
  fc.assert(
    fc.property(anySizes, fc.double({ min: 5, max: 85, noNaN: true }), (sizes, angle) => {
      const byAngle = made({ ...sizes, form: 'angled', length: null, angle });
      const byLength = made({ ...sizes, form: 'angled', length: byAngle?.run ?? null });
      expect(byLength?.turn).toBeCloseTo(angle, 7);
      expect(byLength?.travel).toBeCloseTo(byAngle?.travel ?? Number.NaN, 7);
    }),
  );
});

it('an ogee is refused only where its inner arc has no radius left, and the least length will do', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const outcome = offset({ ...sizes, form: 'ogee' });
      if (outcome.ok) {
        expect((outcome.value.radius ?? 0) * 2).toBeGreaterThanOrEqual(sizes.width);
        return;
      }
      if (outcome.fault.code !== 'offset_too_tight') throw new Error(outcome.fault.code);
      const longer = inches(outcome.fault.least + 1e-6);
      expect(outcome.fault.least).toBeGreaterThan(sizes.length ?? Number.NaN);
      expect(offset({ ...sizes, form: 'ogee', length: longer }).ok).toBe(true);
    }),
  );
});

it('an angle with an ogee, both an angle and a length, and neither are refused', () => {
  const sizes: OffsetSizes = {
    form: 'angled',
    width: inches(12),
    depth: inches(8),
    shift: inches(6),
    length: inches(24),
    angle: 30,
    firstNeck: inches(1),
    secondNeck: inches(1),
    pocket: inches(1),
    flange: inches(0.25),
    divisions: 12,
  };
  const codes = [sizes, { ...sizes, form: 'ogee' as const }, { ...sizes, length: null, angle: null }].map(
    (one) => {
      const outcome = offset(one);
      return outcome.ok ? 'done' : outcome.fault.code;
    },
  );
  expect(codes).toEqual(['offset_has_both', 'offset_has_angle', 'offset_needs']);
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
