import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Airflow, airflow, type SquareFeet } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';

/** Model codes whose limits were read or are quoted; those that stand only in memory are not held. */
export const limitCodes = ['IECC 2009', 'IECC 2012', 'IECC 2015', 'IRC 2018'] as const;
export type LimitCode = (typeof limitCodes)[number];

export const testStages = ['rough-in', 'rough-in without air handler', 'finished', 'buried'] as const;
export type TestStage = (typeof testStages)[number];

export interface LeakageLimit {
  /** cfm at 25 Pa for each 100 sq ft of conditioned floor. */
  readonly perHundred: number;
  readonly limit: Airflow;
}

const since2012 = { 'rough-in': 4, 'rough-in without air handler': 3, finished: 4 } as const;

// Trade magazine (2009, 2012, 2015); IRC of 2018, N1103.3.4 and the rule on buried ducts, page 510.
const limits: Readonly<Record<LimitCode, Readonly<Partial<Record<TestStage, number>>>>> = {
  'IECC 2009': { 'rough-in': 6, 'rough-in without air handler': 4, finished: 12 },
  'IECC 2012': since2012,
  'IECC 2015': since2012,
  'IRC 2018': { ...since2012, buried: 1.5 },
};

/** The most total leakage that a code allows at 25 Pa (cfm), by conditioned floor area. Faults: `no_code_row`. */
export function leakageLimit(
  code: LimitCode,
  stage: TestStage,
  floor: SquareFeet,
): Outcome<LeakageLimit, TradeFault> {
  const perHundred = limits[code][stage];
  if (perHundred === undefined) {
    return failed({
      code: 'no_code_row',
      table: code,
      what: stageWords[stage],
      rows: Object.keys(limits[code]),
    });
  }
  return done({ perHundred, limit: airflow((perHundred * floor) / 100) });
}

const stageWords: Readonly<Record<TestStage, string>> = {
  'rough-in': 'a test at rough-in',
  'rough-in without air handler': 'a test at rough-in without the air handler',
  finished: 'a test of the finished system',
  buried: 'buried ducts that count as inside',
};
