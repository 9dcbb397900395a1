import { type Inches, type SquareFeet, squareFeetFromSquareInches } from '../../base/quantity.ts';
import { type DuctSection, perimeter } from '../section.ts';

export interface DuctArea {
  readonly perimeter: Inches;
  readonly length: Inches;
  readonly area: SquareFeet;
}

/** Bare outside area of a straight duct (sq ft), ends open, no seams. Source: geometry. */
export function ductArea(section: DuctSection, length: Inches): DuctArea {
  const around = perimeter(section);
  return { perimeter: around, length, area: squareFeetFromSquareInches(around * length) };
}
