import {
  type Airflow,
  type Feet,
  type FeetPerMinute,
  type FrictionRate,
  feetFromInches,
  frictionRate,
  type Inches,
  type InchesOfWater,
  type SquareFeet,
} from '../../base/quantity.ts';
import type { Air } from './density.ts';
import { type FactorMethod, frictionFactor, reynoldsNumber } from './friction-factor.ts';
import { type AirSection, equivalentDiameter, hydraulicDiameter, openArea } from './section.ts';
import { airVelocity, velocityPressure } from './velocity.ts';

/** How a duct that is not round is taken: as the round duct of equal friction at the full airflow, or by its hydraulic
 *  diameter and true velocity. */
export const roundedBy = ['equal friction', 'hydraulic'] as const;
export type RoundedBy = (typeof roundedBy)[number];

export interface Friction {
  readonly section: AirSection;
  /** What the friction is worked with: the duct's own diameter, or the one that stands for it. */
  readonly diameter: Inches;
  readonly area: SquareFeet;
  /** In the section that the diameter stands for; the true velocity of a round duct. */
  readonly velocity: FeetPerMinute;
  readonly reynolds: number;
  readonly relativeRoughness: number;
  readonly factor: number;
  readonly velocityPressure: InchesOfWater;
  readonly rate: FrictionRate;
}

/** Friction rate (in. w.g. per 100 ft) of straight duct by Darcy and Weisbach. Inside sizes in inches, airflow in cfm,
 *  roughness in feet. Sources: duct friction formula after the handbook; Colebrook for the factor. */
export function ductFriction(
  flow: Airflow,
  section: AirSection,
  roughness: Feet,
  air: Air,
  by: RoundedBy = 'equal friction',
  method: FactorMethod = 'colebrook',
): Friction {
  const isByHydraulic = by === 'hydraulic';
  const diameter = isByHydraulic ? hydraulicDiameter(section) : equivalentDiameter(section);
  const area = isByHydraulic ? openArea(section) : openArea({ shape: 'round', diameter });
  const velocity = airVelocity(flow, area);
  const reynolds = reynoldsNumber(diameter, velocity, air);
  const relativeRoughness = roughness / feetFromInches(diameter);
  const factor = frictionFactor(reynolds, relativeRoughness, method);
  const pressure = velocityPressure(velocity, air);
  const rate = frictionRate(factor * (1200 / diameter) * pressure);
  return {
    section,
    diameter,
    area,
    velocity,
    reynolds,
    relativeRoughness,
    factor,
    velocityPressure: pressure,
    rate,
  };
}

/** The same for a round duct. */
export function roundFriction(flow: Airflow, diameter: Inches, roughness: Feet, air: Air): Friction {
  return ductFriction(flow, { shape: 'round', diameter }, roughness, air);
}
