import { type Inches, inches } from '../../base/quantity.ts';

/** How the place of the neutral line in the sheet is told: a K factor, or the printed rule for aircraft sheet. */
export type BendRule = { readonly by: 'K factor'; readonly k: number } | { readonly by: 'printed rule' };

export interface Bend {
  /** How much of the flat goes into the bend itself. */
  readonly allowance: Inches;
  /** From the start of the bend to the corner of the outside faces. */
  readonly setBack: Inches;
  /** What the flat is shorter than the outside sizes together. */
  readonly deduction: Inches;
}

/** A Navy course prints (0.0173 R + 0.0078 T) for each degree. Read at source; exact would be 0.01745 for the radius, and
 *  0.0078 puts the neutral line at 0.447 of the thickness. */
export const printedRule = { perRadius: 0.0173, perThickness: 0.0078 } as const;

/** Allowance, set-back and deduction of a bend by its inside radius. In inches; the angle, in degrees, is the one bent
 *  through and lies under 180. Source: geometry; for the set-back at 90° and the printed rule a federal handbook and a
 *  Navy course. */
export function bend(angle: number, radius: Inches, thickness: Inches, rule: BendRule): Bend {
  const radians = (angle * Math.PI) / 180;
  const allowance =
    rule.by === 'K factor'
      ? radians * (radius + rule.k * thickness)
      : angle * (printedRule.perRadius * radius + printedRule.perThickness * thickness);
  const setBack = (radius + thickness) * Math.tan(radians / 2);
  return {
    allowance: inches(allowance),
    setBack: inches(setBack),
    deduction: inches(2 * setBack - allowance),
  };
}

/** A K factor to start from, until the shop has measured its own. From memory, not verified. */
export function startingK(radius: Inches, thickness: Inches): number {
  if (radius < thickness) return 0.33;
  return radius <= 3 * thickness ? 0.4 : 0.45;
}
