import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { TradeFault } from '../fault.ts';

export const elbowMakes = ['smooth', '5 pieces', '4 pieces', '3 pieces'] as const;
export type ElbowMake = (typeof elbowMakes)[number];

/** Radius of the middle line over the diameter. */
export const elbowRatios = [0.5, 0.75, 1, 1.5, 2, 2.5] as const;
export type ElbowRatio = (typeof elbowRatios)[number];

export const elbowAngles = [20, 30, 45, 60, 75, 90, 110, 130, 150, 180] as const;
export type ElbowAngle = (typeof elbowAngles)[number];

/** Round elbows of 90°. Source: duct design manual of the contractors association, 4th ed., table A-7 A and B. */
const rightAngled: Readonly<Record<ElbowMake, Readonly<Partial<Record<ElbowRatio, number>>>>> = {
  smooth: { 0.5: 0.71, 0.75: 0.33, 1: 0.22, 1.5: 0.15, 2: 0.13, 2.5: 0.12 },
  '5 pieces': { 0.75: 0.46, 1: 0.33, 1.5: 0.24, 2: 0.19 },
  '4 pieces': { 0.75: 0.5, 1: 0.37, 1.5: 0.27, 2: 0.24 },
  '3 pieces': { 0.5: 0.98, 0.75: 0.54, 1: 0.42, 1.5: 0.34, 2: 0.33 },
};

/** What another angle than 90° makes of it. Source: same table, note 1. */
const angleFactors: Readonly<Record<ElbowAngle, number>> = {
  20: 0.31,
  30: 0.45,
  45: 0.6,
  60: 0.78,
  75: 0.9,
  90: 1,
  110: 1.13,
  130: 1.2,
  150: 1.28,
  180: 1.4,
};

export interface ElbowCoefficient {
  readonly rightAngled: number;
  readonly angleFactor: number;
  readonly coefficient: number;
}

/** Loss coefficient of a round elbow, on its own velocity. Rows of the table only. Fault: `no_elbow_row`. */
export function elbowCoefficient(
  make: ElbowMake,
  ratio: ElbowRatio,
  angle: ElbowAngle,
): Outcome<ElbowCoefficient, TradeFault> {
  const row = rightAngled[make];
  const found = row[ratio];
  if (found === undefined) {
    const ratios = elbowRatios.filter((one) => row[one] !== undefined);
    return failed({ code: 'no_elbow_row', make, got: ratio, ratios });
  }
  const angleFactor = angleFactors[angle];
  return done({ rightAngled: found, angleFactor, coefficient: found * angleFactor });
}

export const miterAngles = [20, 30, 45, 60, 75, 90] as const;
export type MiterAngle = (typeof miterAngles)[number];

/** One-cut elbows of round duct. Source: same manual, table A-7 C. */
const mitered: Readonly<Record<MiterAngle, number>> = {
  20: 0.08,
  30: 0.16,
  45: 0.34,
  60: 0.55,
  75: 0.81,
  90: 1.2,
};

/** What slower air makes of it, by Reynolds number. Source: same table, note 2. */
const reynoldsFactors = [
  { reynolds: 1e4, factor: 1.4 },
  { reynolds: 2e4, factor: 1.26 },
  { reynolds: 3e4, factor: 1.19 },
  { reynolds: 4e4, factor: 1.14 },
  { reynolds: 6e4, factor: 1.09 },
  { reynolds: 8e4, factor: 1.06 },
  { reynolds: 1e5, factor: 1.04 },
  { reynolds: 1.4e5, factor: 1 },
] as const;

/** The Reynolds number at which the factors begin. */
export const leastMiterReynolds = reynoldsFactors[0].reynolds;

export interface MiterCoefficient {
  readonly plain: number;
  readonly reynoldsFactor: number;
  readonly coefficient: number;
}

/** Loss coefficient of a mitered round elbow without vanes, on its own velocity. Re from 10,000 up; the factor goes
 *  straight from row to row, and is 1 past the last. */
export function miterCoefficient(angle: MiterAngle, reynolds: number): MiterCoefficient {
  const plain = mitered[angle];
  const reynoldsFactor = factorAt(reynolds);
  return { plain, reynoldsFactor, coefficient: plain * reynoldsFactor };
}

function factorAt(reynolds: number): number {
  const next = reynoldsFactors.findIndex((row) => row.reynolds >= reynolds);
  const [low, high] = [reynoldsFactors[next - 1], reynoldsFactors[next]];
  if (high === undefined) return 1;
  if (low === undefined) return high.factor;
  const share = (reynolds - low.reynolds) / (high.reynolds - low.reynolds);
  return low.factor + share * (high.factor - low.factor);
}
