/** How many random cases a law is tried on: a few at each run, many with `DEEP=1 npm test`. */
export function cases(quick: number, deep: number): number {
  return process.env.DEEP ? deep : quick;
}
