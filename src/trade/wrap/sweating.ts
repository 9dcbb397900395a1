import { done, failed, type Outcome } from '../../base/outcome.ts';
import {
  type Conductivity,
  type Fahrenheit,
  fahrenheit,
  type Inches,
  inches,
  type ThermalResistance,
  thermalResistance,
} from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import type { DuctSection } from '../section.ts';
import { dewPointOf } from './dew-point.ts';
import { thicknessForFace } from './layer.ts';

/** The most that water vapor may pass through the facing over a cooling duct, perm. IRC of 2018, M1601.4.6. */
export const mostPermeance = 0.05;

/** Temperatures in °F, R in h·ft²·°F/Btu. The inner film is 0 where one wants to be on the safe side. */
export interface DuctWall {
  readonly around: Fahrenheit;
  readonly inside: Fahrenheit;
  readonly outerFilm: ThermalResistance;
  readonly innerFilm: ThermalResistance;
}

/** How warm the outer face of the wrap is, and why. */
export interface OuterFace {
  readonly total: ThermalResistance;
  /** What of the whole difference falls across the outer film. */
  readonly share: number;
  readonly surface: Fahrenheit;
}

/** Temperature of the outer face of the wrap: films and wrap in series. Source: spiral-duct maker bulletin, turned round. */
export function surfaceTemperature(wall: DuctWall, r: ThermalResistance): OuterFace {
  const total = thermalResistance(wall.innerFilm + r + wall.outerFilm);
  const share = wall.outerFilm / total;
  return { total, share, surface: fahrenheit(wall.around - (wall.around - wall.inside) * share) };
}

export interface DryR {
  readonly dewPoint: Fahrenheit;
  /** Of dew point over duct air, and of surroundings over dew point. */
  readonly below: number;
  readonly above: number;
  /** True where duct air is no colder than the dew point: nothing can sweat. */
  readonly isNeverWet: boolean;
  /** The least R at which the face is as warm as the dew point; 0 where it is never colder. */
  readonly r: ThermalResistance;
}

/** R that keeps the outer face of cold duct at the dew point: any more and it is dry. Humidity is a share under 1: in
 *  saturated air no R is enough. Source: spiral-duct maker bulletin on condensation, with an inner film. */
export function dryR(wall: DuctWall, humidity: number): DryR {
  const { dewPoint } = dewPointOf(wall.around, humidity);
  const below = dewPoint - wall.inside;
  const above = wall.around - dewPoint;
  const isNeverWet = below <= 0;
  const r = isNeverWet ? 0 : Math.max(0, (wall.outerFilm * below) / above - wall.innerFilm);
  return { dewPoint, below, above, isNeverWet, r: thermalResistance(r) };
}

export interface DryThickness {
  readonly needed: DryR;
  /** What a flat face would take. */
  readonly flat: Inches;
  readonly thickness: Inches;
}

/** The thickest wrap and board that is sold. */
const thickest = 12;

/** Installed thickness (in) that keeps the outer face dry, with the conductivity that the wrap has on the duct. Round duct
 *  needs less than flat. Faults: `no_wrap_so_thick`. */
export function dryThickness(
  section: DuctSection,
  wall: DuctWall,
  humidity: number,
  k: Conductivity,
): Outcome<DryThickness, TradeFault> {
  const needed = dryR(wall, humidity);
  const flat = inches(k * needed.r);
  const thickness = section.shape === 'round' ? thicknessForFace(section.diameter, k, needed.r) : flat;
  return thickness > thickest
    ? failed({ code: 'no_wrap_so_thick', thickness, most: inches(thickest) })
    : done({ needed, flat, thickness });
}
