import { done, failed, type Outcome } from '../../base/outcome.ts';
import {
  type Airflow,
  type FeetPerMinute,
  feetPerMinute,
  type InchesOfWater,
  inchesOfWater,
  type SquareFeet,
} from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import type { Air } from './density.ts';

/** The velocity (fpm) whose pressure is one inch of water in standard air. Source: formula page on duct leakage; by the
 *  rule density × (V ÷ 1097)² it is 4005.7, by the pascals in an inch of water up to 4008.6. */
export const velocityAtOneInch = feetPerMinute(4005);

/** Mean velocity of an airflow through an opening: cfm over square feet. */
export function airVelocity(flow: Airflow, area: SquareFeet): FeetPerMinute {
  return feetPerMinute(flow / area);
}

/** Air in duct stays far below; the formulas, which take air as not squeezed, would go wrong above. */
export const mostVelocity = feetPerMinute(10_000);

/** The mean velocity, where it is one that air in duct can have. Fault: `air_too_fast`. */
export function ductVelocity(flow: Airflow, area: SquareFeet): Outcome<FeetPerMinute, TradeFault> {
  const velocity = airVelocity(flow, area);
  return velocity > mostVelocity
    ? failed({ code: 'air_too_fast', airflow: flow, velocity, most: mostVelocity })
    : done(velocity);
}

/** Velocity pressure: (V ÷ 4005)² times the density over that of standard air. */
export function velocityPressure(
  velocity: FeetPerMinute,
  air: Air,
  atOneInch: FeetPerMinute = velocityAtOneInch,
): InchesOfWater {
  return inchesOfWater((velocity / atOneInch) ** 2 * air.relativeDensity);
}

/** The velocity behind a velocity pressure: the rule turned round. */
export function velocityOfPressure(
  pressure: InchesOfWater,
  air: Air,
  atOneInch: FeetPerMinute = velocityAtOneInch,
): FeetPerMinute {
  return feetPerMinute(atOneInch * Math.sqrt(pressure / air.relativeDensity));
}
