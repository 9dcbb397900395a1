import { type Money, money } from '../../base/quantity.ts';

export const moneyRoundings = ['nearest', 'up', 'down'] as const;
export type MoneyRounding = (typeof moneyRoundings)[number];

/** Above what binary fractions lose in a few steps, and below a ten-thousandth of a cent in a million dollars. */
const nudge = 1e-12;

/** An amount in whole steps of money: cents by default. Half a step goes away from zero, also where binary fractions
 *  leave it a hair short: 1340.625 is 1340.63. Source: custom of invoices, half up. */
export function roundMoney(amount: Money, step: number, rounding: MoneyRounding): Money {
  const steps = Math.abs(amount) / step;
  const slack = nudge * Math.max(1, steps);
  const whole = {
    nearest: () => Math.floor(steps + 0.5 + slack),
    up: () => Math.ceil(steps - slack),
    down: () => Math.floor(steps + slack),
  }[rounding]();
  const size = step < 1 ? whole / Math.round(1 / step) : whole * step;
  return money((amount < 0 ? -size : size) + 0);
}

export function toCents(amount: Money): Money {
  return roundMoney(amount, 0.01, 'nearest');
}
