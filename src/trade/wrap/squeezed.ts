import { done, failed, type Outcome } from '../../base/outcome.ts';
import {
  type Conductivity,
  conductivity,
  type Inches,
  type PoundsPerCubicFoot,
  poundsPerCubicFoot,
  type ThermalResistance,
  thermalResistance,
} from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type RatedWrap, squeezeExponent } from './r-left.ts';

export const squeezeMethods = ['two figures', 'density'] as const;

/** `k = still + fibers ÷ density`, in Btu·in/(h·ft²·°F) and lb/cu ft. */
export interface DensityFit {
  readonly still: number;
  readonly perDensity: number;
}

/** Made for this project to 21 published points of glass-fiber wrap; the largest miss is 0.005. */
export const densityFit: DensityFit = { still: 0.1986, perDensity: 0.0725 };
/** The densities of those points. */
export const fittedDensities = { least: 0.75, most: 3 } as const;

/** Conductivity of glass-fiber wrap by its density. Faults: `past_the_fit`. */
export function conductivityByDensity(
  density: PoundsPerCubicFoot,
  fit: DensityFit = densityFit,
): Outcome<Conductivity, TradeFault> {
  const { least, most } = fittedDensities;
  if (density < least * (1 - 1e-9) || density > most * (1 + 1e-9)) {
    return failed({ code: 'past_the_fit', density, least, most });
  }
  return done(conductivity(fit.still + fit.perDensity / density));
}

export interface SqueezedByFigures {
  readonly from: 'two figures';
  readonly exponent: number;
  readonly r: ThermalResistance;
}

export interface SqueezedByDensity {
  readonly from: 'density';
  /** Of the squeezed wrap. */
  readonly density: PoundsPerCubicFoot;
  readonly k: Conductivity;
  readonly r: ThermalResistance;
}

/** R of wrap that is squeezed to a thickness, as a power through its own two R figures. Faults: `no_squeeze_figures`, and
 *  those of `mayBeSqueezed`. */
export function squeezedByFigures(wrap: RatedWrap, left: Inches): Outcome<SqueezedByFigures, TradeFault> {
  const allowed = mayBeSqueezed(wrap, left);
  if (!allowed.ok) return allowed;
  const exponent = squeezeExponent(wrap);
  if (!exponent.ok) return exponent;
  const r = thermalResistance(wrap.labelR * (left / wrap.thickness) ** exponent.value);
  return done({ from: 'two figures', exponent: exponent.value, r });
}

/** R of wrap that is squeezed to a thickness, by the density that it then has. Faults: `past_the_fit`, and those of
 *  `mayBeSqueezed`. Source: a fit to published points. */
export function squeezedByDensity(
  wrap: { readonly name: string; readonly thickness: Inches },
  left: Inches,
  density: PoundsPerCubicFoot,
  fit: DensityFit = densityFit,
): Outcome<SqueezedByDensity, TradeFault> {
  const allowed = mayBeSqueezed(wrap, left);
  if (!allowed.ok) return allowed;
  const squeezed = poundsPerCubicFoot((density * wrap.thickness) / left);
  const k = conductivityByDensity(squeezed, fit);
  if (!k.ok) return k;
  return done({ from: 'density', density: squeezed, k: k.value, r: thermalResistance(left / k.value) });
}

/** Faults: `left_over_thickness`, `left_under_half`: no R is published for wrap squeezed past half. */
function mayBeSqueezed(
  wrap: { readonly name: string; readonly thickness: Inches },
  left: Inches,
): Outcome<null, TradeFault> {
  const { name, thickness } = wrap;
  if (left > thickness) return failed({ code: 'left_over_thickness', wrap: name, left, thickness });
  if (left < (thickness / 2) * (1 - 1e-9))
    return failed({ code: 'left_under_half', wrap: name, left, thickness });
  return done(null);
}
