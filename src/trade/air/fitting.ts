import {
  type Feet,
  type FeetPerMinute,
  type FrictionRate,
  feet,
  type InchesOfWater,
  inchesOfWater,
} from '../../base/quantity.ts';
import type { Air } from './density.ts';
import { velocityPressure } from './velocity.ts';

export interface FittingLoss {
  readonly velocityPressure: InchesOfWater;
  readonly loss: InchesOfWater;
}

/** Total pressure that a fitting takes: its coefficient times the velocity pressure it belongs to. */
export function fittingLoss(coefficient: number, velocity: FeetPerMinute, air: Air): FittingLoss {
  const pressure = velocityPressure(velocity, air);
  return { velocityPressure: pressure, loss: inchesOfWater(coefficient * pressure + 0) }; // never minus zero
}

export interface EquivalentLength extends FittingLoss {
  readonly length: Feet;
}

/** The straight duct (ft) that takes as much as a fitting: `100 × C × VP ÷ friction rate`. */
export function equivalentLength(
  coefficient: number,
  velocity: FeetPerMinute,
  rate: FrictionRate,
  air: Air,
): EquivalentLength {
  const taken = fittingLoss(coefficient, velocity, air);
  return { ...taken, length: feet((100 * taken.loss) / rate) };
}

export interface LengthCoefficient extends FittingLoss {
  readonly coefficient: number;
}

/** The coefficient behind an equivalent length that was given for one velocity and friction rate. */
export function coefficientOfLength(
  length: Feet,
  velocity: FeetPerMinute,
  rate: FrictionRate,
  air: Air,
): LengthCoefficient {
  const pressure = velocityPressure(velocity, air);
  const loss = inchesOfWater((length * rate) / 100 + 0); // never minus zero
  return { velocityPressure: pressure, loss, coefficient: loss / pressure };
}

/** A coefficient brought from one velocity to another: the same loss on another velocity pressure. */
export function coefficientOnVelocity(coefficient: number, from: FeetPerMinute, to: FeetPerMinute): number {
  return coefficient * (from / to) ** 2;
}
