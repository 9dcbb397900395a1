import {
  type Inches,
  type Pounds,
  type PoundsPerSquareFoot,
  pounds,
  type SquareFeet,
  squareFeetFromSquareInches,
} from '../../base/quantity.ts';

export interface SheetWeight {
  readonly area: SquareFeet;
  readonly weight: Pounds;
}

/** Weight (lb) of a flat blank, width by length. Source: geometry. */
export function blankWeight(width: Inches, length: Inches, perSquareFoot: PoundsPerSquareFoot): SheetWeight {
  const area = squareFeetFromSquareInches(width * length);
  return { area, weight: pounds(area * perSquareFoot) };
}
