import { done, failed, type Outcome } from '../base/outcome.ts';
import { type Inches, inches } from '../base/quantity.ts';
import type { TradeFault } from './fault.ts';

export const shapes = ['round', 'rectangular'] as const;
export type Shape = (typeof shapes)[number];

/** What a duct is cut across: bare metal, no wrap. */
export type DuctSection =
  | { readonly shape: 'round'; readonly diameter: Inches }
  | { readonly shape: 'rectangular'; readonly width: Inches; readonly depth: Inches };

/** The section that a shape and its two sizes describe; the width of a round duct is its diameter.
 *  Faults: `needs_depth`, `depth_on_round`. */
export function ductSection(
  shape: Shape,
  width: Inches,
  depth: Inches | null,
): Outcome<DuctSection, TradeFault> {
  if (shape === 'round') {
    return depth === null
      ? done({ shape, diameter: width })
      : failed({ code: 'depth_on_round', diameter: width, depth });
  }
  return depth === null ? failed({ code: 'needs_depth', shape }) : done({ shape, width, depth });
}

/** Once round the bare metal. */
export function perimeter(section: DuctSection): Inches {
  return section.shape === 'round'
    ? inches(Math.PI * section.diameter)
    : inches(2 * (section.width + section.depth));
}
