import { type Money, money } from '../../base/quantity.ts';
import { wholeUp } from '../whole.ts';

/** The two meanings of a waste figure: a share added to what the job needs, or a share of what is bought. */
export const wasteMeanings = ['added', 'of bought'] as const;
export type WasteMeaning = (typeof wasteMeanings)[number];

export interface ToBuy {
  readonly withWaste: number;
  /** Whole packs, sheets or lengths; null where any amount can be bought. */
  readonly packs: number | null;
  readonly bought: number;
}

/** What to buy for what the job needs, in the same unit: with waste, then up to whole packs. 15 % on 480 is 552 where it
 *  is added and 564.71 where it is a share of what is bought. Source: arithmetic. */
export function toBuy(needed: number, waste: number, meaning: WasteMeaning, pack: number | null): ToBuy {
  const withWaste = meaning === 'added' ? needed * (1 + waste) : needed / (1 - waste);
  if (pack === null) return { withWaste, packs: null, bought: withWaste };
  const packs = wholeUp(withWaste / pack);
  return { withWaste, packs, bought: packs * pack };
}

export interface MaterialCost extends ToBuy {
  readonly beforeTax: Money;
  readonly tax: Money;
  readonly cost: Money;
}

/** What material costs, tax on the purchase included where the shop pays it. Source: arithmetic. */
export function materialCost(buy: ToBuy, unitPrice: Money, taxRate: number): MaterialCost {
  const beforeTax = money(buy.bought * unitPrice);
  const tax = money(beforeTax * taxRate);
  return { ...buy, beforeTax, tax, cost: money(beforeTax + tax) };
}
