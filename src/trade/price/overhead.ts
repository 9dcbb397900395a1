import { type Money, money } from '../../base/quantity.ts';

/** Overhead on the parts of a cost, each with a rate of its own. Source: arithmetic. */
export function overheadOn(parts: readonly { readonly cost: Money; readonly rate: number }[]): {
  readonly shares: readonly Money[];
  readonly overhead: Money;
} {
  const shares = parts.map(({ cost, rate }) => money(cost * rate));
  return { shares, overhead: money(shares.reduce((sum, share) => sum + share, 0)) };
}

/** A year's overhead as a share of a year's direct cost. */
export function overheadShare(overhead: Money, direct: Money): number {
  return overhead / direct;
}

/** A year's overhead on each productive hour of the whole crew. */
export function overheadPerHour(overhead: Money, workers: number, hoursEach: number): Money {
  return money(overhead / (workers * hoursEach));
}

/** The sales at which the margin just pays the overhead. */
export function breakEven(overhead: Money, margin: number): Money {
  return money(overhead / margin);
}
