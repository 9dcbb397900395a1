import { type Inches, inches } from '../../base/quantity.ts';
import type { DuctSection } from '../section.ts';
import { wholeUp } from '../whole.ts';
import { outerPerimeter } from '../wrap/geometry.ts';

export interface FacingTape {
  readonly strips: number;
  /** Ring joints between strips, and those asked for at the ends. */
  readonly rings: number;
  /** Once round the facing of the installed wrap. */
  readonly around: Inches;
  readonly alongSeam: Inches;
  readonly atRings: Inches;
  readonly length: Inches;
}

/** Tape over the facing of one straight run of wrap: its long seam, a ring where two strips meet, and rings at the ends
 *  that are closed. In inches; nothing for laps of the tape itself. Source: geometry on the outer face. */
export function facingTape(
  section: DuctSection,
  run: Inches,
  installed: Inches,
  rollWidth: Inches,
  closedEnds: number,
): FacingTape {
  const strips = wholeUp(run / rollWidth);
  const rings = Math.max(0, strips - 1) + closedEnds;
  const around = outerPerimeter(section, installed);
  const atRings = inches(rings * around);
  return { strips, rings, around, alongSeam: run, atRings, length: inches(run + atRings) };
}
