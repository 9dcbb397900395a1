import { done } from '../../base/outcome.ts';
import { laborCost } from '../../trade/price/labor.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayMoney } from '../say.ts';
import { amountSteps, centsArgument, inCents, moneyArgument, plainMoney, share } from './arguments.ts';
import { ownFigures } from './cautions.ts';
import { priceBar } from './price-bar.ts';

/** Labor at a wage and its burden, or at a rate that has the burden in it. Money. Source: arithmetic. */
export const priceLabor = defineFunction({
  name: 'PRICE.LABOR',
  says: 'What hours of work cost, with the burden on the wage.',
  words: ['labor cost', 'labor cost', 'wages', 'burden', 'burdened labor', 'hours times rate'],
  gives: { label: 'Labor', unit: 'money' },
  arguments: {
    hours: quantity('ratio', {
      says: 'the hours of all workers together; PRICE.HOURS gives them',
      least: 0,
      most: 1_000_000,
      why: 'no job of a shop takes a million hours',
    }),
    wage: moneyArgument('what one hour costs: the wage, or a rate with the burden in it'),
    burden: optional(
      share(
        'the share on top of the wage for taxes, insurance, benefits and unbilled hours; PRICE.WORKER gives it',
      ),
      0,
      'a rate that has the burden in it needs none; on a bare wage it was 43 % in construction in 2022',
    ),
    cents: centsArgument,
  },
  formula: [String.raw`\text{labor} = \text{hours} \times \text{wage} \times (1 + \text{burden})`],
  work: ({ hours, wage, burden, cents }) => {
    const labor = laborCost(hours, wage, burden);
    return done({ ...labor, asked: inCents(labor.cost, cents) });
  },
  result: ({ asked }) => asked,
  steps: ({ rate, cost }, { hours, wage, burden, cents }) => [
    {
      label: 'One hour',
      sum: `${plainMoney(wage)} × (1 + ${figure(burden, 4)})`,
      value: rate,
      unit: 'money',
      source: 'price-arithmetic',
    },
    ...amountSteps('Labor', `${figure(hours, 4)} × ${plainMoney(rate)}`, cost, cents),
  ],
  drawing: ({ cost }, { hours, wage }) =>
    priceBar({
      title: 'Wage and burden',
      describes: `${figure(hours, 2)} hours cost ${sayMoney(cost)}, of which ${sayMoney(hours * wage)} is the wage or the rate itself.`,
      parts: [
        { name: 'wage', amount: hours * wage },
        { name: 'burden', amount: cost - hours * wage },
      ],
      total: sayMoney(cost),
    }),
  cautions: (_, { burden }) => [
    ownFigures,
    ...(burden === 0
      ? [
          {
            level: 'look',
            sentence:
              'No burden is added. That is right for a rate with the burden in it, and far too little for a bare wage.',
            source: 'compensation-2022',
          } as const,
        ]
      : []),
  ],
  sources: ['price-arithmetic', 'compensation-2022'],
  examples: [
    {
      says: '23.5 hours at 45.47 with the burden in it',
      given: { hours: 23.5, wage: 45.47 },
      gives: 1068.545,
      tolerance: 1e-6,
    },
    {
      says: '10 hours at a wage of 28 with 62.376 % burden, to the cent',
      given: { hours: 10, wage: 28, burden: 0.62376, cents: 'cents' },
      gives: 454.65,
    },
  ],
});
