/** Closes in on the place where a rule begins to hold, to the last binary digit: it does not hold at `below` and holds at
 *  `above`, and no number lies between them. It must not hold at `low`, and must hold from some place up to `high`. A
 *  rule with a step in it, as friction has at Re 2300, is closed in on just the same. */
export function closeIn(
  low: number,
  high: number,
  holds: (value: number) => boolean,
): { readonly below: number; readonly above: number } {
  let [below, above] = [low, high];
  for (;;) {
    const middle = below + (above - below) / 2;
    if (middle <= below || middle >= above) return { below, above };
    if (holds(middle)) above = middle;
    else below = middle;
  }
}
