import { type Money, money } from '../../base/quantity.ts';
import { toCents } from './cents.ts';
import { priceByMargin, priceByMarkup } from './margin.ts';

export const profitMeanings = ['margin', 'markup'] as const;
export type ProfitMeaning = (typeof profitMeanings)[number];

/** Who pays sales tax, and on what: the shop when it buys the material, which makes it a cost; the customer on the
 *  material alone or on the whole price; or nobody. */
export const taxedThings = ['none', 'purchase', 'material sold', 'all'] as const;
export type Taxed = (typeof taxedThings)[number];

export const centRules = ['exact', 'at the end', 'each line'] as const;
export type CentRule = (typeof centRules)[number];

export interface JobCosts {
  readonly material: Money;
  readonly labor: Money;
  readonly other: Money;
  readonly overheadShare: number;
  readonly overhead: Money;
  readonly profit: number;
  readonly profitIs: ProfitMeaning;
  readonly taxRate: number;
  readonly taxed: Taxed;
}

export interface JobPrice {
  readonly purchaseTax: Money;
  readonly direct: Money;
  readonly overhead: Money;
  readonly cost: Money;
  readonly profit: Money;
  /** Before the tax that the customer pays. */
  readonly price: Money;
  readonly salesTax: Money;
  readonly total: Money;
}

/** The tax that the customer pays: on the price of the material, at its share of the cost, or on all of it. */
export function salesTax(material: Money, rest: Money, rate: number, taxed: 'material' | 'all'): Money {
  return money(rate * (taxed === 'all' ? material + rest : material));
}

/** A job from its direct cost to what the customer pays. Overhead is a share of the direct cost and an amount on top,
 *  either of which may be 0. Exact, or to the cent at the end, or to the cent on each line so that printed lines add up.
 *  Source: arithmetic. */
export function jobPrice(job: JobCosts, cents: CentRule): JobPrice {
  const line = (amount: number) => (cents === 'each line' ? toCents(money(amount)) : money(amount));
  const last = (amount: number) => (cents === 'exact' ? money(amount) : toCents(money(amount)));
  const material = line(job.material);
  const purchaseTax = line(job.taxed === 'purchase' ? job.material * job.taxRate : 0);
  const direct = line(material + purchaseTax + line(job.labor) + line(job.other));
  const overhead = line(direct * job.overheadShare + job.overhead);
  const cost = line(direct + overhead);
  const price = last(
    job.profitIs === 'margin' ? priceByMargin(cost, job.profit) : priceByMarkup(cost, job.profit),
  );
  const tax = last(customersTax(job, price, cost === 0 ? 0 : material / cost));
  return {
    purchaseTax,
    direct,
    overhead,
    cost,
    profit: money(price - cost),
    price,
    salesTax: tax,
    total: last(price + tax),
  };
}

function customersTax(job: JobCosts, price: Money, materialShare: number): Money {
  if (job.taxed !== 'all' && job.taxed !== 'material sold') return money(0);
  const material = money(price * materialShare);
  const rest = money(price - material);
  return salesTax(material, rest, job.taxRate, job.taxed === 'all' ? 'all' : 'material');
}
