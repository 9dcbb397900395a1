import { done, failed, type Outcome } from '../../base/outcome.ts';
import {
  type Feet,
  type FrictionRate,
  feet,
  frictionRate,
  type InchesOfWater,
  inchesOfWater,
} from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';

export interface AvailablePressure {
  readonly losses: InchesOfWater;
  readonly available: InchesOfWater;
}

/** What is left of the external static pressure for the duct. Fault: `no_pressure_left`. */
export function availablePressure(
  external: InchesOfWater,
  losses: readonly InchesOfWater[],
): Outcome<AvailablePressure, TradeFault> {
  const taken = inchesOfWater(losses.reduce((sum, loss) => sum + loss, 0));
  const available = inchesOfWater(external - taken);
  return available > 0
    ? done({ losses: taken, available })
    : failed({ code: 'no_pressure_left', external, losses: taken });
}

export interface DesignRate {
  readonly length: Feet;
  readonly rate: FrictionRate;
}

/** The friction rate that uses up an available pressure over the total effective length: `100 × ASP ÷ TEL`. */
export function designRate(available: InchesOfWater, measured: Feet, fittings: Feet): DesignRate {
  const length = feet(measured + fittings);
  return { length, rate: frictionRate((100 * available) / length) };
}
