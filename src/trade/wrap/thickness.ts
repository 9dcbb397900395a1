import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type DuctSection, perimeter } from '../section.ts';
import { type CornerRule, perThickness } from './geometry.ts';
import { installedOverThickness } from './stretch-out.ts';

export interface ThicknessFromCut {
  readonly perimeter: Inches;
  /** What the cut leaves for the thickness, lap taken off. */
  readonly forThickness: Inches;
  readonly perThickness: number;
  /** The thickness that would fill the cut exactly. */
  readonly fills: Inches;
  /** The thickness that is really there: never more than the wrap's own. */
  readonly installed: Inches;
  /** How much longer the cut is than the full thickness needs; 0 when the wrap is snug or squeezed. */
  readonly slack: Inches;
}

/** Installed thickness (in) that a cut length leaves, by geometry: the stretch-out turned round. A cut longer than the
 *  full thickness needs hangs loose. Faults: `cut_too_short`, `squeezed_past_half`, `installed_over_thickness`. */
export function thicknessFromCut(
  section: DuctSection,
  cut: Inches,
  wrap: { readonly name: string; readonly thickness: Inches; readonly installed: Inches },
  lap: Inches,
  corners: CornerRule,
): Outcome<ThicknessFromCut, TradeFault> {
  if (wrap.installed > wrap.thickness) return failed(installedOverThickness(wrap));
  const bare = perimeter(section);
  const forThickness = inches(cut - bare - lap);
  if (forThickness <= 0) return failed({ code: 'cut_too_short', cut, perimeter: bare, lap });
  const perInch = perThickness(section, corners);
  const fills = inches(forThickness / perInch);
  const half = wrap.thickness / 2;
  if (fills < half * (1 - 1e-9)) {
    const leastCut = inches(bare + lap + half * perInch);
    return failed({ code: 'squeezed_past_half', left: fills, thickness: wrap.thickness, leastCut });
  }
  return done({
    perimeter: bare,
    forThickness,
    perThickness: perInch,
    fills,
    installed: inches(Math.min(fills, wrap.thickness)),
    slack: inches(Math.max(0, fills - wrap.thickness) * perInch),
  });
}
