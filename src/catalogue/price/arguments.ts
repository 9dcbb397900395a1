import { type Money, money } from '../../base/quantity.ts';
import { toCents } from '../../trade/price/cents.ts';
import { choice, optional, quantity } from '../argument.ts';
import { figure } from '../say.ts';
import type { SourceId } from '../sources.ts';
import type { Step } from '../working.ts';

export const mostMoney = 100_000_000;

export const moneyArgument = (says: string, least = 0) =>
  quantity('money', {
    says,
    least,
    most: mostMoney,
    why: 'duct work of a shop stays under a hundred million',
  });

export const share = (says: string, most = 10) =>
  quantity('percent', {
    says: `${says}: 10 % is 0.1`,
    least: 0,
    most,
    why: 'a share is written as a fraction; a larger one is a slip of the percent sign',
  });

/** A margin of the whole price would ask for a price without end. */
export const marginArgument = (says: string) =>
  quantity('percent', {
    says: `${says}: 20 % is 0.2`,
    least: 0,
    most: 0.95,
    why: 'no price can be all margin, and past 95 % it runs away',
  });

export const markupArgument = (says: string) => share(says, 19);

export const centsArgument = optional(
  choice(['exact', 'cents'], { says: 'the exact amount, or the amount to the nearest cent, half a cent up' }),
  'exact',
  'amounts keep their full precision until they are printed, so that cents do not add up to dollars',
);

export function inCents(amount: Money, cents: 'exact' | 'cents'): Money {
  return cents === 'cents' ? toCents(amount) : money(amount);
}

/** The last lines of a working: the exact amount, then the cent where it was asked for. */
export function amountSteps(
  label: string,
  sum: string,
  exact: Money,
  cents: 'exact' | 'cents',
  source: SourceId = 'price-arithmetic',
): readonly Step[] {
  const step: Step = { label, sum, value: exact, unit: 'money', source };
  if (cents === 'exact') return [step];
  return [
    { ...step, label: `${label}, exactly` },
    {
      label,
      sum: `${figure(exact, 6)}, to the nearest cent`,
      value: toCents(exact),
      unit: 'money',
      source: 'cents',
    },
  ];
}

/** An amount as it stands in a sum: not rounded further than four places. */
export function plainMoney(amount: number): string {
  return figure(amount, 4);
}
