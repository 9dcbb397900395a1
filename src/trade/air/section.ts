import { assertNever, done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches, type SquareFeet, squareFeetFromSquareInches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type DuctSection, ductSection, perimeter } from '../section.ts';

export const airShapes = ['round', 'rectangular', 'flat oval'] as const;
export type AirShape = (typeof airShapes)[number];

/** What air flows through: inside sizes. A flat oval is two half circles joined by straight sides. */
export type AirSection =
  | DuctSection
  | { readonly shape: 'flat oval'; readonly major: Inches; readonly minor: Inches };

/** The section that a shape and its two sizes describe; the width of a round duct is its diameter, and a flat oval may lie
 *  or stand. Faults: `needs_depth`, `depth_on_round`. */
export function airSection(
  shape: AirShape,
  width: Inches,
  depth: Inches | null,
): Outcome<AirSection, TradeFault> {
  if (shape !== 'flat oval') return ductSection(shape, width, depth);
  if (depth === null) return failed({ code: 'needs_depth', shape });
  return done({ shape, major: inches(Math.max(width, depth)), minor: inches(Math.min(width, depth)) });
}

/** Cross-section in square inches. */
export function openSquareInches(section: AirSection): number {
  switch (section.shape) {
    case 'round':
      return (Math.PI / 4) * section.diameter ** 2;
    case 'rectangular':
      return section.width * section.depth;
    case 'flat oval':
      return (Math.PI / 4) * section.minor ** 2 + section.minor * (section.major - section.minor);
    default:
      return assertNever(section);
  }
}

export function openArea(section: AirSection): SquareFeet {
  return squareFeetFromSquareInches(openSquareInches(section));
}

/** Once round the inside. */
export function insidePerimeter(section: AirSection): Inches {
  return section.shape === 'flat oval'
    ? inches(Math.PI * section.minor + 2 * (section.major - section.minor))
    : perimeter(section);
}

/** Four times the area over the perimeter; the diameter itself for a round duct. Source: definition. */
export function hydraulicDiameter(section: AirSection): Inches {
  return inches((4 * openSquareInches(section)) / insidePerimeter(section));
}

/** The round duct that has the same friction at the same airflow, in inches. Sources: Huebscher for rectangular duct
 *  [duct design manual, table 14-2]; the flat oval form [from memory]. */
export function equivalentDiameter(section: AirSection): Inches {
  switch (section.shape) {
    case 'round':
      return section.diameter;
    case 'rectangular':
      return huebscher(section.width, section.depth);
    case 'flat oval':
      return inches((1.55 * openSquareInches(section) ** 0.625) / insidePerimeter(section) ** 0.25);
    default:
      return assertNever(section);
  }
}

/** `1.30 (ab)^0.625 ÷ (a + b)^0.25`. */
export function huebscher(one: Inches, other: Inches): Inches {
  return inches((1.3 * (one * other) ** 0.625) / (one + other) ** 0.25);
}
