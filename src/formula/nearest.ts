/** The word that was probably meant: the one with the fewest slips of the pen, if they are few. Capitals do not count. */
export function nearest(typed: string, words: readonly string[]): string | null {
  const wanted = typed.toLowerCase();
  let best: string | null = null;
  let fewest = Math.min(3, Math.max(1, Math.floor(wanted.length / 3))) + 1;
  for (const word of words) {
    if (Math.abs(word.length - wanted.length) >= fewest) continue;
    const slips = slipsBetween(wanted, word.toLowerCase());
    if (slips >= fewest) continue;
    best = word;
    fewest = slips;
  }
  return best;
}

/** Characters put in, left out, exchanged or swapped with their neighbour. */
function slipsBetween(one: string, other: string): number {
  const rows: number[][] = [Array.from({ length: other.length + 1 }, (_, index) => index)];
  for (let i = 1; i <= one.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= other.length; j += 1) {
      const differ = one[i - 1] === other[j - 1] ? 0 : 1;
      const at = (up: number, left: number): number => (up === 0 ? row : rows[i - up])?.[j - left] ?? 0;
      const swapped = i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1];
      row.push(
        Math.min(
          at(1, 0) + 1,
          at(0, 1) + 1,
          at(1, 1) + differ,
          swapped ? at(2, 2) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    rows.push(row);
  }
  return rows[one.length]?.[other.length] ?? 0;
}
