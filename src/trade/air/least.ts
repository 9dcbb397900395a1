/** The least number that is enough, to the last binary digit, where every larger one is enough too. `low` is not enough,
 *  `high` is. A rule with a step in it, as friction has at Re 2300, is closed in on just the same. */
export function leastEnough(low: number, high: number, isEnough: (value: number) => boolean): number {
  let [below, above] = [low, high];
  for (;;) {
    const middle = below + (above - below) / 2;
    if (middle <= below || middle >= above) return above;
    if (isEnough(middle)) above = middle;
    else below = middle;
  }
}
