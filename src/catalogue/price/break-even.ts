import { done } from '../../base/outcome.ts';
import { breakEven } from '../../trade/price/overhead.ts';
import { quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayMoney } from '../say.ts';
import { amountSteps, centsArgument, inCents, moneyArgument, plainMoney } from './arguments.ts';
import { ownFigures } from './cautions.ts';
import { priceBar } from './price-bar.ts';

/** Sales at which the gross margin just pays the overhead. Money. Source: training page. */
export const priceBreakEven = defineFunction({
  name: 'PRICE.BREAKEVEN',
  says: 'The sales of a year at which the gross margin just pays the overhead.',
  words: ['break even', 'breakeven', 'how much must i sell', 'cover overhead'],
  gives: { label: 'Break-even sales', unit: 'money' },
  arguments: {
    overhead: moneyArgument('the overhead of a year'),
    margin: quantity('percent', {
      says: 'the gross margin, a share of sales that is left over direct cost: 35 % is 0.35',
      least: 0.01,
      most: 1,
      why: 'without a margin no sales ever pay the overhead',
    }),
    cents: centsArgument,
  },
  formula: [String.raw`\text{sales} = \frac{\text{overhead}}{\text{margin}}`],
  work: ({ overhead, margin, cents }) => {
    const exact = breakEven(overhead, margin);
    return done({ exact, asked: inCents(exact, cents) });
  },
  result: ({ asked }) => asked,
  steps: ({ exact }, { overhead, margin, cents }) =>
    amountSteps(
      'Break-even sales',
      `${plainMoney(overhead)} ÷ ${figure(margin, 4)}`,
      exact,
      cents,
      'break-even',
    ),
  drawing: ({ exact }, { overhead }) =>
    priceBar({
      title: 'Break-even sales',
      describes: `At sales of ${sayMoney(exact)} the margin just pays the overhead of ${sayMoney(overhead)}.`,
      parts: [
        { name: 'direct cost', amount: exact - overhead },
        { name: 'overhead', amount: overhead },
      ],
      total: `sales ${sayMoney(exact)}`,
    }),
  cautions: () => [ownFigures],
  sources: ['break-even'],
  examples: [
    {
      says: '180,000 of overhead at a gross margin of 35 %',
      given: { overhead: 180_000, margin: 0.35 },
      gives: 514_285.7143,
      tolerance: 0.0001,
      source: 'break-even',
    },
  ],
});
