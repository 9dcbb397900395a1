import { type Money, money } from '../../base/quantity.ts';

/** The selling price of which the margin is a share: cost ÷ (1 − margin). Not the same as a markup. */
export function priceByMargin(cost: Money, margin: number): Money {
  return money(cost / (1 - margin));
}

/** The selling price with a share of the cost put on top: cost × (1 + markup). */
export function priceByMarkup(cost: Money, markup: number): Money {
  return money(cost * (1 + markup));
}

/** The markup on cost that leaves a margin of the price. */
export function markupForMargin(margin: number): number {
  return margin / (1 - margin);
}

/** The margin of the price that a markup on cost leaves. */
export function marginOfMarkup(markup: number): number {
  return markup / (1 + markup);
}

/** The margin that is left after a discount on the price; less than nothing where the discount eats all of it. */
export function marginAfterDiscount(margin: number, discount: number): number {
  return 1 - (1 - margin) / (1 - discount);
}
