import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { feet, inches } from '../../../src/base/quantity.ts';
import { facingTape } from '../../../src/trade/seal/facing.ts';
import { jointSeal } from '../../../src/trade/seal/joint.ts';
import { tapeRolls } from '../../../src/trade/seal/rolls.ts';
import { jointScrews } from '../../../src/trade/seal/screws.ts';
import { seamStaples } from '../../../src/trade/seal/staples.ts';
import { saddleLength, tapSeal } from '../../../src/trade/seal/tap.ts';
import type { DuctSection } from '../../../src/trade/section.ts';

const round = (diameter: number): DuctSection => ({ shape: 'round', diameter: inches(diameter) });
const rectangular = (width: number, depth: number): DuctSection => ({
  shape: 'rectangular',
  width: inches(width),
  depth: inches(depth),
});
const onRound = (diameter: number) => ({ type: 'round', diameter: inches(diameter) }) as const;
const set = { numRuns: 200 };

describe('a joint is sealed once round the metal', () => {
  test('four joints of a 12 in pipe take 4 × π × 12 in', () => {
    expect(jointSeal(round(12), 4).length).toBeCloseTo(150.796, 3);
  });
  test('a rectangular joint takes both widths and both depths', () => {
    expect(jointSeal(rectangular(20, 8), 1).length).toBe(56);
  });
});

describe('a tap has two seams', () => {
  const length = (branch: DuctSection, trunk: Parameters<typeof tapSeal>[1]) => {
    const seal = tapSeal(branch, trunk);
    if (!seal.ok) throw new Error(seal.fault.code);
    return seal.value;
  };

  test('on a flat side both are once round the branch', () => {
    const seal = length(round(8), { type: 'flat' });
    expect(seal.atTrunk).toBe(seal.atBranch);
    expect(seal.length).toBeCloseTo(2 * Math.PI * 8, 12);
  });

  test('a branch as wide as its trunk meets it in two half ellipses at 45°', () => {
    // Each half is cut by a plane at 45°: an ellipse with half axes r and √2 r, whose circumference is 4 √2 r E(1/√2).
    const radius = 5;
    const ellipse = 4 * Math.SQRT2 * radius * completeElliptic(Math.SQRT1_2);
    expect(saddleLength(inches(10), inches(10))).toBeCloseTo(ellipse, 6);
  });

  test('the wider the trunk, the nearer the seam comes to once round the branch, from above', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 30, noNaN: true }),
        fc.double({ min: 1.001, max: 20, noNaN: true }),
        (d, k) => {
          const near = saddleLength(inches(d), inches(d * k * 2));
          const wide = saddleLength(inches(d), inches(d * k));
          expect(near).toBeGreaterThan(Math.PI * d * (1 - 1e-12));
          expect(wide).toBeGreaterThan(near);
        },
      ),
      set,
    );
    expect(saddleLength(inches(8), inches(8000))).toBeCloseTo(Math.PI * 8, 4);
  });

  test('a rectangular branch follows the curve of the trunk with its two cross sides', () => {
    const seal = length(rectangular(12, 8), onRound(16));
    expect(seal.atTrunk).toBeCloseTo(2 * (12 + 16 * Math.asin(0.5)), 12);
  });

  test('a branch wider than its trunk is refused', () => {
    expect(tapSeal(round(12), onRound(10))).toMatchObject({
      ok: false,
      fault: { code: 'tap_wider_than_trunk', across: 12, trunk: 10 },
    });
  });
});

describe('facing tape runs along the seam and round the rings', () => {
  test('20 ft of 12 in pipe in 1 1/2 in wrap from a 48 in roll takes 34.92 ft', () => {
    const tape = facingTape(round(12), inches(240), inches(1.125), inches(48), 0);
    expect(tape).toMatchObject({ strips: 5, rings: 4 });
    expect(tape.length / 12).toBeCloseTo(34.92, 2);
  });
  test('a run within one roll width has no ring but those at closed ends', () => {
    expect(facingTape(round(12), inches(48), inches(1), inches(48), 0).rings).toBe(0);
    expect(facingTape(round(12), inches(48), inches(1), inches(48), 2).rings).toBe(2);
  });
});

describe('rolls are whole', () => {
  test('exactly one roll is one roll, a hair more is two', () => {
    expect(tapeRolls(inches(1800), feet(150), 0).rolls).toBe(1);
    expect(tapeRolls(inches(1800.01), feet(150), 0).rolls).toBe(2);
    expect(tapeRolls(inches(0), feet(150), 0.1).rolls).toBe(0);
  });
  test('waste is a share of the length', () => {
    expect(tapeRolls(inches(1700), feet(150), 0.1)).toMatchObject({ rolls: 2 });
  });
});

describe('screws hold a joint', () => {
  test('a 20 in pipe at 12 in needs 6', () => {
    expect(jointScrews(round(20), inches(12), 1).screws).toBe(6);
  });
  test('a small pipe gets 3 all the same', () => {
    expect(jointScrews(round(6), inches(12), 2)).toMatchObject({ perJoint: 3, screws: 6 });
  });
  test('each side of a rectangular joint gets at least 2', () => {
    expect(jointScrews(rectangular(30, 8), inches(12), 1).parts.map((part) => part.screws)).toEqual([
      3, 2, 3, 2,
    ]);
  });
});

test('a 48 in seam takes 48 staples 1 in apart, and 8 staples 6 in apart', () => {
  expect(seamStaples(inches(48), inches(1)).staples).toBe(48);
  expect(seamStaples(inches(48), inches(6)).staples).toBe(8);
  expect(seamStaples(inches(49), inches(6)).staples).toBe(9);
});

/** Complete elliptic integral of the second kind by the arithmetic-geometric mean, an independent way to the length. */
function completeElliptic(modulus: number): number {
  let [a, g, taken, weight] = [1, Math.sqrt(1 - modulus ** 2), modulus ** 2 / 2, 1];
  while (Math.abs(a - g) > 1e-15) {
    const half = (a - g) / 2;
    [a, g] = [(a + g) / 2, Math.sqrt(a * g)];
    taken += weight * half ** 2;
    weight *= 2;
  }
  return (Math.PI / (2 * a)) * (1 - taken);
}
