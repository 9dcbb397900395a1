import { type Feet, type Money, money, type Pounds } from '../../base/quantity.ts';

export function pricePerFoot(price: Money, length: Feet): Money {
  return money(price / length);
}

export function pricePerPound(price: Money, weight: Pounds): Money {
  return money(price / weight);
}

export interface Comparison {
  /** The second less the first: above 0 where the second costs more. */
  readonly difference: Money;
  /** The difference as a share of the first. */
  readonly share: number;
}

/** Two prices for the same thing. Source: arithmetic. */
export function compare(first: Money, second: Money): Comparison {
  return { difference: money(second - first), share: second / first - 1 };
}
