/** A small figure with its leading digits, however small it is: `0.0002`, `1.25e-9`. */
export function fine(value: number, digits = 5): string {
  return String(Number(value.toPrecision(digits)));
}
