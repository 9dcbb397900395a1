/** The share by which a number may miss a whole number and still count as it: far above what binary fractions
 *  lose in a few steps, far below anything that can be measured. */
const nudge = 1e-9;

/** The whole number that this is, but for the last binary digits; otherwise null. */
export function wholeWithin(value: number): number | null {
  const nearest = Math.round(value);
  return Math.abs(value - nearest) <= nudge * Math.max(1, Math.abs(value)) ? nearest + 0 : null;
}

/** How many whole things cover this share of them: 5 for 5.000000000001, 6 for 5.01. */
export function wholeUp(value: number): number {
  return wholeWithin(value) ?? Math.ceil(value);
}

/** How many whole things fit into this share of them. */
export function wholeDown(value: number): number {
  return wholeWithin(value) ?? Math.floor(value);
}
