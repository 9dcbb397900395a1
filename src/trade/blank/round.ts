import { type Inches, inches } from '../../base/quantity.ts';

/** Where the diameter of a pipe was measured; `ignored` leaves the sheet thickness out. */
export const measuredAt = ['inside', 'outside', 'ignored'] as const;
export type MeasuredAt = (typeof measuredAt)[number];

export interface RoundBlank {
  /** What the girth is taken on: the diameter at the middle of the sheet thickness. */
  readonly middleDiameter: Inches;
  readonly girth: Inches;
  readonly seam: Inches;
  readonly width: Inches;
}

/** Flat width of a straight round pipe: girth at the middle of the sheet thickness, plus the seam in all. In inches.
 *  Source: geometry; a drawing textbook of 1906 prints the same rule. */
export function roundBlank(
  diameter: Inches,
  thickness: Inches,
  measured: MeasuredAt,
  seam: Inches,
): RoundBlank {
  const middleDiameter = inches(diameter + side[measured] * thickness);
  const girth = inches(Math.PI * middleDiameter);
  return { middleDiameter, girth, seam, width: inches(girth + seam) };
}

const side: Readonly<Record<MeasuredAt, number>> = { inside: 1, outside: -1, ignored: 0 };
