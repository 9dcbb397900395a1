import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Airflow, airflow, type InchesOfWater, type SquareFeet } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';

/** One inch of water, conventional, in pascals. */
export const pascalsPerInch = 249.08891;

/** How leakage grows with pressure, by the leakage class. Another rule (0.60) goes with the duct tester at 25 Pa. */
const classExponent = 0.65;

export interface ClassLeakage {
  /** cfm per 100 sq ft of duct surface. */
  readonly perHundred: Airflow;
  readonly leakage: Airflow;
}

/** What duct of a leakage class lets out: `F = class × P^0.65` for each 100 sq ft of its surface. Pressure in in. w.g.
 *  Source: leakage test manual, first edition, eq. 4-5, quoted with 10 CFR 434.403. */
export function classLeakage(
  leakageClass: number,
  pressure: InchesOfWater,
  surface: SquareFeet,
): ClassLeakage {
  const perHundred = leakageClass * pressure ** classExponent;
  return { perHundred: airflow(perHundred), leakage: airflow((perHundred * surface) / 100) };
}

export interface TestedClass {
  readonly perHundred: Airflow;
  readonly leakageClass: number;
}

/** The leakage class behind a test: the rule turned round. */
export function testedClass(leakage: Airflow, surface: SquareFeet, pressure: InchesOfWater): TestedClass {
  const perHundred = (100 * leakage) / surface;
  return { perHundred: airflow(perHundred), leakageClass: perHundred / pressure ** classExponent };
}

export const sealClasses = ['A', 'B', 'C', 'unsealed'] as const;
export type SealClass = (typeof sealClasses)[number];
export const leakageEditions = [1985, 2012] as const;
export type LeakageEdition = (typeof leakageEditions)[number];

const classTable: Readonly<
  Record<
    LeakageEdition,
    Readonly<Record<'rectangular' | 'round', Readonly<Partial<Record<SealClass, number>>>>>
  >
> = {
  1985: { rectangular: { A: 6, B: 12, C: 24, unsealed: 48 }, round: { A: 3, B: 6, C: 12 } },
  2012: { rectangular: { A: 4, B: 8, C: 16 }, round: { A: 2, B: 4, C: 8 } },
};

/** The leakage class that sealed metal duct is expected to keep, by edition of the leakage test manual. Fault:
 *  `no_leakage_class`. Sources: tables 4-1 and 5-1 as other documents repeat them. */
export function expectedClass(
  seal: SealClass,
  shape: 'round' | 'rectangular',
  edition: LeakageEdition,
): Outcome<number, TradeFault> {
  const found = classTable[edition][shape][seal];
  return found === undefined ? failed({ code: 'no_leakage_class', seal, shape, edition }) : done(found);
}

/** A leakage read at one pressure, brought to another: `Q × (P₂ ÷ P₁)^n`. Source: duct tester manual, n 0.60. */
export function leakageAt(
  leakage: Airflow,
  from: InchesOfWater,
  to: InchesOfWater,
  exponent: number,
): { readonly factor: number; readonly leakage: Airflow } {
  const factor = (to / from) ** exponent;
  return { factor, leakage: airflow(factor * leakage) };
}
