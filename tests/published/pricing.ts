import { type Money, money } from '../../src/base/quantity.ts';
import { toCents } from '../../src/trade/price/cents.ts';
import { jobPrice, type ProfitMeaning } from '../../src/trade/price/job.ts';
import { burdenOf, laborHours, workerCost } from '../../src/trade/price/labor.ts';
import {
  marginAfterDiscount,
  marginOfMarkup,
  markupForMargin,
  priceByMargin,
  priceByMarkup,
} from '../../src/trade/price/margin.ts';
import { materialCost, toBuy } from '../../src/trade/price/material.ts';
import { breakEven, overheadOn, overheadPerHour, overheadShare } from '../../src/trade/price/overhead.ts';
import type { Proof, RowInputs } from './checks.ts';

function worker(given: RowInputs) {
  const outcome = workerCost(
    {
      wage: amount(given, 'wage'),
      paidHours: given.number('paid_h'),
      productiveHours: 1700,
      payrollTax: given.number('fica'),
      capped: [
        { rate: given.number('futa'), base: amount(given, 'futa_base') },
        { rate: given.number('suta'), base: amount(given, 'suta_base') },
      ],
      insurance: given.number('wc'),
      benefits: amount(given, 'benefits_per_h'),
    },
    'productive',
  );
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

/** A worker with nothing on top of the wage but what the row tells of. */
function plainWorker(wage: Money, hours: number, federal: { rate: number; base: Money } | null) {
  const outcome = workerCost(
    {
      wage,
      paidHours: hours,
      productiveHours: hours,
      payrollTax: 0,
      capped: federal === null ? [] : [federal],
      insurance: 0,
      benefits: money(0),
    },
    'productive',
  );
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

const amount = (given: RowInputs, name: string): Money => money(given.number(name));

const priced =
  (profit: string, profitIs: ProfitMeaning): Proof =>
  (given) =>
    jobPrice(
      {
        material: amount(given, 'direct'),
        labor: money(0),
        other: money(0),
        overheadShare: given.number('overhead'),
        overhead: money(0),
        profit: given.number(profit),
        profitIs,
        taxRate: 0,
        taxed: 'none',
      },
      'exact',
    ).total;

const byMarkup: Proof = (given) => priceByMarkup(amount(given, 'cost'), given.number('markup'));
const markupFor: Proof = (given) => 100 * markupForMargin(given.number('margin'));

/** Total pay over another kind of pay: the burden on it, and one. */
const over =
  (pay: string): Proof =>
  (given) =>
    1 + burdenOf(amount(given, 'total_per_h'), amount(given, pay));

function hours(
  tasks: readonly { readonly each?: number; readonly perHour?: number; readonly quantity: number }[],
  difficulty: number,
) {
  const outcome = laborHours(
    tasks.map(({ each, perHour, quantity }) => ({
      unit: { work: 'work', hoursEach: each ?? null, perHour: perHour ?? null },
      quantity,
    })),
    difficulty,
  );
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value.hours;
}

/** Rows of the airflow and costing list on prices and labor. */
export const pricingProofs: Readonly<Record<string, Proof>> = {
  'CO-01': byMarkup,
  'CO-03': (given) => 100 * marginOfMarkup(given.number('markup')),
  'CO-04': markupFor,
  'CO-05': markupFor,
  'CO-06': (given) => 100 * overheadShare(amount(given, 'overhead'), amount(given, 'direct')),
  'CO-07': priced('profit_markup', 'markup'),
  'CO-08': priced('profit_margin', 'margin'),
  'CO-09': (given) => worker(given).year,
  // The worker whose year costs that much and who has nothing else on top.
  'CO-10': (given) => {
    const outcome = workerCost(
      {
        wage: money(given.number('yearly_cost') / 2080),
        paidHours: 2080,
        productiveHours: given.number('productive_h'),
        payrollTax: 0,
        capped: [],
        insurance: 0,
        benefits: money(0),
      },
      'productive',
    );
    return outcome.ok ? outcome.value.rate : Number.NaN;
  },
  'CO-11': (given) => 100 * burdenOf(amount(given, 'rate'), amount(given, 'wage')),
  'CO-12': (given) =>
    overheadPerHour(amount(given, 'overhead'), given.number('workers'), given.number('productive_h')),
  'CO-13': (given) => breakEven(amount(given, 'overhead'), given.number('gross_margin')),
  'CO-14': (given) =>
    overheadOn([
      { cost: amount(given, 'materials'), rate: given.number('rate_m') },
      { cost: amount(given, 'subs'), rate: given.number('rate_s') },
      { cost: amount(given, 'labor'), rate: given.number('rate_l') },
    ]).overhead,
  'CO-15': (given) =>
    jobPrice(
      {
        material: money(0),
        labor: money(0),
        other: amount(given, 'direct'),
        overheadShare: 0,
        overhead: amount(given, 'overhead'),
        profit: given.number('net_margin'),
        profitIs: 'margin',
        taxRate: 0,
        taxed: 'none',
      },
      'exact',
    ).total,
  'CO-16': (given) => toBuy(given.number('net_lb'), given.number('waste_add'), 'added', null).bought,
  'CO-17': (given) => toBuy(given.number('net_lb'), given.number('scrap_share'), 'of bought', null).bought,
  'CO-18': (given) => {
    const sheet = (given.number('sheet_w_in') * given.number('sheet_l_in')) / 144;
    return toBuy(given.number('needed_ft2'), 0, 'added', sheet).packs ?? Number.NaN;
  },
  'CO-19': (given) =>
    toCents(materialCost(toBuy(1, 0, 'added', null), amount(given, 'materials'), given.number('tax')).cost),
  'CO-20': (given) =>
    hours(
      [
        { each: given.number('h_per_ft'), quantity: given.number('straight_ft') },
        { each: given.number('h_per_piece'), quantity: given.number('pieces') },
      ],
      given.number('difficulty'),
    ),
  'CO-21': (given) => hours([{ perHour: given.number('lb_per_h'), quantity: given.number('weight_lb') }], 1),
  'CO-22': (given) =>
    materialCost(
      toBuy(1, given.number('waste_add'), 'added', null),
      amount(given, 'net'),
      given.number('tax'),
    ).cost,
  'CO-24': (given) => priceByMargin(amount(given, 'cost'), given.number('net_margin')),
  'CO-25': (given) => 100 * marginAfterDiscount(given.number('margin'), given.number('discount')),
  'CO-26': (given) => {
    const federal = { rate: given.number('net_rate'), base: amount(given, 'base') };
    return plainWorker(money(28), 2080, federal).cappedTaxes[0] ?? Number.NaN;
  },
  'CO-27': over('wages_per_h'),
  'CO-28': (given) => {
    const wage = money(given.number('year_usd') / given.number('hours'));
    return plainWorker(wage, given.number('hours'), null).rate;
  },
  'S2-47': (given) => plainWorker(amount(given, 'hourly'), given.number('hours'), null).pay,
  'S2-48': (given) => priceByMargin(amount(given, 'cost'), given.number('margin')),
  'S2-49': byMarkup,
  'S2-50': markupFor,
  'S2-51': over('pay_per_h'),
};
