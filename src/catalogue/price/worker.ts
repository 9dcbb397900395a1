import { done, type Outcome } from '../../base/outcome.ts';
import { type Money, money } from '../../base/quantity.ts';
import { hourBases, type WorkerCost, workerCost } from '../../trade/price/labor.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayMoney } from '../say.ts';
import type { Step } from '../working.ts';
import { moneyArgument, plainMoney, share } from './arguments.ts';
import { ownFigures, payrollRules } from './cautions.ts';
import { priceBar } from './price-bar.ts';

interface Worker extends WorkerCost {
  readonly asked: number;
}

const hoursOf = (says: string) =>
  quantity('ratio', { says, least: 1, most: 8784, why: 'a year has no more than 8784 hours' });

const capped = (says: string, base: boolean) =>
  optional<number>(
    base ? moneyArgument(says) : share(says, 1),
    0,
    'it differs by state and by year, so type your own',
  );

/** What a worker costs in a year, in an hour, and over the wage. Faults: `productive_over_paid`. Source: arithmetic. */
export const priceWorker = defineFunction({
  name: 'PRICE.WORKER',
  says: 'What a worker really costs: the rate of a productive hour, the year, or the burden on the wage.',
  words: ['burdened rate', 'labor burden', 'true cost of labor', 'payroll taxes', 'hourly rate', 'shop rate'],
  gives: { label: 'Rate', unit: 'money', orUnits: ['percent'] },
  unitOf: ({ what }) => (what === 'burden' ? 'percent' : 'money'),
  arguments: {
    wage: moneyArgument('the wage of one hour', 0.01),
    paid_hours: optional(hoursOf('the hours paid in a year, leave included'), 2080, '52 weeks of 40 hours'),
    productive_hours: hoursOf(
      'the hours that can be charged to jobs: without leave, training, waiting and unbilled travel',
    ),
    payroll_tax: optional(
      share('the employer’s payroll taxes on all pay', 1),
      0.0765,
      'social security and medicare, 6.2 % + 1.45 % in 2024, as a payroll summary tells it',
    ),
    insurance: optional(
      share('insurance that goes by the pay, such as workers compensation', 2),
      0,
      'it differs by trade and record, so type your own',
    ),
    benefits: optional(
      moneyArgument('what benefits cost for each paid hour'),
      0,
      'it differs from shop to shop, so type your own',
    ),
    federal_rate: optional(
      share('the federal unemployment tax on the first part of the pay', 1),
      0.006,
      '6.0 % less the usual credit of 5.4 %, as summaries tell it',
    ),
    federal_base: optional(
      moneyArgument('the pay up to which it is due'),
      7000,
      'the first 7,000 of a year, as summaries tell it',
    ),
    state_rate: capped('the state unemployment tax on the first part of the pay', false),
    state_base: capped('the pay up to which that is due', true),
    per: optional(
      choice(hourBases, { says: 'whether the rate is for a productive hour or for a paid one' }),
      'productive',
      'only productive hours can be charged, so they must carry the year',
    ),
    what: optional(
      choice(['rate', 'year', 'burden', 'pay'], {
        says: 'the rate of an hour, the cost of the year, the burden as a share of the wage, or the pay of the year',
      }),
      'rate',
      'it is what labor is figured with',
    ),
  },
  formula: [
    String.raw`\text{year} = \text{wage} \times \text{paid\_hours} \times (1 + \text{payroll\_tax} + \text{insurance}) + \text{benefits} \times \text{paid\_hours} + \sum_i \text{rate}_i \times \min(\text{pay}, \text{base}_i)`,
    String.raw`\text{rate} = \frac{\text{year}}{\text{productive\_hours}}, \quad \text{burden} = \frac{\text{rate}}{\text{wage}} - 1`,
  ],
  work: (given): Outcome<Worker, CallFault> => {
    const cost = fromTrade(
      workerCost(
        {
          wage: given.wage,
          paidHours: given.paid_hours,
          productiveHours: given.productive_hours,
          payrollTax: given.payroll_tax,
          capped: [
            { rate: given.federal_rate, base: money(given.federal_base) },
            { rate: given.state_rate, base: money(given.state_base) },
          ],
          insurance: given.insurance,
          benefits: given.benefits,
        },
        given.per,
      ),
    );
    return cost.ok ? done({ ...cost.value, asked: cost.value[given.what] }) : cost;
  },
  result: ({ asked }) => asked,
  steps: (cost, given): readonly Step[] => {
    const line = (label: string, sum: string, value: Money, source?: Step['source']): Step => ({
      label,
      sum,
      value,
      unit: 'money',
      ...(source === undefined ? {} : { source }),
    });
    const pay = line(
      'Pay of a year',
      `${plainMoney(given.wage)} × ${figure(given.paid_hours)}`,
      cost.pay,
      'price-arithmetic',
    );
    if (given.what === 'pay') return [pay];
    const [federal = money(0), state = money(0)] = cost.cappedTaxes;
    const sum = [cost.pay, cost.payrollTax, federal, state, cost.insurance, cost.benefits];
    const year = [
      pay,
      line(
        'Payroll taxes',
        `${plainMoney(cost.pay)} × ${figure(given.payroll_tax, 5)}`,
        cost.payrollTax,
        'payroll-taxes',
      ),
      line(
        'Federal unemployment tax',
        `${figure(given.federal_rate, 5)} × the first ${plainMoney(Math.min(cost.pay, given.federal_base))}`,
        federal,
        'payroll-taxes',
      ),
      line(
        'State unemployment tax',
        `${figure(given.state_rate, 5)} × the first ${plainMoney(Math.min(cost.pay, given.state_base))}`,
        state,
      ),
      line('Insurance', `${plainMoney(cost.pay)} × ${figure(given.insurance, 5)}`, cost.insurance),
      line('Benefits', `${plainMoney(given.benefits)} × ${figure(given.paid_hours)}`, cost.benefits),
      line('Year', sum.map(plainMoney).join(' + '), cost.year, 'price-arithmetic'),
    ];
    if (given.what === 'year') return year;
    const hours = given.per === 'paid' ? given.paid_hours : given.productive_hours;
    const rate = line(
      given.per === 'paid' ? 'Rate of a paid hour' : 'Rate of a productive hour',
      `${plainMoney(cost.year)} ÷ ${figure(hours)}`,
      cost.rate,
      'price-arithmetic',
    );
    if (given.what === 'rate') return [...year, rate];
    return [
      ...year,
      rate,
      {
        label: 'Burden',
        sum: `${plainMoney(cost.rate)} ÷ ${plainMoney(given.wage)} − 1`,
        value: cost.burden,
        unit: 'percent',
        source: 'price-arithmetic',
      },
    ];
  },
  drawing: (cost) =>
    priceBar({
      title: 'A year of one worker',
      describes: `A worker costs ${sayMoney(cost.year)} in a year, of which ${sayMoney(cost.pay)} is pay; an hour costs ${sayMoney(cost.rate)}.`,
      parts: [
        { name: 'pay', amount: cost.pay },
        {
          name: 'taxes on pay',
          amount: cost.payrollTax + cost.cappedTaxes.reduce((sum, tax) => sum + tax, 0),
        },
        { name: 'insurance', amount: cost.insurance },
        { name: 'benefits', amount: cost.benefits },
      ],
      total: `year ${sayMoney(cost.year)}`,
    }),
  cautions: () => [
    payrollRules,
    ownFigures,
    {
      level: 'care',
      sentence:
        'Burden per productive hour is larger than per paid hour, since unbilled hours are in it. Do not count them again in the overhead.',
      source: 'price-arithmetic',
    },
  ],
  sources: ['price-arithmetic', 'payroll-taxes'],
  examples: [
    {
      says: 'the productive hour of a worker with a wage of 28',
      given: {
        wage: 28,
        productive_hours: 1700,
        insurance: 0.085,
        benefits: 4.5,
        state_rate: 0.027,
        state_base: 9000,
      },
      gives: 45.4652,
      tolerance: 0.0001,
    },
    {
      says: 'the burden of the same worker',
      given: {
        wage: 28,
        productive_hours: 1700,
        insurance: 0.085,
        benefits: 4.5,
        state_rate: 0.027,
        state_base: 9000,
        what: 'burden',
      },
      gives: 0.62376,
      tolerance: 0.00001,
    },
    {
      says: 'the pay of a year at the national median of 2023',
      given: { wage: 28.26, productive_hours: 1700, what: 'pay' },
      gives: 58_780.8,
      tolerance: 1e-6,
    },
  ],
});
