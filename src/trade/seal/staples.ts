import type { Inches } from '../../base/quantity.ts';
import { wholeUp } from '../whole.ts';

/** Staples along a seam, one for each interval. No seam needs no staple. */
export function seamStaples(
  seam: Inches,
  spacing: Inches,
): { readonly intervals: number; readonly staples: number } {
  const intervals = seam / spacing;
  return { intervals, staples: wholeUp(intervals) };
}
