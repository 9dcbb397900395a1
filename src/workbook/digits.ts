/** All digits of a number and no exponent, which a tape does not have. */
export function digits(number: number): string {
  return number.toLocaleString('en-US', { useGrouping: false, maximumFractionDigits: 20 });
}
