import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { areaWithin, blankSize, cutOutline, netArea, sideLength } from '../../../src/trade/blank/piece.ts';
import {
  type Opening,
  overlappingOpenings,
  type PlenumSizes,
  plenum,
  plenumMakes,
  plenumWalls,
} from '../../../src/trade/blank/plenum.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map(inches);
const anySizes: fc.Arbitrary<PlenumSizes> = fc.record({
  made: fc.constantFrom(...plenumMakes),
  width: double(2, 120),
  depth: double(2, 120),
  height: double(2, 120),
  pocket: double(0, 3),
  flange: double(0, 3),
  topEdge: double(0, 3),
  bottomEdge: double(0, 3),
  lidEdge: fc.oneof(fc.constant(null), double(0, 3)),
  openings: fc.constant([]),
});

function piecesOf(sizes: PlenumSizes) {
  const outcome = plenum(sizes);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

const box: PlenumSizes = {
  made: 'one piece',
  width: inches(20),
  depth: inches(24),
  height: inches(36),
  pocket: inches(1),
  flange: inches(0.25),
  topEdge: inches(0),
  bottomEdge: inches(1),
  lidEdge: inches(1),
  openings: [],
};

function opening(change: Partial<Opening>): Opening {
  return {
    name: 'run A',
    wall: 'front',
    width: inches(8),
    depth: null,
    across: inches(10),
    up: inches(20),
    ...change,
  };
}

it('the walls and the top together are the faces of a box', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const { width, depth, height, lidEdge } = sizes;
      const faces = 2 * (width + depth) * height + (lidEdge === null ? 0 : width * depth);
      const area = piecesOf(sizes).reduce((sum, piece) => sum + 144 * netArea(piece), 0);
      expect(area / faces).toBeCloseTo(1, 9);
    }),
  );
});

it('the top edges of the walls go once round the top', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const tops = piecesOf(sizes).flatMap((piece) => piece.sides.filter((side) => side.is.endsWith(' top')));
      expect(tops.map((side) => side.is).sort()).toEqual(['back top', 'front top', 'left top', 'right top']);
      const around = tops.reduce((sum, side) => sum + sideLength(side), 0);
      expect(around).toBeCloseTo(2 * (sizes.width + sizes.depth), 7);
    }),
  );
});

it('each upright seam has one pocket and one flange, and the blank is wide enough for both', () => {
  fc.assert(
    fc.property(anySizes, (sizes) => {
      const walls = piecesOf(sizes).filter((piece) => piece.name !== 'top');
      const across = walls.reduce((sum, piece) => sum + blankSize(piece).width, 0);
      const seams = walls.length * (sizes.pocket + sizes.flange);
      expect(across).toBeCloseTo(2 * (sizes.width + sizes.depth) + seams, 7);
    }),
  );
});

it('edges are notched where the seam strips begin', () => {
  const [walls] = piecesOf(box);
  if (!walls) throw new Error('no walls');
  expect(areaWithin(cutOutline(walls))).toBeCloseTo(88 * 36 + 88 + 36 * 1.25, 9);
});

it('an opening takes its own area out, wherever it lies', () => {
  fc.assert(
    fc.property(fc.constantFrom(...plenumWalls), double(1, 18), fc.boolean(), (wall, width, isRound) => {
      const depth = isRound ? null : inches(width / 2);
      const one = opening({ wall, width, depth, across: inches(10), up: inches(12) });
      const area = (openings: readonly Opening[]) =>
        piecesOf({ ...box, openings }).reduce((sum, piece) => sum + 144 * netArea(piece), 0);
      const taken = isRound ? (Math.PI * width ** 2) / 4 : width ** 2 / 2;
      expect(area([]) - area([one])).toBeCloseTo(taken, 6);
    }),
  );
});

it('an opening on the second wall is cut beyond the first bend', () => {
  const [walls] = piecesOf({ ...box, openings: [opening({ wall: 'right', across: inches(12) })] });
  const [cutout] = walls?.cutouts ?? [];
  const across = cutout?.outline.map((at) => at.across) ?? [];
  expect([Math.min(...across), Math.max(...across)]).toEqual([28, 36]);
});

it('an opening that reaches past its wall, or lies in a top that is not there, is refused', () => {
  const code = (sizes: PlenumSizes) => {
    const outcome = plenum(sizes);
    return outcome.ok ? 'done' : outcome.fault.code;
  };
  expect(code({ ...box, openings: [opening({ across: inches(3.9) })] })).toBe('opening_past_wall');
  expect(code({ ...box, openings: [opening({ up: inches(33) })] })).toBe('opening_past_wall');
  expect(code({ ...box, openings: [opening({ wall: 'top' })] })).toBe('done');
  expect(code({ ...box, lidEdge: null, openings: [opening({ wall: 'top' })] })).toBe('opening_past_wall');
});

it('openings that lie over each other are found, on one wall only', () => {
  const [one, near] = [opening({}), opening({ name: 'run B', up: inches(27) })];
  expect(overlappingOpenings([one, near])).toEqual([[one, near]]);
  expect(overlappingOpenings([one, { ...near, wall: 'back' }])).toEqual([]);
  expect(overlappingOpenings([one, { ...near, up: inches(28) }])).toEqual([]);
});
