import { assertNever, done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import type { DuctSection } from '../section.ts';

/** How a hanger holds the duct: a strap under half of a round one, or all the way round it; a strap down each side of a
 *  rectangular one and turned under it, one strap under it from side to side, or two rods with a bar below. */
export const hangerMakes = ['half round', 'full round', 'pair', 'cradle', 'trapeze'] as const;
export type HangerMake = (typeof hangerMakes)[number];

export const dropPoints = ['top', 'middle'] as const;
export type DropPoint = (typeof dropPoints)[number];

export interface HangerSizes {
  /** From the structure down to the top or the middle of the bare duct. */
  readonly drop: Inches;
  readonly dropTo: DropPoint;
  /** Wrap that lies between the duct and the hanger. */
  readonly wrap: Inches;
  /** What each strap of a pair turns under the duct, or each rod reaches below the bar. */
  readonly turn: Inches;
  /** What each end takes to be fastened above. */
  readonly fixing: Inches;
}

export interface HangerLength {
  readonly make: HangerMake;
  /** How many lengths: straps or rods. */
  readonly pieces: number;
  /** From the structure to where the strap leaves the straight line down, one leg. */
  readonly leg: Inches;
  readonly legs: number;
  /** What lies round or under the duct, all of it. */
  readonly under: Inches;
  readonly each: Inches;
  readonly all: Inches;
}

export function usualMake(section: DuctSection): HangerMake {
  return section.shape === 'round' ? 'half round' : 'pair';
}

/** What one hanger takes of strap or rod (in), the bar of a trapeze left out. Straps hang straight down and lie close;
 *  their thickness is left out. Faults: `hanger_not_for_shape`, `drop_too_short`. Source: geometry. */
export function hangerLength(
  section: DuctSection,
  make: HangerMake,
  sizes: HangerSizes,
): Outcome<HangerLength, TradeFault> {
  const forRound = make === 'half round' || make === 'full round';
  if (forRound !== (section.shape === 'round') && make !== 'trapeze') {
    return failed({ code: 'hanger_not_for_shape', hanger: make, shape: section.shape });
  }
  const high = section.shape === 'round' ? section.diameter : section.depth;
  const wide = section.shape === 'round' ? section.diameter : section.width;
  const { drop, dropTo, wrap, turn, fixing } = sizes;
  const above = dropTo === 'top' ? drop : drop - high / 2;
  if (above < wrap) {
    return failed({ code: 'drop_too_short', drop, least: inches(dropTo === 'top' ? wrap : high / 2 + wrap) });
  }
  const length = (pieces: number, legs: number, leg: number, under: number): HangerLength => {
    const all = legs * (leg + fixing) + under;
    return {
      make,
      pieces,
      leg: inches(leg),
      legs,
      under: inches(under),
      each: inches(all / pieces),
      all: inches(all),
    };
  };
  const beside = above + high + wrap;
  switch (make) {
    case 'half round':
      return done(length(1, 2, above + high / 2, (Math.PI * (high + 2 * wrap)) / 2));
    case 'full round':
      return done(length(1, 1, above - wrap, Math.PI * (high + 2 * wrap)));
    case 'pair':
      return done(length(2, 2, beside, 2 * turn));
    case 'cradle':
      return done(length(1, 2, beside, wide + 2 * wrap));
    case 'trapeze':
      return done(length(2, 2, beside, 2 * turn));
    default:
      return assertNever(make);
  }
}

/** The bar of a trapeze (in): as wide as the wrapped duct, and past it on both sides. Source: geometry. */
export function trapezeBar(section: DuctSection, wrap: Inches, past: Inches): Inches {
  const wide = section.shape === 'round' ? section.diameter : section.width;
  return inches(wide + 2 * wrap + 2 * past);
}
