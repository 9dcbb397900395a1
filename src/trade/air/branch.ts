import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Airflow, feetPerMinute, type Inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { coefficientOnVelocity } from './fitting.ts';

export const branchPassages = ['branch', 'straight'] as const;
export type BranchPassage = (typeof branchPassages)[number];

export interface BranchCoefficient {
  /** Branch airflow over that of the main before it. */
  readonly flowShare: number;
  /** Branch area over that of the main. */
  readonly areaShare: number;
  /** Branch velocity over that of the main. */
  readonly velocityShare: number;
  /** G of the branch, M of the straight passage. */
  readonly multiplier: number;
  /** On the velocity in the main before the branch. */
  readonly onMain: number;
  /** The same loss on the velocity in the branch. */
  readonly onBranch: number;
  /** Whether the air turns off as in a tee: steeply, into a branch of more than two thirds of the main. */
  readonly isTee: boolean;
  /** What the notes of the library make of it, on the main, where they say another thing than its code; else null. */
  readonly byNotes: number | null;
}

/** Loss coefficient where a round branch leaves a round main (supply side), for the air that goes off or goes on. Made for
 *  sharp pipe branches. Airflows in cfm before and in the branch, diameters in inches, angle in degrees. Faults:
 *  `branch_over_main`. Source: branch formula of an open fluid library, after an industry technical paper of 2009. */
export function branchCoefficient(
  main: { readonly airflow: Airflow; readonly diameter: Inches },
  branch: { readonly airflow: Airflow; readonly diameter: Inches; readonly angle: number },
  passage: BranchPassage,
): Outcome<BranchCoefficient, TradeFault> {
  if (branch.airflow > main.airflow) {
    return failed({ code: 'branch_over_main', what: 'airflow', branch: branch.airflow, main: main.airflow });
  }
  if (branch.diameter > main.diameter) {
    return failed({
      code: 'branch_over_main',
      what: 'diameter',
      branch: branch.diameter,
      main: main.diameter,
    });
  }
  const flowShare = branch.airflow / main.airflow;
  const areaShare = (branch.diameter / main.diameter) ** 2;
  const velocityShare = flowShare / areaShare;
  const sizeShare = branch.diameter / main.diameter;
  const isBranch = passage === 'branch';
  const isTee = isBranch && branch.angle >= 60 && sizeShare > 2 / 3;
  const isTeeByNotes = isBranch && branch.angle === 90 && sizeShare === 1;
  const multiplier = isBranch
    ? branchMultiplier(flowShare, areaShare, branch.angle)
    : straightMultiplier(flowShare, areaShare);
  const turned = (asTee: boolean) => multiplier * turning(velocityShare, branch.angle, asTee);
  const onMain = isBranch ? turned(isTee) : multiplier * flowShare ** 2;
  const byNotes = isTee === isTeeByNotes ? null : turned(isTeeByNotes);
  const onBranch = coefficientOnVelocity(onMain, feetPerMinute(1), feetPerMinute(velocityShare));
  return done({ flowShare, areaShare, velocityShare, multiplier, onMain, onBranch, isTee, byNotes });
}

const steep = 75;

function branchMultiplier(flowShare: number, areaShare: number, angle: number): number {
  if (angle >= steep) return areaShare <= 2 / 3 ? 1 : 1 + 0.3 * flowShare ** 2;
  if (areaShare <= 0.35) return flowShare <= 0.4 ? 1.1 - 0.7 * flowShare : 0.85;
  return flowShare <= 0.6 ? 1 - 0.6 * flowShare : 0.6;
}

function turning(velocityShare: number, angle: number, asTee: boolean): number {
  if (asTee) return 1 + 0.3 * velocityShare ** 2;
  return 1 + velocityShare ** 2 - 2 * velocityShare * Math.cos((angle * Math.PI) / 180);
}

function straightMultiplier(flowShare: number, areaShare: number): number {
  if (areaShare <= 0.4) return 0.4;
  return (flowShare <= 0.5 ? 2 : 0.3) * (2 * flowShare - 1);
}

/** Loss coefficient of a sudden enlargement, on the velocity in the small duct: `(1 − A₁/A₂)²`. Fault: `not_larger`.
 *  Source: momentum theory. */
export function enlargementCoefficient(small: Inches, large: Inches): Outcome<number, TradeFault> {
  if (large < small) return failed({ code: 'not_larger', small, large });
  return done((1 - (small / large) ** 2) ** 2);
}
