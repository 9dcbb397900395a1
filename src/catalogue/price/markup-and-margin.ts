import { done } from '../../base/outcome.ts';
import { marginOfMarkup, markupForMargin } from '../../trade/price/margin.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import { marginArgument, markupArgument } from './arguments.ts';
import { notMarkup } from './cautions.ts';

/** The markup that leaves a margin, as a share of the cost. */
export const priceMarkupFor = defineFunction({
  name: 'PRICE.MARKUPFOR',
  says: 'The markup on cost that leaves a wanted margin of the price.',
  words: ['margin to markup', 'markup for margin', 'what markup', 'convert margin'],
  gives: { label: 'Markup', unit: 'percent' },
  arguments: { margin: marginArgument('the share of the price to be left over the cost') },
  formula: [String.raw`\text{markup} = \frac{\text{margin}}{1 - \text{margin}}`],
  work: ({ margin }) => done({ markup: markupForMargin(margin) }),
  result: ({ markup }) => markup,
  steps: ({ markup }, { margin }) => [
    {
      label: 'Markup',
      sum: `${figure(margin, 4)} ÷ (1 − ${figure(margin, 4)})`,
      value: markup,
      unit: 'percent',
      source: 'price-arithmetic',
    },
  ],
  cautions: () => [notMarkup],
  sources: ['price-arithmetic', 'markup-article-2024'],
  examples: [
    { says: 'for a margin of 30 %', given: { margin: 0.3 }, gives: 0.428571, tolerance: 1e-6 },
    { says: 'for a margin of 15 %', given: { margin: 0.15 }, gives: 0.176471, tolerance: 1e-6 },
  ],
});

/** The margin that a markup leaves, as a share of the price. */
export const priceMarginOf = defineFunction({
  name: 'PRICE.MARGINOF',
  says: 'The margin of the price that a markup on cost leaves.',
  words: ['markup to margin', 'margin of a markup', 'what margin', 'convert markup'],
  gives: { label: 'Margin', unit: 'percent' },
  arguments: { markup: markupArgument('the share of the cost that is put on top') },
  formula: [String.raw`\text{margin} = \frac{\text{markup}}{1 + \text{markup}}`],
  work: ({ markup }) => done({ margin: marginOfMarkup(markup) }),
  result: ({ margin }) => margin,
  steps: ({ margin }, { markup }) => [
    {
      label: 'Margin',
      sum: `${figure(markup, 4)} ÷ (1 + ${figure(markup, 4)})`,
      value: margin,
      unit: 'percent',
      source: 'price-arithmetic',
    },
  ],
  cautions: () => [notMarkup],
  sources: ['price-arithmetic', 'markup-article-2024'],
  examples: [{ says: 'of a markup of 20 %', given: { markup: 0.2 }, gives: 0.166667, tolerance: 1e-6 }],
});
