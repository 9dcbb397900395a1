import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { cutOutline, netArea, sideLength } from '../../../src/trade/blank/piece.ts';
import {
  sideways,
  type Transition,
  type TransitionPanel,
  type TransitionSizes,
  transition,
  upright,
} from '../../../src/trade/blank/transition.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);
const anySizes: fc.Arbitrary<TransitionSizes> = fc.record({
  firstWidth: double(2, 120),
  firstDepth: double(2, 120),
  secondWidth: double(2, 120),
  secondDepth: double(2, 120),
  length: double(1, 120),
  sideways: fc.constantFrom(...sideways),
  upright: fc.constantFrom(...upright),
  shiftAcross: double(-120, 120),
  shiftUp: double(-120, 120),
  firstNeck: double(0, 24),
  secondNeck: double(0, 24),
  pocket: double(0, 3),
  flange: double(0, 3),
});

function panel(made: Transition, name: TransitionPanel['name']): TransitionPanel {
  const found = made.panels.find((one) => one.name === name);
  if (!found) throw new Error(name);
  return found;
}

function side(made: Transition, name: TransitionPanel['name'], is: string): number {
  const found = panel(made, name).piece.sides.find((one) => one.is === is);
  if (!found) throw new Error(is);
  return sideLength(found);
}

type Place = readonly [number, number, number];

/** Where the corners of the two ends stand in the room: across, up, along. */
function cornersOf(sizes: TransitionSizes, made: Transition): readonly [readonly Place[], readonly Place[]] {
  const end = (width: number, depth: number, across: number, up: number, along: number): readonly Place[] =>
    [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ].map(([right = 0, high = 0]) => [across + (right * width) / 2, up + (high * depth) / 2, along]);
  return [
    end(sizes.firstWidth, sizes.firstDepth, 0, 0, 0),
    end(sizes.secondWidth, sizes.secondDepth, made.offset.across, made.offset.up, sizes.length),
  ];
}

/** Half the cross product of two sides: the area of a triangle in the room. */
function triangle(a: Place, b: Place, c: Place): number {
  const [u, v] = [a, a].map((from, index) =>
    (index === 0 ? b : c).map((one, axis) => one - (from[axis] ?? 0)),
  );
  const [x = 0, y = 0, z = 0] = u ?? [];
  const [p = 0, q = 0, r = 0] = v ?? [];
  return Math.hypot(y * r - z * q, z * p - x * r, x * q - y * p) / 2;
}

it('panels that meet at a corner have edges of one length', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const made = transition(sizes);
      const pairs = [
        ['top', 'left'],
        ['left', 'bottom'],
        ['bottom', 'right'],
        ['right', 'top'],
      ] as const;
      for (const [one, other] of pairs) {
        expect(side(made, one, 'left edge')).toBeCloseTo(side(made, other, 'right edge'), 7);
      }
    }),
  );
});

it('the panels together go once round each end', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const made = transition(sizes);
      const around = (is: string) => made.panels.reduce((sum, one) => sum + side(made, one.name, is), 0);
      expect(around('first end')).toBeCloseTo(2 * (sizes.firstWidth + sizes.firstDepth), 7);
      expect(around('second end')).toBeCloseTo(2 * (sizes.secondWidth + sizes.secondDepth), 7);
    }),
  );
});

it('each panel has the area of two triangles through its corners in the room', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const bare = { ...sizes, firstNeck: inches(0), secondNeck: inches(0) };
      const made = transition(bare);
      const [near, far] = cornersOf(bare, made);
      for (const [index, name] of (['bottom', 'right', 'top', 'left'] as const).entries()) {
        const [a, b] = [near[index], near[(index + 1) % 4]];
        const [c, d] = [far[(index + 1) % 4], far[index]];
        if (!a || !b || !c || !d) throw new Error('no corner');
        const inRoom = triangle(a, b, c) + triangle(a, c, d);
        expect((144 * netArea(panel(made, name).piece)) / inRoom).toBeCloseTo(1, 9);
      }
    }),
  );
});

it('a flush side lies flat: its panel is as long as the fitting', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const flat = { ...sizes, shiftAcross: inches(0), shiftUp: inches(0) };
      const made = transition({ ...flat, sideways: 'flush left', upright: 'flush top' });
      expect(panel(made, 'left').slant).toBeCloseTo(sizes.length, 9);
      expect(panel(made, 'top').slant).toBeCloseTo(sizes.length, 9);
    }),
  );
});

it('between ends of one size it is a straight duct', () => {
  fc.assert(
    fc.property(anySizes, ({ firstWidth, firstDepth, ...sizes }) => {
      const made = transition({
        ...sizes,
        firstWidth,
        firstDepth,
        secondWidth: firstWidth,
        secondDepth: firstDepth,
        shiftAcross: inches(0),
        shiftUp: inches(0),
      });
      expect(made.panels.map((one) => [one.slope, one.setIn])).toEqual(Array(4).fill([0, 0]));
    }),
  );
});

it('every point of every cut outline is a number', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      for (const { piece } of transition(sizes).panels) {
        const points = cutOutline(piece).flatMap((at) => [at.across, at.up]);
        expect(points.length).toBeGreaterThanOrEqual(8);
        expect(points.every(Number.isFinite)).toBe(true);
      }
    }),
  );
});
