import { done, failed, type Outcome } from '../../base/outcome.ts';
import {
  type Airflow,
  type Feet,
  type FrictionRate,
  frictionRate,
  type Inches,
  type Quantity,
} from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import type { Air } from './density.ts';
import { type Friction, roundFriction } from './friction.ts';

export const flexRules = ['equation', 'maker guide'] as const;
export type FlexRule = (typeof flexRules)[number];

/** What the makers' guide tells: 15 % doubles the friction, 30 % makes it four times. Quoted by trade pages. */
const makerGuide = [
  { percent: 0, factor: 1 },
  { percent: 15, factor: 2 },
  { percent: 30, factor: 4 },
] as const;

/** How much shorter flex is installed than fully stretched, as a share. Fault: `longer_than_stretched`. */
export function flexCompression(installed: Feet, stretched: Feet): Outcome<Quantity<'percent'>, TradeFault> {
  if (installed > stretched) return failed({ code: 'longer_than_stretched', installed, stretched });
  return done(((stretched - installed) / stretched) as Quantity<'percent'>); // a share of one length in another
}

/** What slack does to the friction of fully stretched flex: `1 + 0.58 × percent × e^(−0.126 × in)`, or the makers' guide
 *  at its own three points. Fault: `no_flex_row`. Source: handbook of fundamentals, duct design, eq. 22-23 (excerpt). */
export function compressionFactor(
  diameter: Inches,
  compression: number,
  rule: FlexRule,
): Outcome<number, TradeFault> {
  const percent = 100 * compression;
  if (rule === 'equation') return done(1 + 0.58 * percent * Math.exp(-0.126 * diameter));
  const row = makerGuide.find((one) => Math.abs(one.percent - percent) < 1e-9);
  return row
    ? done(row.factor)
    : failed({ code: 'no_flex_row', got: compression, rows: makerGuide.map((one) => one.percent / 100) });
}

export interface FlexFriction {
  readonly stretched: Friction;
  readonly factor: number;
  readonly rate: FrictionRate;
}

/** Friction rate (in. w.g. per 100 ft) of flexible duct. Faults: `no_flex_row`. */
export function flexFriction(
  flow: Airflow,
  diameter: Inches,
  compression: number,
  rule: FlexRule,
  roughness: Feet,
  air: Air,
): Outcome<FlexFriction, TradeFault> {
  const factor = compressionFactor(diameter, compression, rule);
  if (!factor.ok) return factor;
  const stretched = roundFriction(flow, diameter, roughness, air);
  return done({ stretched, factor: factor.value, rate: frictionRate(factor.value * stretched.rate) });
}
