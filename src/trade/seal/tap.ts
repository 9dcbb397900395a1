import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type DuctSection, perimeter } from '../section.ts';

/** What the branch stands on. */
export type TrunkFace = { readonly type: 'flat' } | { readonly type: 'round'; readonly diameter: Inches };

export interface TapSeal {
  /** Where the branch meets the trunk. */
  readonly atTrunk: Inches;
  /** The first joint of the branch. */
  readonly atBranch: Inches;
  readonly length: Inches;
}

/** Both seams of a tap that leaves its trunk square and on center: where it meets the trunk, and its first joint. In
 *  inches. On a round trunk the seam is the curve in which the two surfaces meet; the width of a rectangular branch
 *  lies along the trunk. Faults: `tap_wider_than_trunk`. Source: geometry. */
export function tapSeal(branch: DuctSection, trunk: TrunkFace): Outcome<TapSeal, TradeFault> {
  const atBranch = perimeter(branch);
  const across = branch.shape === 'round' ? branch.diameter : branch.depth;
  if (trunk.type === 'round' && across > trunk.diameter) {
    return failed({ code: 'tap_wider_than_trunk', across, trunk: trunk.diameter });
  }
  const atTrunk = trunk.type === 'flat' ? atBranch : onRound(branch, trunk.diameter);
  return done({ atTrunk, atBranch, length: inches(atTrunk + atBranch) });
}

function onRound(branch: DuctSection, trunk: Inches): Inches {
  if (branch.shape === 'round') return saddleLength(branch.diameter, trunk);
  const arc = trunk * Math.asin(branch.depth / trunk);
  return inches(2 * (branch.width + arc));
}

/** Enough for twelve digits on any tap narrower than its trunk, and for eight on one as wide. */
const slices = 4096;

const known = new Map<string, Inches>();
const mostKnown = 4096;

/** Length of the curve in which a round branch meets a round trunk at a right angle, axes crossing. Shops use few sizes,
 *  and many lots use the same, so that each pair is worked out once. */
export function saddleLength(branch: Inches, trunk: Inches): Inches {
  const sizes = `${branch} ${trunk}`;
  const length = known.get(sizes) ?? sliced(branch, trunk);
  if (known.size >= mostKnown) known.clear();
  known.set(sizes, length);
  return length;
}

function sliced(branch: Inches, trunk: Inches): Inches {
  const small = branch / 2;
  const large = trunk / 2;
  const slice = Math.PI / 2 / slices;
  let quarter = 0;
  for (let index = 0; index < slices; index += 1) {
    const angle = (index + 0.5) * slice;
    const sine = Math.sin(angle);
    const cosine = Math.cos(angle);
    const rise = (small * small * sine * cosine) / Math.sqrt(large * large - small * small * sine * sine);
    quarter += Math.hypot(small, rise) * slice;
  }
  return inches(4 * quarter);
}
