import {
  type Fahrenheit,
  type Feet,
  fahrenheit,
  feet,
  type PoundsPerCubicFoot,
  poundsPerCubicFoot,
} from '../../base/quantity.ts';

/** Standard air: what friction charts and the constants 4005 and 1.08 are made for. */
export const standardDensity = poundsPerCubicFoot(0.075);
export const standardTemperature = fahrenheit(70);
export const seaLevel = feet(0);

/** From °F to degrees above absolute zero, as the sources of the density rule round it: 530 at 70 °F. */
const absolute = (temperature: Fahrenheit) => temperature + 460;

/** Kinematic viscosity of standard air, sq ft/s: the one that makes the Reynolds number 8.56 × in × fpm. */
export const standardViscosity = 1 / (12 * 60 * 8.56);

/** Sutherland's constant of air in degrees above absolute zero; from memory, not verified. */
const sutherland = 198.72;

export interface Air {
  readonly altitude: Feet;
  readonly temperature: Fahrenheit;
  /** Pressure of the air over that at sea level. */
  readonly pressureRatio: number;
  readonly density: PoundsPerCubicFoot;
  /** Density over that of standard air. */
  readonly relativeDensity: number;
  /** Kinematic viscosity in sq ft/s. */
  readonly viscosity: number;
}

/** Dry air inside a duct. Height takes off pressure only: the air in a duct is as warm as it is said to be. Altitude in
 *  feet, temperature in °F, density in lb/cu ft. Sources: gas law; pressure ratio checked with a psychrometric library. */
export function airAt(altitude: Feet, temperature: Fahrenheit): Air {
  const pressureRatio = pressureAt(altitude);
  const density = densityAt(pressureRatio, temperature);
  const relativeDensity = density / standardDensity;
  const viscosity = (standardViscosity * stickiness(temperature)) / relativeDensity;
  return { altitude, temperature, pressureRatio, density, relativeDensity, viscosity };
}

/** Pressure at an altitude over that at sea level. */
export function pressureAt(altitude: Feet): number {
  return (1 - 6.8754e-6 * altitude) ** 5.2559;
}

/** Density (lb/cu ft) by the gas law, from the pressure over that at sea level. */
export function densityAt(pressureRatio: number, temperature: Fahrenheit): PoundsPerCubicFoot {
  const cooling = absolute(standardTemperature) / absolute(temperature);
  return poundsPerCubicFoot(standardDensity * cooling * pressureRatio);
}

/** Dynamic viscosity over that at 70 °F. */
function stickiness(temperature: Fahrenheit): number {
  const [here, usual] = [absolute(temperature), absolute(standardTemperature)];
  return ((here / usual) ** 1.5 * (usual + sutherland)) / (here + sutherland);
}

export const standardAir: Air = airAt(seaLevel, standardTemperature);
