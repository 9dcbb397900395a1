import { done } from '../../base/outcome.ts';
import { moneyRoundings, roundMoney } from '../../trade/price/cents.ts';
import { choice, optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import { moneyArgument, mostMoney } from './arguments.ts';

/** An amount in whole steps of money. Source: custom of invoices. */
export const priceCents = defineFunction({
  name: 'PRICE.CENTS',
  says: 'An amount rounded to the cent, or to another step of money.',
  words: ['round money', 'to the cent', 'round up price', 'nearest dollar', 'half cent'],
  gives: { label: 'Rounded', unit: 'money' },
  arguments: {
    amount: moneyArgument('the amount to round', -mostMoney),
    step: optional(
      choice([0.01, 0.05, 0.1, 0.25, 1, 5, 10, 100], { says: 'the step of money: 0.01 is a cent' }),
      0.01,
      'invoices are written in cents',
    ),
    round: optional(
      choice(moneyRoundings, {
        says: 'which way to go from between two steps; nearest takes half a step up, and below zero away from it',
      }),
      'nearest',
      'half a cent up is the custom of invoices (common practice, no source)',
    ),
  },
  formula: [
    String.raw`\text{rounded} = \text{step} \times \left\lfloor \frac{\text{amount}}{\text{step}} + \tfrac{1}{2} \right\rfloor \text{ (nearest)}`,
  ],
  work: ({ amount, step, round }) => done({ rounded: roundMoney(amount, step, round) }),
  result: ({ rounded }) => rounded,
  steps: ({ rounded }, { amount, step, round }) => [
    { label: 'Exactly', sum: '', value: amount, unit: 'money' },
    {
      label: 'Rounded',
      sum: `${figure(amount, 6)}, ${round === 'nearest' ? 'to the nearest' : `${round} to a`} ${figure(step)}`,
      value: rounded,
      unit: 'money',
      source: 'cents',
    },
  ],
  cautions: () => [
    {
      level: 'care',
      sentence:
        'Round once, where the amount is printed. Lines that are rounded each by themselves can add up to another cent than their exact sum.',
      source: 'cents',
    },
  ],
  sources: ['cents'],
  examples: [
    {
      says: '1250.00 of material with 7.25 % tax',
      given: { amount: 1340.625 },
      gives: 1340.63,
      source: 'cents',
    },
    { says: 'a quote up to whole tens', given: { amount: 3815.45, step: 10, round: 'up' }, gives: 3820 },
  ],
});
