import { type Inches, inches } from '../../base/quantity.ts';
import { type DuctSection, perimeter } from '../section.ts';
import { outerPerimeter } from './geometry.ts';

export interface WrappedSize {
  /** Diameter or width over the wrap. */
  readonly width: Inches;
  /** Null for round duct. */
  readonly depth: Inches | null;
  readonly perimeter: Inches;
  /** Once round the facing. */
  readonly around: Inches;
}

/** Size of a duct over its wrap, in inches: the thickness on both sides. Nothing for laps, flanges or hangers. */
export function wrappedSize(section: DuctSection, thickness: Inches): WrappedSize {
  const isRound = section.shape === 'round';
  return {
    width: inches((isRound ? section.diameter : section.width) + 2 * thickness),
    depth: isRound ? null : inches(section.depth + 2 * thickness),
    perimeter: perimeter(section),
    around: outerPerimeter(section, thickness),
  };
}
