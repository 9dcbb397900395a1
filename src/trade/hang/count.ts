import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { wholeUp } from '../whole.ts';

/** What holds the two ends of a run: hangers of its own, or equipment, a trunk or a wall that carries the end. */
export const runEnds = ['both hang', 'one carried', 'both carried'] as const;
export type RunEnds = (typeof runEnds)[number];

export interface RunHangers {
  /** Equal parts into which the supports divide the run. */
  readonly bays: number;
  /** What one of them really measures. */
  readonly bay: Inches;
  /** On the straight, ends included where they hang. */
  readonly straight: number;
  readonly extra: number;
  readonly hangers: number;
}

const carriedEnds: Readonly<Record<RunEnds, number>> = {
  'both hang': 0,
  'one carried': 1,
  'both carried': 2,
};

/** Hangers of a straight run, never further apart than the spacing and spread evenly; with one more for each elbow and
 *  branch. In inches. Source: arithmetic; which ends are carried is for whoever hangs it to say. */
export function runHangers(length: Inches, spacing: Inches, ends: RunEnds, extra: number): RunHangers {
  const bays = Math.max(1, wholeUp(length / spacing));
  const straight = bays + 1 - carriedEnds[ends];
  return { bays, bay: inches(length / bays), straight, extra, hangers: straight + extra };
}

/** How far from the start of the run a hanger stands, counted from 1; a carried end is the start. In inches. Faults:
 *  `no_such_hanger`. */
export function hangerPlace(run: RunHangers, ends: RunEnds, number: number): Outcome<Inches, TradeFault> {
  if (number > run.straight) return failed({ code: 'no_such_hanger', number, hangers: run.straight });
  return done(inches(run.bay * (ends === 'both hang' ? number - 1 : number)));
}
