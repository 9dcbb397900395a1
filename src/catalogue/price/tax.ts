import { done } from '../../base/outcome.ts';
import { money } from '../../base/quantity.ts';
import { salesTax } from '../../trade/price/job.ts';
import { choice } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayMoney } from '../say.ts';
import { amountSteps, centsArgument, inCents, moneyArgument, plainMoney, share } from './arguments.ts';
import { taxRules } from './cautions.ts';
import { priceBar } from './price-bar.ts';

/** Sales tax on the material alone, or on all. Money. Source: arithmetic; who pays what is for the tax office to say. */
export const priceTax = defineFunction({
  name: 'PRICE.TAX',
  says: 'The sales tax on the material only, or on the whole amount.',
  words: ['sales tax', 'tax on materials', 'tax on labor', 'tax'],
  gives: { label: 'Tax', unit: 'money' },
  arguments: {
    material: moneyArgument('the price of the material'),
    rest: moneyArgument('everything else: labor, overhead, profit'),
    rate: share('the rate of the tax', 1),
    on: choice(['material', 'all', 'nothing'], {
      says: 'what is taxed: the material only, all of it, or nothing',
    }),
    cents: centsArgument,
  },
  formula: [
    String.raw`\text{tax} = \text{rate} \times \text{material} \text{ (material)}, \quad \text{rate} \times (\text{material} + \text{rest}) \text{ (all)}`,
  ],
  work: ({ material, rest, rate, on, cents }) => {
    const exact = on === 'nothing' ? money(0) : salesTax(material, rest, rate, on);
    return done({ exact, asked: inCents(exact, cents) });
  },
  result: ({ asked }) => asked,
  steps: ({ exact }, { material, rest, rate, on, cents }) =>
    amountSteps(
      'Tax',
      {
        nothing: 'nothing is taxed',
        material: `${plainMoney(material)} × ${figure(rate, 5)}`,
        all: `(${plainMoney(material)} + ${plainMoney(rest)}) × ${figure(rate, 5)}`,
      }[on],
      exact,
      cents,
    ),
  drawing: ({ exact }, { material, rest }) =>
    priceBar({
      title: 'Tax on a price',
      describes: `Material for ${sayMoney(material)} and ${sayMoney(rest)} for the rest; the tax is ${sayMoney(exact)}.`,
      parts: [
        { name: 'material', amount: material },
        { name: 'rest', amount: rest },
        { name: 'tax', amount: exact },
      ],
      total: sayMoney(material + rest + exact),
    }),
  cautions: () => [taxRules],
  sources: ['price-arithmetic', 'sales-tax-guides'],
  examples: [
    {
      says: '7 % on 1438.08 of material only',
      given: { material: 1438.08, rest: 2000, rate: 0.07, on: 'material' },
      gives: 100.6656,
      tolerance: 1e-6,
    },
    {
      says: '7 % on all of it, to the cent',
      given: { material: 1438.08, rest: 2000, rate: 0.07, on: 'all', cents: 'cents' },
      gives: 240.67,
    },
  ],
});
