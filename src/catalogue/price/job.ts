import { done } from '../../base/outcome.ts';
import { type Money, money } from '../../base/quantity.ts';
import { centRules, type JobPrice, jobPrice, profitMeanings, taxedThings } from '../../trade/price/job.ts';
import { choice, optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayMoney } from '../say.ts';
import type { Step } from '../working.ts';
import { marginArgument, moneyArgument, plainMoney, share } from './arguments.ts';
import { notMarkup, ownFigures, taxRules } from './cautions.ts';
import { priceBar } from './price-bar.ts';

interface PricedJob extends JobPrice {
  readonly asked: Money;
}

/** The price of a job from its costs. Money. Source: arithmetic; the builders guide for the order of the lines. */
export const priceJob = defineFunction({
  name: 'PRICE.JOB',
  says: 'The price of a job: material, labor, overhead, profit as margin or markup, and tax.',
  words: ['job price', 'quote', 'estimate', 'bid', 'total price', 'price the job', 'what to charge'],
  gives: { label: 'Price', unit: 'money' },
  arguments: {
    material: moneyArgument('the material with its waste, before tax'),
    labor: moneyArgument('the labor with its burden'),
    other: optional(
      moneyArgument('other direct cost: subcontracts, rent of tools, permits'),
      0,
      'many small jobs have none',
    ),
    overhead_rate: optional(
      share('the overhead as a share of the direct cost'),
      0,
      'no overhead is added unasked; PRICE.SHARE and PRICE.OVERHEAD give yours',
    ),
    overhead: optional(
      moneyArgument('overhead as an amount, as from hours; it comes on top of the share'),
      0,
      'overhead by rate needs no amount',
    ),
    profit: marginArgument('the net profit'),
    profit_is: optional(
      choice(profitMeanings, {
        says: 'what the profit is a share of: the price ("margin") or the cost with overhead ("markup")',
      }),
      'margin',
      'a margin is what is left of the money that comes in; the steps show the other one',
    ),
    tax: optional(
      share('the rate of the sales tax', 1),
      0,
      'no tax is added unasked: it depends on the place',
    ),
    taxed: optional(
      choice(taxedThings, {
        says: 'what is taxed: nothing ("none"), the "purchase" of the material, which makes it a cost, the "material sold" at its share of the price, or "all" of the price',
      }),
      'purchase',
      'in most states the contractor pays the tax when buying, as guides tell it',
    ),
    cents: optional(
      choice(centRules, {
        says: 'exact amounts, cents "at the end", or cents on "each line" so that the printed lines add up',
      }),
      'exact',
      'amounts keep their full precision until they are printed',
    ),
    what: optional(
      choice(['total', 'price', 'cost', 'profit', 'tax'], {
        says: 'the total to pay, the price before the customer’s tax, the cost with overhead, the profit, or the tax that the customer pays',
      }),
      'total',
      'the total is what the customer asks for',
    ),
  },
  formula: [
    String.raw`\text{cost} = (\text{material} (1 + \text{tax}_\text{purchase}) + \text{labor} + \text{other}) (1 + \text{overhead\_rate}) + \text{overhead}`,
    String.raw`\text{price} = \frac{\text{cost}}{1 - \text{profit}} \text{ (margin)}, \quad \text{cost} \times (1 + \text{profit}) \text{ (markup)}`,
    String.raw`\text{total} = \text{price} + \text{tax}_\text{sale}`,
  ],
  work: (given) => {
    const priced = jobPrice(
      {
        material: given.material,
        labor: given.labor,
        other: money(given.other),
        overheadShare: given.overhead_rate,
        overhead: money(given.overhead),
        profit: given.profit,
        profitIs: given.profit_is,
        taxRate: given.tax,
        taxed: given.taxed,
      },
      given.cents,
    );
    const { total, price, cost, profit, salesTax } = priced;
    return done({ ...priced, asked: { total, price, cost, profit, tax: salesTax }[given.what] });
  },
  result: ({ asked }) => asked,
  steps: (job: PricedJob, given): readonly Step[] => {
    const line = (label: string, sum: string, value: Money, source: Step['source'] = 'price-arithmetic') =>
      ({ label, sum, value, unit: 'money', source }) as const;
    const isMargin = given.profit_is === 'margin';
    const purchase = line(
      'Tax on buying the material',
      given.taxed === 'purchase' ? `${plainMoney(given.material)} × ${figure(given.tax, 5)}` : 'none',
      job.purchaseTax,
      'sales-tax-guides',
    );
    const direct = line(
      'Direct cost',
      [given.material, job.purchaseTax, given.labor, given.other].map(plainMoney).join(' + '),
      job.direct,
    );
    const overhead = line(
      'Overhead',
      `${plainMoney(job.direct)} × ${figure(given.overhead_rate, 5)} + ${plainMoney(given.overhead)}`,
      job.overhead,
      'overhead-guide',
    );
    const cost = line('Cost', `${plainMoney(job.direct)} + ${plainMoney(job.overhead)}`, job.cost);
    const price = line(
      'Price',
      isMargin
        ? `${plainMoney(job.cost)} ÷ (1 − ${figure(given.profit, 5)})`
        : `${plainMoney(job.cost)} × (1 + ${figure(given.profit, 5)})`,
      job.price,
      'markup-article-2024',
    );
    const profit = line('Profit', `${plainMoney(job.price)} − ${plainMoney(job.cost)}`, job.profit);
    const tax = line('Tax that the customer pays', taxSum(job, given), job.salesTax, 'sales-tax-guides');
    const total = line('Total', `${plainMoney(job.price)} + ${plainMoney(job.salesTax)}`, job.total);
    const upTo = [purchase, direct, overhead, cost];
    switch (given.what) {
      case 'cost':
        return upTo;
      case 'price':
        return [...upTo, price];
      case 'profit':
        return [...upTo, price, profit];
      case 'tax':
        return [...upTo, price, tax];
      case 'total':
        return [...upTo, price, profit, tax, total];
    }
  },
  drawing: (job, { material, labor, other }) =>
    priceBar({
      title: 'What a price is made of',
      describes: `A total of ${sayMoney(job.total)}: ${sayMoney(job.direct)} direct cost, ${sayMoney(job.overhead)} overhead, ${sayMoney(job.profit)} profit and ${sayMoney(job.salesTax)} tax.`,
      parts: [
        { name: 'material', amount: material },
        { name: 'labor', amount: labor },
        { name: 'other', amount: other },
        { name: 'overhead', amount: job.overhead },
        { name: 'profit', amount: job.profit },
        { name: 'tax', amount: job.purchaseTax + job.salesTax },
      ],
      total: `total ${sayMoney(job.total)}`,
    }),
  cautions: (job, given) => [
    notMarkup,
    taxRules,
    ownFigures,
    ...(job.overhead === 0
      ? [
          {
            level: 'look',
            sentence:
              'No overhead is in this price: rent, trucks, office and tools must then come out of the profit.',
          } as const,
        ]
      : []),
    ...(given.tax > 0 && given.taxed === 'none'
      ? [{ level: 'look', sentence: 'A tax rate is given, but nothing is taxed.' } as const]
      : []),
  ],
  sources: ['price-arithmetic', 'overhead-guide'],
  examples: [
    {
      says: '100,000 of direct cost, 15 % overhead, 10 % profit as a markup',
      given: { material: 60_000, labor: 40_000, overhead_rate: 0.15, profit: 0.1, profit_is: 'markup' },
      gives: 126_500,
      tolerance: 1e-6,
      source: 'overhead-guide',
    },
    {
      says: 'the same with 10 % of the price as profit',
      given: { material: 60_000, labor: 40_000, overhead_rate: 0.15, profit: 0.1 },
      gives: 127_777.7778,
      tolerance: 0.0001,
      source: 'price-arithmetic',
    },
    {
      says: 'a small job with 7 % tax on buying the material, to the cent at the end',
      given: {
        material: 1344,
        labor: 1068.545,
        overhead: 622.045,
        profit: 0.18,
        tax: 0.07,
        cents: 'at the end',
      },
      gives: 3815.45,
      source: 'price-arithmetic',
    },
    {
      says: 'the cost of the same job with cents on each line',
      given: {
        material: 1344,
        labor: 1068.545,
        overhead: 622.045,
        profit: 0.18,
        tax: 0.07,
        cents: 'each line',
        what: 'cost',
      },
      gives: 3128.68,
      source: 'price-arithmetic',
    },
  ],
});

function taxSum(
  job: JobPrice,
  given: { readonly taxed: (typeof taxedThings)[number]; readonly material: Money; readonly tax: number },
): string {
  const rate = figure(given.tax, 5);
  if (given.taxed === 'all') return `${plainMoney(job.price)} × ${rate}`;
  if (given.taxed !== 'material sold' || job.cost === 0) return 'none';
  return `${plainMoney(job.price)} × ${plainMoney(given.material)} ÷ ${plainMoney(job.cost)} × ${rate}`;
}
