import type { Inches } from '../../base/quantity.ts';
import { wholeUp } from '../whole.ts';

export interface BottomPins {
  /** False where the duct is narrower than pins are asked for. */
  readonly isWide: boolean;
  /** Rows along the duct, and pins in each. */
  readonly rows: number;
  readonly inRow: number;
  readonly pins: number;
}

/** Pins with clips that hold wrap up against the underside of wide duct, no further apart than the spacing. Source: maker
 *  guide specification (width and spacing); one to each interval is a rule of ours. */
export function bottomPins(width: Inches, length: Inches, spacing: Inches, from: Inches): BottomPins {
  const isWide = width >= from;
  const rows = isWide ? wholeUp(width / spacing) : 0;
  const inRow = isWide ? wholeUp(length / spacing) : 0;
  return { isWide, rows, inRow, pins: rows * inRow };
}
