import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import type { TrunkFace } from '../seal/tap.ts';
import type { DuctSection } from '../section.ts';

export interface CutOut {
  /** The branch with its ease. */
  readonly branch: { readonly along: Inches; readonly around: Inches };
  /** Diameter of the outer face of the wrap; null on a flat side. */
  readonly face: Inches | null;
  /** Of the hole in the facing, laid flat: along the trunk, and around it. */
  readonly along: Inches;
  readonly around: Inches;
}

/** Hole in the facing of the trunk's wrap for a branch that leaves square and on center, in inches. On a round trunk the
 *  hole is longer around the trunk than the branch is, since the facing curves away. The width of a rectangular branch
 *  lies along the trunk. Ease is added all round. Faults: `tap_wider_than_trunk`. Source: geometry. */
export function cutOut(
  branch: DuctSection,
  trunk: TrunkFace,
  thickness: Inches,
  ease: Inches,
): Outcome<CutOut, TradeFault> {
  const [width, depth] =
    branch.shape === 'round' ? [branch.diameter, branch.diameter] : [branch.width, branch.depth];
  if (trunk.type === 'round' && depth > trunk.diameter) {
    return failed({ code: 'tap_wider_than_trunk', across: depth, trunk: trunk.diameter });
  }
  const along = inches(width + 2 * ease);
  const across = inches(depth + 2 * ease);
  const size = { along, around: across };
  if (trunk.type === 'flat') return done({ branch: size, face: null, along, around: across });
  const face = inches(trunk.diameter + 2 * thickness);
  // The ease may reach past the face where branch and trunk are alike: then the hole goes half way round.
  const around = inches(face * Math.asin(Math.min(1, across / face)));
  return done({ branch: size, face, along, around });
}

/** Half of the hole around the trunk, at a place along it: the outline of the hole laid flat. Places run from -1 to 1. */
export function halfAround(hole: CutOut, isRound: boolean, place: number): number {
  if (!isRound) return hole.around / 2;
  const half = (hole.branch.around / 2) * Math.sqrt(Math.max(0, 1 - place ** 2));
  return hole.face === null ? half : (hole.face / 2) * Math.asin(Math.min(1, (2 * half) / hole.face));
}
