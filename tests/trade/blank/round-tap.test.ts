import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { areaWithin, netArea, netOutline, sideLength } from '../../../src/trade/blank/piece.ts';
import {
  type RoundTap,
  type RoundTapSizes,
  roundTap,
  type TapEndSizes,
  tapEnd,
} from '../../../src/trade/blank/round-tap.ts';

const set = { numRuns: 150 };
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

function made(sizes: RoundTapSizes): RoundTap {
  const outcome = roundTap(sizes);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

/** Branch and off center as shares of what the trunk allows; now and then as large as the trunk. */
const anyTap = fc
  .record({
    trunk: double(4, 120),
    share: fc.oneof(double(0.1, 1), fc.constant(1)),
    aside: double(-1, 1),
    angle: double(15, 90),
    divisions: fc.constantFrom(8, 12, 24, 96),
  })
  .map(({ trunk, share, aside, angle, divisions }) => ({
    trunk: inches(trunk),
    branch: inches(trunk * share),
    angle,
    offset: inches((aside * (trunk - trunk * share)) / 2),
    divisions,
  }));

const bare: TapEndSizes = {
  shortest: inches(3),
  seamAt: 'throat',
  seam: inches(0),
  tabs: inches(0),
  end: inches(0),
};

const eightInTwelve: RoundTapSizes = {
  branch: inches(8),
  trunk: inches(12),
  angle: 90,
  offset: inches(0),
  divisions: 24,
};

it('every mark of the hole, rolled back round the trunk, lies on the branch', () => {
  fc.assert(
    fc.property(anyTap, (sizes) => {
      const [radius, lean] = [sizes.trunk / 2, (sizes.angle * Math.PI) / 180];
      for (const { along, around } of made(sizes).stations) {
        const [sideways, up] = [radius * Math.sin(around / radius), radius * Math.cos(around / radius)];
        // How far the point lies from the axis of the branch, in the plane of both axes and square to it.
        const across = along * Math.sin(lean) - up * Math.cos(lean);
        const off = Math.hypot(across, sideways - sizes.offset);
        expect(off / (sizes.branch / 2)).toBeCloseTo(1, 7);
      }
    }),
    set,
  );
});

it('the edge of the hole is as long as the curve of the branch that is fastened to it', () => {
  fc.assert(
    fc.property(anyTap, (sizes) => {
      const tap = made(sizes);
      const { piece } = tapEnd(sizes.branch, tap, bare);
      const curve = piece.sides.find((side) => side.is === 'at the trunk');
      const [hole] = tap.hole.sides;
      const [onTrunk, onBranch] = [hole, curve].map((side) => (side ? sideLength(side) : Number.NaN));
      expect(Number(onTrunk) / Number(onBranch)).toBeCloseTo(1, 2);
    }),
    set,
  );
});

it('the square end of the branch goes once round, and its two seams are alike', () => {
  fc.assert(
    fc.property(anyTap, fc.constantFrom('throat', 'heel'), (sizes, seamAt) => {
      const { piece, girth, ordinates } = tapEnd(sizes.branch, made(sizes), { ...bare, seamAt });
      const [end, right, , left] = piece.sides.map(sideLength);
      expect(end).toBeCloseTo(Math.PI * sizes.branch, 8);
      expect(girth).toBeCloseTo(Math.PI * sizes.branch, 8);
      expect(right).toBeCloseTo(Number(left), 8);
      expect(ordinates[0]).toBeCloseTo(ordinates.at(-1) ?? 0, 8);
    }),
    set,
  );
});

it('no line of the branch is shorter than the shortest, and the longest is longer by the saddle', () => {
  fc.assert(
    fc.property(anyTap, (sizes) => {
      const tap = made({ ...sizes, divisions: 96 });
      const { ordinates } = tapEnd(sizes.branch, tap, bare);
      expect(Math.min(...ordinates)).toBeGreaterThan(3 - 1e-9);
      expect(Math.max(...ordinates)).toBeLessThan(3 + tap.saddle + 1e-9);
    }),
    set,
  );
});

it('the area of the branch is that of a pipe along its axis, less what the trunk takes', () => {
  fc.assert(
    fc.property(anyTap, (sizes) => {
      const tap = made(sizes);
      const { piece, axis } = tapEnd(sizes.branch, tap, bare);
      // The lean adds as much on one side as it takes on the other; what is left is the height of the trunk under each line.
      const parts = 20000;
      const heights = Array.from({ length: parts }, (_, index) => {
        const sideways = sizes.offset + (sizes.branch / 2) * Math.sin((2 * Math.PI * (index + 0.5)) / parts);
        return Math.sqrt(Math.max(0, (sizes.trunk / 2) ** 2 - sideways ** 2));
      });
      const mean =
        heights.reduce((sum, one) => sum + one, 0) / parts / Math.sin((sizes.angle * Math.PI) / 180);
      expect((144 * netArea(piece)) / (Math.PI * sizes.branch * (axis - mean))).toBeCloseTo(1, 3);
    }),
    { ...set, numRuns: 40 },
  );
});

it('the area of a square hole agrees with the sum of its strips along the trunk', () => {
  const { hole } = made(eightInTwelve);
  const parts = 20000;
  const side = 4 / 6;
  const half = 6 * Math.asin(side);
  const strips = Array.from({ length: parts }, (_, index) => {
    const around = half * ((2 * (index + 0.5)) / parts - 1);
    return 2 * Math.sqrt(Math.max(0, 16 - (6 * Math.sin(around / 6)) ** 2));
  }).reduce((sum, one) => sum + one, 0);
  expect((144 * netArea(hole)) / ((strips * 2 * half) / parts)).toBeCloseTo(1, 3);
});

it('a branch as large as its trunk takes half of the way round it', () => {
  const { stations } = made({ ...eightInTwelve, branch: inches(12) });
  const around = stations.map((station) => station.around);
  expect(Math.max(...around) - Math.min(...around)).toBeCloseTo(6 * Math.PI, 9);
});

it('in a flat wall the hole is a circle, or an ellipse where the branch leans', () => {
  fc.assert(
    fc.property(double(2, 120), double(15, 90), (branch, angle) => {
      const { hole } = made({ ...eightInTwelve, branch: inches(branch), trunk: null, angle });
      const stretch = 1 / Math.sin((angle * Math.PI) / 180);
      expect((144 * netArea(hole)) / ((Math.PI * branch ** 2 * stretch) / 4)).toBeCloseTo(1, 3);
      for (const { across, up } of netOutline(hole))
        expect(Math.hypot(across, up / stretch)).toBeCloseTo(branch / 2, 8);
    }),
    set,
  );
});

it('a trunk grows towards a flat wall', () => {
  const round = made({ ...eightInTwelve, trunk: inches(1e6) }).hole;
  const flat = made({ ...eightInTwelve, trunk: null }).hole;
  expect(areaWithin(netOutline(round))).toBeCloseTo(areaWithin(netOutline(flat)), 5);
});

it('off center to the one side is the mirror of the other', () => {
  const [left, right] = [-1.5, 1.5].map((offset) =>
    made({ ...eightInTwelve, angle: 50, offset: inches(offset) }),
  );
  const mirrored = [...(left?.stations ?? [])].reverse();
  for (const [index, station] of (right?.stations ?? []).entries()) {
    expect(station.reach).toBeCloseTo(mirrored[index]?.reach ?? Number.NaN, 9);
    expect(station.around).toBeCloseTo(-(mirrored[index]?.around ?? Number.NaN), 9);
  }
});

it('a branch past the wall of its trunk is refused with both distances', () => {
  expect(roundTap({ ...eightInTwelve, offset: inches(-2.5) })).toMatchObject({
    ok: false,
    fault: { code: 'tap_past_the_trunk', reach: 6.5, trunkRadius: 6 },
  });
  expect(roundTap({ ...eightInTwelve, offset: inches(2) })).toMatchObject({ ok: true });
});
