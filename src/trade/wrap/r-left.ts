import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, type ThermalResistance, thermalResistance } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import type { DuctSection } from '../section.ts';
import { type CornerRule, geometryStretchOut } from './geometry.ts';
import { type ThicknessFromCut, thicknessFromCut } from './thickness.ts';

/** A wrap with the two R figures that its maker prints: out of the package, and at the installed thickness. */
export interface RatedWrap {
  readonly name: string;
  readonly thickness: Inches;
  readonly installed: Inches;
  readonly labelR: ThermalResistance;
  readonly installedR: ThermalResistance;
}

export interface RLeft {
  readonly thickness: ThicknessFromCut;
  /** `n` in R = label R · (t / T)^n, from the two printed figures. */
  readonly exponent: number;
  readonly r: ThermalResistance;
  /** Nothing is printed for less than the installed thickness: there the rule is carried on. */
  readonly isBelowRated: boolean;
  /** The shortest cut that keeps the installed R. */
  readonly leastCut: Inches;
}

/** R (flat, h·ft²·°F/Btu) of the wrap that a cut length really leaves on the duct: it falls with the thickness as a
 *  power, through the two figures that the maker prints. Faults: those of `thicknessFromCut`, `no_squeeze_figures`. */
export function rLeft(
  section: DuctSection,
  cut: Inches,
  wrap: RatedWrap,
  lap: Inches,
  corners: CornerRule,
): Outcome<RLeft, TradeFault> {
  const exponent = squeezeExponent(wrap);
  const left = thicknessFromCut(section, cut, wrap, lap, corners);
  if (!left.ok) return left;
  if (!exponent.ok) return exponent;
  const r = thermalResistance(wrap.labelR * (left.value.installed / wrap.thickness) ** exponent.value);
  return done({
    thickness: left.value,
    exponent: exponent.value,
    r,
    isBelowRated: left.value.installed < wrap.installed * (1 - 1e-9),
    leastCut: geometryStretchOut(section, wrap.installed, lap, corners).cut,
  });
}

/** How fast R falls as this wrap is squeezed. Faults: `no_squeeze_figures`. */
export function squeezeExponent(wrap: RatedWrap): Outcome<number, TradeFault> {
  const { labelR, installedR } = wrap;
  if (installedR >= labelR || wrap.installed >= wrap.thickness) {
    return failed({ code: 'no_squeeze_figures', wrap: wrap.name, labelR, installedR });
  }
  return done(Math.log(labelR / installedR) / Math.log(wrap.thickness / wrap.installed));
}
