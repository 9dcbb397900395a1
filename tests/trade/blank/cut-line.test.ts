import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { boot, bootMakes } from '../../../src/trade/blank/boot.ts';
import { stepped } from '../../../src/trade/blank/divisions.ts';
import { offset, offsetForms } from '../../../src/trade/blank/offset.ts';
import { areaWithin, cutOutline, netOutline, type Piece, type Spot } from '../../../src/trade/blank/piece.ts';
import { elbowForms, rectangularElbow } from '../../../src/trade/blank/rectangular-elbow.ts';
import { sideways, transition, upright } from '../../../src/trade/blank/transition.ts';

/** Sizes that a shop makes: edges and seams are small beside the sides that they stand on. */
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);
const neck = fc.constantFrom(0, 1, 2).map(inches);
const seams = { pocket: double(0, 1.25), flange: double(0, 0.5) };
const necks = { firstNeck: neck, secondNeck: neck };

const fittings: Readonly<Record<string, fc.Arbitrary<readonly Piece[]>>> = {
  transition: fc
    .record({
      firstWidth: double(4, 40),
      firstDepth: double(4, 40),
      secondWidth: double(4, 40),
      secondDepth: double(4, 40),
      length: double(6, 40),
      sideways: fc.constantFrom(...sideways),
      upright: fc.constantFrom(...upright),
      shiftAcross: double(-6, 6),
      shiftUp: double(-6, 6),
      ...necks,
      ...seams,
    })
    .map((sizes) => transition(sizes).panels.map((panel) => panel.piece)),
  elbow: fc
    .record({
      form: fc.constantFrom(...elbowForms),
      width: double(4, 40),
      depth: double(4, 20),
      angle: fc.double({ min: 5, max: 150, noNaN: true }),
      throatRadius: fc.oneof(fc.constantFrom(0, 0.1).map(inches), double(0.1, 30)),
      divisions: fc.constant(24),
      ...necks,
      ...seams,
    })
    .map((sizes) => {
      const outcome = rectangularElbow(sizes);
      return outcome.ok ? outcome.value.pieces : [];
    }),
  offset: fc
    .record({
      form: fc.constantFrom(...offsetForms),
      width: double(4, 30),
      depth: double(4, 20),
      shift: double(0.5, 30),
      length: double(6, 60),
      angle: fc.constant(null),
      divisions: fc.constant(12),
      ...necks,
      ...seams,
    })
    .map((sizes) => {
      const outcome = offset(sizes);
      return outcome.ok ? outcome.value.pieces : [];
    }),
  boot: fc
    .record({
      made: fc.constantFrom(...bootMakes),
      width: double(4, 20),
      depth: double(3, 12),
      diameter: double(4, 14),
      above: double(1, 10),
      reach: double(0, 12),
      shift: double(-3, 3),
      turn: fc.constantFrom(0, 45, 90),
      divisions: fc.constantFrom(16, 24),
      stepped: fc.constantFrom(...stepped),
      squareEnd: double(0, 0.5),
      roundEnd: double(0, 0.25),
      seam: double(0, 1),
    })
    .map(({ above, ...sizes }) => {
      const height = inches(above + (sizes.diameter / 2) * Math.sin((sizes.turn * Math.PI) / 180));
      const outcome = boot({ ...sizes, height });
      return outcome.ok ? outcome.value.pieces : [];
    }),
};

/** On which side of a line a point lies. */
function sideOf(from: Spot, to: Spot, at: Spot): number {
  return (to.across - from.across) * (at.up - from.up) - (to.up - from.up) * (at.across - from.across);
}

/** The first two lines of an outline that cross each other. */
function crossingIn(outline: readonly Spot[]): string | null {
  const lines = outline.map((from, index) => [from, outline[(index + 1) % outline.length] ?? from] as const);
  const slack = -1e-9;
  for (const [index, [a, b]] of lines.entries()) {
    for (const [other, [c, d]] of lines.entries()) {
      if (other <= index) continue;
      const across = sideOf(a, b, c) * sideOf(a, b, d) < slack && sideOf(c, d, a) * sideOf(c, d, b) < slack;
      if (across) return `${index} crosses ${other}`;
    }
  }
  return null;
}

it.each(Object.keys(fittings))(
  'no cut line of a %s crosses itself, and it goes round the net outline',
  (name) => {
    const pieces = fittings[name];
    if (!pieces) throw new Error(name);
    fc.assert(
      fc.property(pieces, (made) => {
        for (const piece of made) {
          const cut = cutOutline(piece);
          expect(crossingIn(cut), piece.name).toBeNull();
          expect(areaWithin(cut)).toBeGreaterThanOrEqual(areaWithin(netOutline(piece)) - 1e-6);
        }
      }),
      { numRuns: 200 },
    );
  },
);
