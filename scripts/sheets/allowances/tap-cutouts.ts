import type { Line } from '../form.ts';
import { length, practice, thisShop } from './lines.ts';

/** The holes for taps in the metal. */
export const metalHoles: readonly Line[] = [
  length(
    'hole_ease',
    'Ease of a hole in metal',
    0.125,
    'How much larger than the tap is its hole in the metal, across in all?',
    { least: 0, most: 1, why: 'a hole an inch too large leaves nothing to hold the tabs' },
    thisShop,
  ),
  length(
    'tap_edge',
    'Metal left beside a tap',
    1,
    'How much flat metal stays between a tap and the edge of its side?',
    { least: 0, most: 12, why: 'it is the strip that holds the tabs and the screws' },
    practice,
    { least: 0.5, says: 'under 1/2 in the tabs have nothing to turn on (common practice)' },
  ),
];

/** The holes for taps in the wrap. */
export const wrapHoles: readonly Line[] = [
  length(
    'wrap_ease',
    'Ease of a hole in wrap',
    0,
    'How much larger than the tap is the hole in the wrap, on each side?',
    { least: 0, most: 2, why: 'a wide gap lets the metal sweat' },
    'no source gives an ease: snug',
  ),
];
