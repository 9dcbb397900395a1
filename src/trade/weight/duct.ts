import {
  type Inches,
  inches,
  type Pounds,
  type PoundsPerSquareFoot,
  pounds,
  type SquareFeet,
} from '../../base/quantity.ts';
import { type DuctSection, perimeter } from '../section.ts';
import { blankWeight } from './sheet.ts';

export interface DuctWeight {
  readonly perimeter: Inches;
  readonly seam: Inches;
  /** Once round with the seam. */
  readonly around: Inches;
  readonly area: SquareFeet;
  /** Before the extra for waste. */
  readonly metal: Pounds;
  readonly weight: Pounds;
}

/** Weight (lb) of a straight duct: area with its lengthwise seams, times sheet weight, plus a share for waste (0.1 is
 *  10 %). Seam 0 and waste 0 give the net weight. Source: geometry. */
export function ductWeight(
  section: DuctSection,
  length: Inches,
  perSquareFoot: PoundsPerSquareFoot,
  seam: Inches,
  waste: number,
): DuctWeight {
  const bare = perimeter(section);
  const around = inches(bare + seam);
  const { area, weight: metal } = blankWeight(around, length, perSquareFoot);
  return { perimeter: bare, seam, around, area, metal, weight: pounds(metal * (1 + waste)) };
}
