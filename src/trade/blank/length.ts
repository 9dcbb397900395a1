import { type Inches, inches } from '../../base/quantity.ts';

/** Cut length of a blank: the finished length plus what the joint takes at each end. In inches. */
export function blankLength(finished: Inches, firstEnd: Inches, secondEnd: Inches): Inches {
  return inches(finished + firstEnd + secondEnd);
}
