import {
  type Airflow,
  type BtuPerHour,
  btuPerHour,
  type Fahrenheit,
  type Feet,
  fahrenheit,
  type SquareFeet,
  squareFeet,
  type ThermalResistance,
} from '../../base/quantity.ts';
import type { Air } from './density.ts';
import { type AirSection, insidePerimeter } from './section.ts';

export interface DuctHeat {
  readonly surface: SquareFeet;
  /** Heat through the wall, Btu/(h·ft²·°F), both air films included. */
  readonly transmittance: number;
  /** Btu/h that the airflow carries for each degree. */
  readonly carried: number;
  /** The share of the difference to the surroundings that is left at the end. */
  readonly kept: number;
  readonly leaving: Fahrenheit;
  /** Into the air along the run; below zero where the air loses heat. */
  readonly gain: BtuPerHour;
}

/** Temperature (°F) at the end of an insulated run, by the exponential form: the air comes ever closer to its surroundings.
 *  Surface of the bare duct in sq ft, flat R as given. Source: energy balance; building-simulation engineering reference. */
export function leavingAir(
  entering: Fahrenheit,
  around: Fahrenheit,
  flow: Airflow,
  section: AirSection,
  length: Feet,
  insulation: ThermalResistance,
  films: ThermalResistance,
  air: Air,
  constant: number,
): DuctHeat {
  const surface = squareFeet((insidePerimeter(section) / 12) * length);
  const transmittance = 1 / (insulation + films);
  const carried = constant * air.relativeDensity * flow;
  const kept = Math.exp((-transmittance * surface) / carried);
  const leaving = fahrenheit(around + (entering - around) * kept);
  return { surface, transmittance, carried, kept, leaving, gain: btuPerHour(carried * (leaving - entering)) };
}
