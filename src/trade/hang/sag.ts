import { type Inches, inches } from '../../base/quantity.ts';

export interface Sag {
  readonly sag: Inches;
  /** What a sag that deep adds to the length of the flex between two supports. */
  readonly longer: Inches;
}

/** Inches of sag for each foot between supports: flexible duct standard, 5th ed. 2010, 4.6, read in a guide. */
export const sagPerFoot = inches(0.5);

/** The deepest sag of flex between two supports (in), and how much longer a parabola that deep is than its span, by the
 *  first term of its series. */
export function flexSag(spacing: Inches, perFoot: Inches): Sag {
  const sag = (perFoot * spacing) / 12;
  return { sag: inches(sag), longer: inches((8 * sag * sag) / (3 * spacing)) };
}
