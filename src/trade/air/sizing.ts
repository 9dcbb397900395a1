import { done, failed, type Outcome } from '../../base/outcome.ts';
import {
  type Airflow,
  airflow,
  type Feet,
  type FeetPerMinute,
  type FrictionRate,
  type Inches,
  inches,
} from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { wholeUp } from '../whole.ts';
import { closeIn } from './close-in.ts';
import type { Air } from './density.ts';
import { compressionFactor } from './flex.ts';
import { ductFriction, type Friction, type RoundedBy, roundFriction } from './friction.ts';
import { type AirSection, huebscher } from './section.ts';

/** Far past any duct, so that the answer always lies between; the caller's own limits are tighter. */
const pastAnyDuct = inches(1e5);
const pastAnyAirflow = 1e9;

export interface SizingLimits {
  readonly rate: FrictionRate;
  /** Null: friction alone decides. */
  readonly mostVelocity: FeetPerMinute | null;
}

export interface RoundSize {
  /** The least diameter by friction alone. */
  readonly byFriction: Inches;
  /** The least diameter by velocity alone; null without a limit. */
  readonly byVelocity: Inches | null;
  /** The larger of the two. */
  readonly exact: Inches;
  /** Up to a whole step; the exact one where there is none. */
  readonly diameter: Inches;
  /** What slack does at that diameter: 1 for duct that has none. */
  readonly slackFactor: number;
  /** Friction at that diameter, slack left out. */
  readonly friction: Friction;
  readonly rate: FrictionRate;
}

/** The least round duct that keeps a friction rate, and a velocity if asked, in inches; `step` is the spacing of stocked
 *  sizes, 0 for none. `compression` is for flex, by the equation. Friction falls steadily with the diameter, so the
 *  least one is closed in on to the last digit. */
export function roundSize(
  flow: Airflow,
  limits: SizingLimits,
  roughness: Feet,
  air: Air,
  compression = 0,
  step = inches(0),
): RoundSize {
  const slackAt = (diameter: Inches) => {
    const factor = compressionFactor(diameter, compression, 'equation');
    return factor.ok ? factor.value : 1; // the equation holds for any figure
  };
  const rateAt = (diameter: Inches) => slackAt(diameter) * roundFriction(flow, diameter, roughness, air).rate;
  const byFriction = inches(
    closeIn(1e-3, pastAnyDuct, (diameter) => rateAt(inches(diameter)) <= limits.rate).above,
  );
  const byVelocity =
    limits.mostVelocity === null ? null : inches(Math.sqrt((576 * flow) / (Math.PI * limits.mostVelocity)));
  const exact = inches(Math.max(byFriction, byVelocity ?? 0));
  const diameter = step > 0 ? inches(step * wholeUp(exact / step)) : exact;
  const friction = roundFriction(flow, diameter, roughness, air);
  const slackFactor = slackAt(diameter);
  return {
    byFriction,
    byVelocity,
    exact,
    diameter,
    slackFactor,
    friction,
    rate: (slackFactor * friction.rate) as FrictionRate, // a rate times a plain number
  };
}

export interface Capacity {
  readonly airflow: Airflow;
  readonly friction: Friction;
}

/** The most air (cfm) that a duct carries without going past a friction rate. */
export function ductCapacity(
  section: AirSection,
  rate: FrictionRate,
  roughness: Feet,
  air: Air,
  by: RoundedBy = 'equal friction',
): Capacity {
  const isTooMuch = (flow: number) => ductFriction(airflow(flow), section, roughness, air, by).rate > rate;
  const most = airflow(closeIn(0, pastAnyAirflow, isTooMuch).below);
  return { airflow: most, friction: ductFriction(most, section, roughness, air, by) };
}

export const leastSide = inches(2);
export const mostSide = inches(120);

/** The width (in) of the rectangular duct of this depth that has the friction of a round one at the same airflow: Huebscher
 *  turned round. Faults: `width_not_duct` where it would be no duct that a shop makes. */
export function widthForDepth(diameter: Inches, depth: Inches): Outcome<Inches, TradeFault> {
  const width = inches(closeIn(0, pastAnyDuct, (width) => huebscher(inches(width), depth) >= diameter).above);
  const slip = 1e-9; // a side of just 2 in, worked back, may come out a hair under it
  return width < leastSide * (1 - slip) || width > mostSide * (1 + slip)
    ? failed({ code: 'width_not_duct', diameter, depth, width, least: leastSide, most: mostSide })
    : done(width);
}
