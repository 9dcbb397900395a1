import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { Money } from '../../base/quantity.ts';
import { overheadOn, overheadPerHour, overheadShare } from '../../trade/price/overhead.ts';
import { quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { cellList } from '../cell-list.ts';
import type { CallFault } from '../fault.ts';
import { figure } from '../say.ts';
import { amountSteps, centsArgument, inCents, moneyArgument, plainMoney, share } from './arguments.ts';
import { ownFigures } from './cautions.ts';

interface OverheadOfParts {
  readonly parts: readonly { readonly cost: Money; readonly rate: number }[];
  readonly shares: readonly Money[];
  readonly overhead: Money;
  readonly asked: Money;
}

/** Overhead on a job: each part of its cost at a rate of its own. Faults: `unlike_lists`, `half_a_pair`. */
export const priceOverhead = defineFunction({
  name: 'PRICE.OVERHEAD',
  says: 'The overhead that a job must carry: one rate on its cost, or a rate for each part of it.',
  words: ['overhead', 'office cost', 'overhead recovery', 'rent and trucks', 'indirect cost'],
  gives: { label: 'Overhead', unit: 'money' },
  arguments: {
    costs: cellList(moneyArgument('the direct cost, or a column of its parts: material, labor, others')),
    rates: cellList(share('the overhead rate, or one beside each part')),
    cents: centsArgument,
  },
  formula: [String.raw`\text{overhead} = \sum_i \text{costs}_i \times \text{rates}_i`],
  work: ({ costs, rates, cents }): Outcome<OverheadOfParts, CallFault> => {
    if (rates.length !== costs.length) {
      return failed({ code: 'unlike_lists', argument: 'rates', got: rates.length, wanted: costs.length });
    }
    const parts: { cost: Money; rate: number }[] = [];
    for (const [index, cost] of costs.entries()) {
      const rate = rates[index] ?? null;
      if (cost === null) continue;
      if (rate === null) return failed({ code: 'half_a_pair', row: index + 1, has: 'costs', lacks: 'rates' });
      parts.push({ cost, rate });
    }
    const found = overheadOn(parts);
    return done({ parts, ...found, asked: inCents(found.overhead, cents) });
  },
  result: ({ asked }) => asked,
  steps: ({ parts, shares, overhead }, { cents }) => [
    ...parts.map(
      ({ cost, rate }, index) =>
        ({
          label: parts.length === 1 ? 'On the cost' : `On part ${index + 1}`,
          sum: `${plainMoney(cost)} × ${figure(rate, 4)}`,
          value: shares[index] ?? 0,
          unit: 'money',
          source: 'several-overheads',
        }) as const,
    ),
    ...amountSteps(
      'Overhead',
      shares.length === 0 ? 'no parts' : shares.map(plainMoney).join(' + '),
      overhead,
      cents,
    ),
  ],
  cautions: () => [ownFigures, countedOnce],
  sources: ['several-overheads', 'overhead-guide'],
  examples: [
    {
      says: '10,000 of material at 10 %, 2,000 of subcontracts at 5 %, 8,000 of labor at 60 %',
      given: { costs: [[10_000], [2000], [8000]], rates: [[0.1], [0.05], [0.6]] },
      gives: 5900,
      tolerance: 1e-6,
      source: 'several-overheads',
    },
    {
      says: '15 % on 100,000',
      given: { costs: 100_000, rates: 0.15 },
      gives: 15_000,
      tolerance: 1e-6,
      source: 'overhead-guide',
    },
  ],
});

const countedOnce = {
  level: 'care',
  sentence:
    'Overhead is counted once: what is in the burden of the wages, or in an hourly rate, stays out here.',
  source: 'price-arithmetic',
} as const;

/** A year's overhead as a share of a year's direct cost. */
export const priceShare = defineFunction({
  name: 'PRICE.SHARE',
  says: 'The overhead of a year as a share of its direct cost, to put on every job.',
  words: ['overhead rate', 'overhead percentage', 'overhead percent', 'burden on cost'],
  gives: { label: 'Overhead rate', unit: 'percent' },
  arguments: {
    overhead: moneyArgument('the overhead of a year'),
    direct: moneyArgument('the direct cost of all jobs of that year', 1),
  },
  formula: [String.raw`\text{rate} = \frac{\text{overhead}}{\text{direct}}`],
  work: ({ overhead, direct }) => done({ rate: overheadShare(overhead, direct) }),
  result: ({ rate }) => rate,
  steps: ({ rate }, { overhead, direct }) => [
    {
      label: 'Overhead rate',
      sum: `${plainMoney(overhead)} ÷ ${plainMoney(direct)}`,
      value: rate,
      unit: 'percent',
      source: 'overhead-guide',
    },
  ],
  cautions: () => [ownFigures, countedOnce],
  sources: ['overhead-guide'],
  examples: [
    {
      says: '300,000 of overhead on 2,000,000',
      given: { overhead: 300_000, direct: 2_000_000 },
      gives: 0.15,
      tolerance: 1e-12,
      source: 'overhead-guide',
    },
  ],
});

/** A year's overhead on every productive hour. Money. */
export const priceHourly = defineFunction({
  name: 'PRICE.HOURLY',
  says: 'The overhead that every productive hour of the crew must carry.',
  words: ['overhead per hour', 'hourly overhead', 'overhead recovery', 'labor rate with overhead'],
  gives: { label: 'Overhead of an hour', unit: 'money' },
  arguments: {
    overhead: moneyArgument('the overhead of a year'),
    workers: quantity('ratio', {
      says: 'how many workers are charged to jobs; a half-time one is 0.5',
      least: 0.1,
      most: 10_000,
      why: 'somebody must do the work',
    }),
    hours: quantity('ratio', {
      says: 'the productive hours of one worker in a year',
      least: 1,
      most: 8784,
      why: 'a year has no more than 8784 hours',
    }),
    cents: centsArgument,
  },
  formula: [
    String.raw`\text{overhead of an hour} = \frac{\text{overhead}}{\text{workers} \times \text{hours}}`,
  ],
  work: ({ overhead, workers, hours, cents }) => {
    const exact = overheadPerHour(overhead, workers, hours);
    return done({ exact, asked: inCents(exact, cents) });
  },
  result: ({ asked }) => asked,
  steps: ({ exact }, { overhead, workers, hours, cents }) => [
    {
      label: 'Productive hours of the crew',
      sum: `${figure(workers, 4)} × ${figure(hours, 4)}`,
      value: workers * hours,
      unit: 'ratio',
    },
    ...amountSteps(
      'Overhead of an hour',
      `${plainMoney(overhead)} ÷ ${figure(workers * hours, 4)}`,
      exact,
      cents,
      'overhead-per-hour',
    ),
  ],
  cautions: () => [ownFigures, countedOnce],
  sources: ['overhead-per-hour'],
  examples: [
    {
      says: '180,000 over four workers with 1,700 hours each, to the cent',
      given: { overhead: 180_000, workers: 4, hours: 1700, cents: 'cents' },
      gives: 26.47,
      source: 'overhead-per-hour',
    },
  ],
});
