import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Money, money } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';

/** A labor unit: hours for each, or how many in an hour; one of the two. */
export interface LaborUnit {
  readonly work: string;
  readonly hoursEach: number | null;
  readonly perHour: number | null;
}

export interface Task {
  readonly unit: LaborUnit;
  readonly quantity: number;
}

export interface TaskHours extends Task {
  readonly hours: number;
}

export interface LaborHours {
  readonly tasks: readonly TaskHours[];
  readonly plain: number;
  readonly hours: number;
}

/** Hours for a list of work by its labor units, times the difficulty of the place. Faults: `no_labor_unit`. Source: the
 *  units that are handed in. */
export function laborHours(tasks: readonly Task[], difficulty: number): Outcome<LaborHours, TradeFault> {
  const timed: TaskHours[] = [];
  for (const { unit, quantity } of tasks) {
    const { work, hoursEach, perHour } = unit;
    if ((hoursEach === null) === (perHour === null)) {
      return failed({ code: 'no_labor_unit', work, hasBoth: hoursEach !== null });
    }
    timed.push({
      unit,
      quantity,
      hours: perHour === null ? quantity * (hoursEach ?? 0) : quantity / perHour,
    });
  }
  const plain = timed.reduce((sum, one) => sum + one.hours, 0);
  return done({ tasks: timed, plain, hours: plain * difficulty });
}

/** What hours cost at a wage, with the burden as a share of the wage. */
export function laborCost(hours: number, wage: Money, burden: number): { rate: Money; cost: Money } {
  const rate = wage * (1 + burden);
  return { rate: money(rate), cost: money(hours * rate) };
}

export interface Employment {
  readonly wage: Money;
  readonly paidHours: number;
  readonly productiveHours: number;
  /** Payroll taxes on all pay, as a share. */
  readonly payrollTax: number;
  /** Taxes on the first so much of a year's pay. */
  readonly capped: readonly { readonly rate: number; readonly base: Money }[];
  /** Insurance that goes by the pay, as a share. */
  readonly insurance: number;
  /** For each paid hour. */
  readonly benefits: Money;
}

export const hourBases = ['productive', 'paid'] as const;
export type HourBase = (typeof hourBases)[number];

export interface WorkerCost {
  readonly pay: Money;
  readonly payrollTax: Money;
  readonly cappedTaxes: readonly Money[];
  readonly insurance: Money;
  readonly benefits: Money;
  readonly year: Money;
  readonly rate: Money;
  /** The rate over the wage, less one. */
  readonly burden: number;
}

/** What a worker costs in a year and in an hour. A capped tax takes no more than its base. Faults:
 *  `productive_over_paid`. Source: arithmetic; every rate is the shop's own. */
export function workerCost(job: Employment, per: HourBase): Outcome<WorkerCost, TradeFault> {
  const { wage, paidHours, productiveHours } = job;
  if (productiveHours > paidHours) {
    return failed({ code: 'productive_over_paid', productive: productiveHours, paid: paidHours });
  }
  const pay = wage * paidHours;
  const payrollTax = pay * job.payrollTax;
  const cappedTaxes = job.capped.map(({ rate, base }) => money(Math.min(pay, base) * rate));
  const insurance = pay * job.insurance;
  const benefits = job.benefits * paidHours;
  const year = pay + payrollTax + cappedTaxes.reduce((sum, tax) => sum + tax, 0) + insurance + benefits;
  const rate = money(year / (per === 'paid' ? paidHours : productiveHours));
  return done({
    pay: money(pay),
    payrollTax: money(payrollTax),
    cappedTaxes,
    insurance: money(insurance),
    benefits: money(benefits),
    year: money(year),
    rate,
    burden: burdenOf(rate, wage),
  });
}

/** What a rate adds to the wage, as a share of the wage. */
export function burdenOf(rate: Money, wage: Money): number {
  return rate / wage - 1;
}
