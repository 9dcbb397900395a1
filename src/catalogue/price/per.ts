import { done } from '../../base/outcome.ts';
import { feetFromInches } from '../../base/quantity.ts';
import { pricePerFoot, pricePerPound } from '../../trade/price/compare.ts';
import { quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import { amountSteps, centsArgument, inCents, moneyArgument, plainMoney } from './arguments.ts';
import { ownFigures } from './cautions.ts';

const priceArgument = moneyArgument('the price, or the cost, of all of it');

/** Price over length, which comes in inches as every length does. Money. */
export const priceFoot = defineFunction({
  name: 'PRICE.FOOT',
  says: 'The price of one foot of duct.',
  words: ['price per foot', 'cost per foot', 'dollars a foot', 'lineal foot', 'running foot'],
  gives: { label: 'Price of a foot', unit: 'money' },
  arguments: {
    price: priceArgument,
    length: quantity('in', {
      says: 'the length of the duct',
      least: 1,
      most: 1_200_000,
      why: 'a length of more than 100,000 ft is most likely a slip of the unit',
    }),
    cents: centsArgument,
  },
  formula: [String.raw`\text{price of a foot} = \frac{12 \times \text{price}}{\text{length}}`],
  work: ({ price, length, cents }) => {
    const exact = pricePerFoot(price, feetFromInches(length));
    return done({ exact, asked: inCents(exact, cents) });
  },
  result: ({ asked }) => asked,
  steps: ({ exact }, { price, length, cents }) =>
    amountSteps('Price of a foot', `${plainMoney(price)} ÷ (${figure(length, 4)} ÷ 12)`, exact, cents),
  cautions: () => [ownFigures, sameThing],
  sources: ['price-arithmetic'],
  examples: [{ says: '300 for 40 ft', given: { price: 300, length: 480 }, gives: 7.5 }],
});

/** Price over weight. Money. */
export const pricePound = defineFunction({
  name: 'PRICE.POUND',
  says: 'The price of one pound of duct.',
  words: ['price per pound', 'cost per pound', 'dollars a pound', 'by the pound', 'by weight'],
  gives: { label: 'Price of a pound', unit: 'money' },
  arguments: {
    price: priceArgument,
    weight: quantity('lb', {
      says: 'the weight of the metal; WEIGHT.DUCT gives it',
      least: 0.01,
      most: 10_000_000,
      why: 'a job weighs something, and less than ten million pounds',
    }),
    cents: centsArgument,
  },
  formula: [String.raw`\text{price of a pound} = \frac{\text{price}}{\text{weight}}`],
  work: ({ price, weight, cents }) => {
    const exact = pricePerPound(price, weight);
    return done({ exact, asked: inCents(exact, cents) });
  },
  result: ({ asked }) => asked,
  steps: ({ exact }, { price, weight, cents }) =>
    amountSteps('Price of a pound', `${plainMoney(price)} ÷ ${figure(weight, 4)}`, exact, cents),
  cautions: () => [ownFigures, sameThing],
  sources: ['price-arithmetic'],
  examples: [{ says: '300 for 60 lb', given: { price: 300, weight: 60 }, gives: 5 }],
});

const sameThing = {
  level: 'care',
  sentence:
    'Prices by the foot or by the pound compare only like with like: the same sizes, fittings, wrap and height above the floor.',
} as const;
