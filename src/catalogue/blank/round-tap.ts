import type { Inches } from '../../base/quantity.ts';
import { optional, quantity } from '../argument.ts';
import type { Caution } from '../working.ts';
import { divisionsArgument, roundDiameter } from './round-pattern.ts';

/** What tells how a branch meets its trunk: for the hole and for the end of the branch alike. */
export const tapArguments = {
  branch: roundDiameter('the diameter of the branch'),
  trunk: optional<Inches | null>(
    quantity('in', {
      says: 'the diameter of a round trunk; blank for the flat wall of a rectangular one',
      least: 2,
      most: 120,
      why: 'pipe under 2 in or over 10 ft is not shop duct, so it is most likely a slip of the unit',
    }),
    null,
    'the branch stands on a flat wall',
  ),
  angle: optional(
    quantity('deg', {
      says: 'between trunk and branch: 90 is square, less leans',
      least: 15,
      most: 90,
      why: 'a branch under 15° is a slit that nobody can close, and past 90° it leans the other way',
    }),
    90,
    'most taps stand square',
  ),
  offset: optional(
    quantity('in', {
      says: 'how far the branch stands off the middle of the trunk, sideways',
      least: -60,
      most: 60,
      why: 'the wall of a 10 ft trunk is not farther out',
    }),
    0,
    'most taps stand on center',
  ),
} as const;

/** How far along the branch its trunk is met, a, at the turn p, for the manual. */
export const tapFormulas = [
  String.raw`a(p) = \frac{z + r \cos p \cos \mathrm{angle}}{\sin \mathrm{angle}}, \quad r = \frac{\mathrm{branch}}{2}`,
  String.raw`z = \sqrt{R^2 - (\mathrm{offset} + r \sin p)^2}, \quad R = \frac{\mathrm{trunk}}{2} \text{ (round trunk)}, \quad z = 0 \text{ (flat wall)}`,
] as const;

export const tapDivisions = divisionsArgument;

/** Marks count from the throat, the side to which the branch leans. */
export const tapMarks = 'p is the turn round the branch from its throat, the side to which it leans';

export const markFromTheBranch: Caution = {
  level: 'look',
  sentence:
    'The line is where the two skins meet, the sheet taken as thin. Hold the formed branch to the trunk and mark round it before you cut, and leave metal inside the line if you turn an edge out.',
  source: 'sheet-shop-practice',
};

export function sayTrunk(trunk: number | null, say: (size: number) => string): string {
  return trunk === null ? 'a flat wall' : `a ${say(trunk)} trunk`;
}
