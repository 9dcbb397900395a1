import { done } from '../../base/outcome.ts';
import { materialCost, toBuy } from '../../trade/price/material.ts';
import { optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayMoney } from '../say.ts';
import { amountSteps, centsArgument, inCents, moneyArgument, plainMoney, share } from './arguments.ts';
import { buySteps, neededArgument, wasteArguments, wasteFormula, wasteMeaning } from './buy.ts';
import { ownFigures, taxRules } from './cautions.ts';
import { priceBar } from './price-bar.ts';

/** Material with waste and the tax on buying it. Money. Source: arithmetic. */
export const priceMaterial = defineFunction({
  name: 'PRICE.MATERIAL',
  says: 'What the material of a job costs, with waste and the tax paid when it is bought.',
  words: ['material cost', 'metal cost', 'cost of sheet metal', 'material with waste', 'price of material'],
  gives: { label: 'Material', unit: 'money' },
  arguments: {
    needed: neededArgument,
    unit_price: moneyArgument('the price of one pound, square foot, foot or piece, before tax'),
    ...wasteArguments,
    tax: optional(
      share('the sales tax that the shop pays when it buys', 1),
      0,
      'no tax is added unasked: it depends on the place and the contract',
    ),
    cents: centsArgument,
  },
  formula: [
    wasteFormula,
    String.raw`\text{material} = \text{bought} \times \text{unit\_price} \times (1 + \text{tax})`,
  ],
  work: ({ needed, unit_price, waste, waste_is, pack, tax, cents }) => {
    const cost = materialCost(toBuy(needed, waste, waste_is, pack), unit_price, tax);
    return done({ ...cost, asked: inCents(cost.cost, cents) });
  },
  result: ({ asked }) => asked,
  steps: (cost, given) => [
    ...buySteps(cost, given),
    {
      label: 'Before tax',
      sum: `${figure(cost.bought, 4)} × ${plainMoney(given.unit_price)}`,
      value: cost.beforeTax,
      unit: 'money',
      source: 'price-arithmetic',
    },
    {
      label: 'Tax on buying it',
      sum: `${plainMoney(cost.beforeTax)} × ${figure(given.tax, 4)}`,
      value: cost.tax,
      unit: 'money',
      source: 'sales-tax-guides',
    },
    ...amountSteps(
      'Material',
      `${plainMoney(cost.beforeTax)} + ${plainMoney(cost.tax)}`,
      cost.cost,
      given.cents,
    ),
  ],
  drawing: (cost, { needed, unit_price }) => {
    const used = Math.min(cost.beforeTax, needed * unit_price);
    return priceBar({
      title: 'Material',
      describes: `Material for ${sayMoney(cost.cost)}: ${sayMoney(used)} goes into the job, the rest is waste and tax.`,
      parts: [
        { name: 'in the job', amount: used },
        { name: 'waste and whole packs', amount: cost.beforeTax - used },
        { name: 'tax', amount: cost.tax },
      ],
      total: sayMoney(cost.cost),
    });
  },
  cautions: () => [wasteMeaning, taxRules, ownFigures],
  sources: ['price-arithmetic', 'waste-from-memory'],
  examples: [
    {
      says: 'material for 1200.00 net, 12 % waste, 7 % tax',
      given: { needed: 1200, unit_price: 1, waste: 0.12, tax: 0.07 },
      gives: 1438.08,
      tolerance: 1e-6,
      source: 'price-arithmetic',
    },
    {
      says: '1250.00 with 7.25 % tax, to the cent',
      given: { needed: 1250, unit_price: 1, waste: 0, tax: 0.0725, cents: 'cents' },
      gives: 1340.63,
      source: 'price-arithmetic',
    },
  ],
});
