import { done } from '../../base/outcome.ts';
import { compare } from '../../trade/price/compare.ts';
import { choice, optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Mark } from '../drawing.ts';
import { figure, sayMoney, sayValue } from '../say.ts';
import { moneyArgument, plainMoney } from './arguments.ts';

/** Two prices for the same thing. Money, or a share of the first. Source: arithmetic. */
export const priceCompare = defineFunction({
  name: 'PRICE.COMPARE',
  says: 'How much more or less a second option costs than the first, in money or as a share of it.',
  words: ['compare prices', 'difference', 'which is cheaper', 'percent more', 'two options', 'savings'],
  gives: { label: 'Difference', unit: 'money', orUnits: ['percent'] },
  unitOf: ({ what }) => (what === 'share' ? 'percent' : 'money'),
  arguments: {
    first: moneyArgument('the price of the first option, against which the other is held', 0.01),
    second: moneyArgument('the price of the second option'),
    what: optional(
      choice(['difference', 'share'], {
        says: 'the difference in money, or as a share of the first price; below zero where the second is cheaper',
      }),
      'difference',
      'money is what is paid',
    ),
  },
  formula: [
    String.raw`\text{difference} = \text{second} - \text{first}, \quad \text{share} = \frac{\text{second}}{\text{first}} - 1`,
  ],
  work: ({ first, second, what }) => {
    const found = compare(first, second);
    return done({ ...found, asked: found[what] });
  },
  result: ({ asked }) => asked,
  steps: ({ difference, share }, { first, second, what }) =>
    what === 'difference'
      ? [
          {
            label: 'Difference',
            sum: `${plainMoney(second)} − ${plainMoney(first)}`,
            value: difference,
            unit: 'money',
            source: 'price-arithmetic',
          },
        ]
      : [
          {
            label: 'Difference as a share of the first',
            sum: `${plainMoney(second)} ÷ ${plainMoney(first)} − 1`,
            value: share,
            unit: 'percent',
            source: 'price-arithmetic',
          },
        ],
  drawing: ({ difference, share }, { first, second }) => {
    const most = Math.max(first, second);
    return {
      title: 'Two prices',
      describes: `The first option costs ${sayMoney(first)} and the second ${sayMoney(second)}, ${sayMoney(Math.abs(difference))} ${difference < 0 ? 'less' : 'more'}.`,
      height: 156,
      marks: [
        ...bar('first', first, most, 20),
        ...bar('second', second, most, 74),
        {
          type: 'label',
          at: { x: 20, y: 144 },
          text: `${difference < 0 ? 'less by' : 'more by'} ${sayMoney(Math.abs(difference))}, ${sayValue(Math.abs(Math.round(share * 1000) / 1000), 'percent')}`,
          anchor: 'start',
        },
      ],
    };
  },
  cautions: () => [
    {
      level: 'care',
      sentence: `A share depends on which price it is held against: 20 % more one way is ${figure(100 - 100 / 1.2, 1)} % less the other way.`,
      source: 'price-arithmetic',
    },
  ],
  sources: ['price-arithmetic'],
  examples: [
    {
      says: 'a second quote of 96,000 beside 80,000',
      given: { first: 80_000, second: 96_000 },
      gives: 16_000,
    },
    {
      says: 'the same as a share',
      given: { first: 80_000, second: 96_000, what: 'share' },
      gives: 0.2,
      tolerance: 1e-12,
    },
  ],
});

function bar(name: string, amount: number, most: number, top: number): readonly Mark[] {
  const right = 20 + (320 * amount) / most;
  return [
    { type: 'label', at: { x: 20, y: top + 10 }, text: `${name} ${sayMoney(amount)}`, anchor: 'start' },
    {
      type: 'outline',
      closed: true,
      role: name === 'first' ? 'metal' : 'wrap',
      points: [
        { x: 20, y: top + 16 },
        { x: right, y: top + 16 },
        { x: right, y: top + 40 },
        { x: 20, y: top + 40 },
      ],
    },
  ];
}
