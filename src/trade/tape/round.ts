import { type Inches, inches } from '../../base/quantity.ts';
import { wholeDown, wholeUp, wholeWithin } from '../whole.ts';

/** The fractions that a tape carries. */
export const denominators = [1, 2, 4, 8, 16, 32, 64] as const;

export const roundings = ['up', 'nearest', 'down'] as const;
export type Rounding = (typeof roundings)[number];

/** A length brought to the marks of a tape: how many marks, how long, and by how much it changed. */
export interface TapeRounding {
  readonly marks: number;
  readonly exactMarks: number;
  readonly rounded: Inches;
  /** What rounding added; below zero when it took something off. */
  readonly added: Inches;
}

/** Brings a length to the marks of a tape. A length that is on a mark but for the last binary digits stays there,
 *  so that 66 1/2 never becomes 66 9/16. Half a mark goes away from zero. Works for any finite length. */
export function roundToTape(length: Inches, denominator: number, rounding: Rounding): TapeRounding {
  const exactMarks = length * denominator;
  const marks = marksOf(exactMarks, rounding) + 0; // + 0 turns a negative zero into zero
  const rounded = inches(marks / denominator);
  return { marks, exactMarks, rounded, added: inches(rounded - length) };
}

function marksOf(exact: number, rounding: Rounding): number {
  if (rounding === 'up') return wholeUp(exact);
  if (rounding === 'down') return wholeDown(exact);
  return wholeWithin(exact) ?? Math.sign(exact) * Math.round(Math.abs(exact));
}
