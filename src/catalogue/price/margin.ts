import { done } from '../../base/outcome.ts';
import { marginOfMarkup, markupForMargin, priceByMargin, priceByMarkup } from '../../trade/price/margin.ts';
import { defineFunction } from '../call.ts';
import { figure, sayMoney, sayValue } from '../say.ts';
import {
  amountSteps,
  centsArgument,
  inCents,
  marginArgument,
  markupArgument,
  moneyArgument,
  plainMoney,
} from './arguments.ts';
import { notMarkup, ownFigures } from './cautions.ts';
import { priceBar } from './price-bar.ts';

const costArgument = moneyArgument('the whole cost, overhead included');

/** Selling price by margin. Money. Source: trade journal of 2024. */
export const priceMargin = defineFunction({
  name: 'PRICE.MARGIN',
  says: 'The selling price that leaves a margin, a share of the price itself.',
  words: ['selling price', 'profit margin', 'price from cost', 'sell price', 'what to charge'],
  gives: { label: 'Price', unit: 'money' },
  arguments: {
    cost: costArgument,
    margin: marginArgument('the share of the price that is left over the cost'),
    cents: centsArgument,
  },
  formula: [
    String.raw`\text{price} = \frac{\text{cost}}{1 - \text{margin}}, \quad \text{markup} = \frac{\text{margin}}{1 - \text{margin}}`,
  ],
  work: ({ cost, margin, cents }) => {
    const exact = priceByMargin(cost, margin);
    return done({
      exact,
      markup: markupForMargin(margin),
      asMarkup: priceByMarkup(cost, margin),
      asked: inCents(exact, cents),
    });
  },
  result: ({ asked }) => asked,
  steps: ({ exact, markup, asMarkup }, { cost, margin, cents }) => [
    {
      label: 'As a markup on cost',
      sum: `${figure(margin, 4)} ÷ (1 − ${figure(margin, 4)})`,
      value: markup,
      unit: 'percent',
      source: 'price-arithmetic',
    },
    {
      label: 'What the same number as a markup would give',
      sum: `${plainMoney(cost)} × (1 + ${figure(margin, 4)})`,
      value: asMarkup,
      unit: 'money',
      source: 'markup-article-2024',
    },
    ...amountSteps(
      'Price',
      `${plainMoney(cost)} ÷ (1 − ${figure(margin, 4)})`,
      exact,
      cents,
      'markup-article-2024',
    ),
  ],
  drawing: ({ exact }, { cost, margin }) =>
    priceBar({
      title: 'Cost and margin in a price',
      describes: `Of a price of ${sayMoney(exact)} the cost takes ${sayMoney(cost)}; ${sayValue(margin, 'percent')} of the price is left.`,
      parts: [
        { name: 'cost', amount: cost },
        { name: 'left over', amount: exact - cost },
      ],
      total: `price ${sayMoney(exact)}`,
    }),
  cautions: () => [notMarkup, ownFigures],
  sources: ['markup-article-2024', 'margin-article-2026'],
  examples: [
    {
      says: 'a cost of 80,000 with a margin of 20 %',
      given: { cost: 80_000, margin: 0.2 },
      gives: 100_000,
      tolerance: 1e-6,
      source: 'margin-article-2026',
    },
    {
      says: 'a cost of 100 with a margin of 20 %',
      given: { cost: 100, margin: 0.2 },
      gives: 125,
      tolerance: 1e-9,
      source: 'markup-article-2024',
    },
    {
      says: 'a job of 3128.67 with a net margin of 18 %, to the cent',
      given: { cost: 3128.67, margin: 0.18, cents: 'cents' },
      gives: 3815.45,
      source: 'price-arithmetic',
    },
  ],
});

/** Selling price by markup. Money. Source: trade journal of 2024. */
export const priceMarkup = defineFunction({
  name: 'PRICE.MARKUP',
  says: 'The selling price with a markup, a share of the cost put on top.',
  words: ['markup', 'mark up', 'cost plus', 'add percent to cost', 'selling price by markup'],
  gives: { label: 'Price', unit: 'money' },
  arguments: {
    cost: costArgument,
    markup: markupArgument('the share of the cost to put on top'),
    cents: centsArgument,
  },
  formula: [
    String.raw`\text{price} = \text{cost} \times (1 + \text{markup}), \quad \text{margin} = \frac{\text{markup}}{1 + \text{markup}}`,
  ],
  work: ({ cost, markup, cents }) => {
    const exact = priceByMarkup(cost, markup);
    return done({ exact, margin: marginOfMarkup(markup), asked: inCents(exact, cents) });
  },
  result: ({ asked }) => asked,
  steps: ({ exact, margin }, { cost, markup, cents }) => [
    {
      label: 'As a margin of the price',
      sum: `${figure(markup, 4)} ÷ (1 + ${figure(markup, 4)})`,
      value: margin,
      unit: 'percent',
      source: 'price-arithmetic',
    },
    ...amountSteps(
      'Price',
      `${plainMoney(cost)} × (1 + ${figure(markup, 4)})`,
      exact,
      cents,
      'markup-article-2024',
    ),
  ],
  drawing: ({ exact, margin }, { cost }) =>
    priceBar({
      title: 'Cost and markup in a price',
      describes: `A cost of ${sayMoney(cost)} is marked up to ${sayMoney(exact)}, which leaves ${sayValue(margin, 'percent')} of the price.`,
      parts: [
        { name: 'cost', amount: cost },
        { name: 'markup', amount: exact - cost },
      ],
      total: `price ${sayMoney(exact)}`,
    }),
  cautions: () => [notMarkup, ownFigures],
  sources: ['markup-article-2024', 'margin-article-2026'],
  examples: [
    {
      says: 'a cost of 100 marked up by 20 %',
      given: { cost: 100, markup: 0.2 },
      gives: 120,
      source: 'markup-article-2024',
    },
    {
      says: 'a cost of 80,000 marked up by 20 %',
      given: { cost: 80_000, markup: 0.2 },
      gives: 96_000,
      source: 'margin-article-2026',
    },
  ],
});
