/** Whole things that hold so much: a begun box is a box. Noise past the ninth place goes first, so that what comes to 11
 *  in tenths and hundredths is not bought as 12. */
export function wholeUp(amount: string): string {
  return `ROUNDUP(ROUND(${amount},9),0)`;
}

/** How often a thing goes into another, whole times only, without the same noise. */
export function wholeDown(amount: string): string {
  return `INT(ROUND(${amount},9))`;
}
