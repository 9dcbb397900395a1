import type { Line } from '../form.ts';
import { aBox, counted, length, percent, thisShop } from './lines.ts';

/** Screws. */
export const screws: readonly Line[] = [
  length(
    'screw_spacing',
    'Screws, at most apart',
    12,
    'How far apart may screws be at a joint?',
    { least: 1, most: 36, why: 'over 3 ft apart they hold nothing' },
    'common practice; code: 3 at least',
  ),
  counted('screw_box', 'Screws in a box', 500, 'How many screws are in a box?', aBox, thisShop),
];

/** Staples and pins of the wrap. */
export const staplesAndPins: readonly Line[] = [
  length(
    'staple_spacing',
    'Staples, apart',
    6,
    'How far apart are the staples in the long seam of the wrap?',
    { least: 0.5, most: 24, why: 'staples stand from half an inch to two feet apart' },
    'maker guide specification: 6 in',
  ),
  counted('staple_box', 'Staples in a box', 5000, 'How many staples are in a box?', aBox, thisShop),
  length(
    'pins_from',
    'Pins from this width',
    24,
    'From which width of the underside does wrap get pins?',
    { least: 2, most: 120, why: 'it is a width of duct' },
    'maker guide specification: 24 in',
  ),
  length(
    'pin_spacing',
    'Pins, at most apart',
    18,
    'How far apart may pins be, either way?',
    { least: 3, most: 36, why: 'closer they tear the facing, and further apart the wrap sags' },
    'maker guide specification: 18 in',
  ),
  counted('pin_box', 'Pins in a box', 500, 'How many pins with clips are in a box?', aBox, thisShop),
];

export const fastenerWaste: readonly Line[] = [
  percent('fastener_waste', 'Waste of fasteners', 0.05, thisShop),
];

/** Screws, staples and pins. */
export const fasteners: readonly Line[] = [...screws, ...staplesAndPins, ...fastenerWaste];
