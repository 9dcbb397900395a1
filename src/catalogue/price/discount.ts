import { done } from '../../base/outcome.ts';
import { marginAfterDiscount } from '../../trade/price/margin.ts';
import { defineFunction } from '../call.ts';
import { figure, sayMoney, sayValue } from '../say.ts';
import { marginArgument } from './arguments.ts';
import { ownFigures } from './cautions.ts';
import { priceBar } from './price-bar.ts';

/** The margin that is left after a discount, as a share of the new price. */
export const priceDiscount = defineFunction({
  name: 'PRICE.DISCOUNT',
  says: 'The margin that is left when a discount comes off the price.',
  words: ['discount', 'knock off', 'margin after discount', 'rebate', 'price cut'],
  gives: { label: 'Margin left', unit: 'percent' },
  arguments: {
    margin: marginArgument('the margin before the discount'),
    discount: marginArgument('the share of the price that is given away'),
  },
  formula: [String.raw`\text{margin left} = 1 - \frac{1 - \text{margin}}{1 - \text{discount}}`],
  work: ({ margin, discount }) => done({ left: marginAfterDiscount(margin, discount) }),
  result: ({ left }) => left,
  steps: ({ left }, { margin, discount }) => [
    {
      label: 'Margin left',
      sum: `1 − (1 − ${figure(margin, 4)}) ÷ (1 − ${figure(discount, 4)})`,
      value: left,
      unit: 'percent',
      source: 'price-arithmetic',
    },
  ],
  drawing: ({ left }, { margin, discount }) =>
    priceBar({
      title: 'A discount on a price of 100',
      describes: `Of a price of 100 the cost takes ${sayMoney(100 * (1 - margin))} and the discount ${sayMoney(100 * discount)}; the margin left is ${sayValue(left, 'percent')} of what is paid.`,
      parts: [
        { name: 'cost', amount: 100 * (1 - margin) },
        { name: 'left', amount: Math.max(0, 100 * (margin - discount)) },
        { name: 'discount', amount: 100 * Math.min(discount, margin) },
      ],
      total: `price before ${sayMoney(100)}`,
    }),
  cautions: ({ left }) => [
    ownFigures,
    ...(left < 0
      ? [
          {
            level: 'look',
            sentence: 'The discount is larger than the margin: the job would be sold below its cost.',
          } as const,
        ]
      : []),
  ],
  sources: ['price-arithmetic'],
  examples: [
    {
      says: 'a margin of 30 % after 10 % off',
      given: { margin: 0.3, discount: 0.1 },
      gives: 0.222222,
      tolerance: 1e-6,
    },
  ],
});
