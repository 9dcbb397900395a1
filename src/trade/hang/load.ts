import {
  type Inches,
  inches,
  type Pounds,
  type PoundsPerCubicFoot,
  type PoundsPerSquareFoot,
  pounds,
} from '../../base/quantity.ts';
import type { DuctSection } from '../section.ts';
import { ductWeight } from '../weight/duct.ts';

/** Wrap by what goes on: the cut once round, the thickness out of the package, and its density there. */
export interface HungWrap {
  readonly cut: Inches;
  readonly thickness: Inches;
  readonly density: PoundsPerCubicFoot;
}

export interface HangerLoad {
  readonly metal: Pounds;
  readonly wrap: Pounds;
  readonly other: Pounds;
  /** On one hanger. */
  readonly hanger: Pounds;
  /** On each of its straps or rods. */
  readonly leg: Pounds;
}

/** What one hanger carries (lb): the metal over one spacing with a share for seams and joints, the wrap on it, and what
 *  else hangs there; shared evenly by its legs. Squeezing does not change what wrap weighs. Source: geometry. */
export function hangerLoad(
  section: DuctSection,
  spacing: Inches,
  perSquareFoot: PoundsPerSquareFoot,
  extra: number,
  around: HungWrap,
  other: Pounds,
  legs: number,
): HangerLoad {
  const metal = ductWeight(section, spacing, perSquareFoot, inches(0), extra).weight;
  const wrap = pounds((around.cut * spacing * around.thickness * around.density) / 1728);
  const hanger = pounds(metal + wrap + other);
  return { metal, wrap, other, hanger, leg: pounds(hanger / legs) };
}

/** The share of its failure load that an upper attachment may carry: duct standard of 2005, 4.1, in a third-party copy. */
export const attachmentShare = 0.25;

/** The failure load that an attachment must have for a load (lb). */
export function attachmentFor(load: Pounds, share: number): Pounds {
  return pounds(load / share);
}
