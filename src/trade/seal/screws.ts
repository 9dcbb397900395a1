import { type Inches, inches } from '../../base/quantity.ts';
import { type DuctSection, perimeter } from '../section.ts';
import { wholeUp } from '../whole.ts';

/** The fewest screws in a round metal joint: mechanical code, section 603, read on a code site. */
export const leastInRound = 3;
/** The fewest on each side of a rectangular joint: common practice, no source. */
export const leastOnSide = 2;

export interface JointScrews {
  /** One entry for a round joint, one for each side of a rectangular one. */
  readonly parts: readonly { readonly length: Inches; readonly bySpacing: number; readonly screws: number }[];
  readonly perJoint: number;
  readonly screws: number;
}

/** Screws in so many joints: no further apart than the spacing, and never fewer than the least. */
export function jointScrews(section: DuctSection, spacing: Inches, joints: number): JointScrews {
  const lengths =
    section.shape === 'round'
      ? [perimeter(section)]
      : [section.width, section.depth, section.width, section.depth];
  const least = section.shape === 'round' ? leastInRound : leastOnSide;
  const parts = lengths.map((length) => {
    const bySpacing = wholeUp(length / spacing);
    return { length: inches(length), bySpacing, screws: Math.max(least, bySpacing) };
  });
  const perJoint = parts.reduce((sum, part) => sum + part.screws, 0);
  return { parts, perJoint, screws: perJoint * joints };
}
