import { type Inches, inches } from '../../base/quantity.ts';
import { type DuctSection, perimeter } from '../section.ts';

/** How wrap is thought to go round the corners of a rectangular duct: bent at its full thickness, folded sharp, or
 *  measured along the middle of its thickness with sharp corners. */
export const cornerRules = ['bent', 'sharp', 'middle'] as const;
export type CornerRule = (typeof cornerRules)[number];

/** The inches that each inch of installed thickness adds once round the duct. */
export function perThickness(section: DuctSection, corners: CornerRule): number {
  if (section.shape === 'round' || corners === 'bent') return 2 * Math.PI;
  return corners === 'sharp' ? 8 : 4;
}

export interface GeometryStretchOut {
  readonly perimeter: Inches;
  readonly installed: Inches;
  /** What the thickness adds once round. */
  readonly aroundThickness: Inches;
  readonly lap: Inches;
  readonly cut: Inches;
}

/** Cut length of wrap that keeps its installed thickness all round: bare perimeter, thickness, lap. In inches.
 *  Exact for round; for rectangular as the corner rule says. */
export function geometryStretchOut(
  section: DuctSection,
  installed: Inches,
  lap: Inches,
  corners: CornerRule,
): GeometryStretchOut {
  const bare = perimeter(section);
  const aroundThickness = inches(perThickness(section, corners) * installed);
  return { perimeter: bare, installed, aroundThickness, lap, cut: inches(bare + aroundThickness + lap) };
}

/** Once round the outside of wrap that is bent round the corners; the length of a ring joint. */
export function outerPerimeter(section: DuctSection, installed: Inches): Inches {
  return inches(perimeter(section) + perThickness(section, 'bent') * installed);
}
