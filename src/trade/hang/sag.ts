import { type Inches, inches } from '../../base/quantity.ts';

export interface Sag {
  readonly sag: Inches;
  /** What a sag that deep adds to the length of the flex between two supports. */
  readonly longer: Inches;
}

/** Inches of sag for each foot between supports: flexible duct standard, 5th ed. 2010, 4.6, read in a guide. */
export const sagPerFoot = inches(0.5);

/** The deepest sag of flex between two supports (in), and how much longer a parabola that deep is than its span. Source
 *  of the length: geometry. */
export function flexSag(spacing: Inches, perFoot: Inches): Sag {
  const sag = (perFoot * spacing) / 12;
  return { sag: inches(sag), longer: inches(parabola(spacing, sag) - spacing) };
}

/** Length along a parabola of this span and depth. */
function parabola(span: number, depth: number): number {
  const slope = (4 * depth) / span;
  if (slope === 0) return span;
  return (span / 2) * (Math.hypot(1, slope) + Math.asinh(slope) / slope);
}
