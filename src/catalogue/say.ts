import { type Inches, inches, money } from '../base/quantity.ts';
import { type Unit, units } from '../base/unit.ts';
import { toCents } from '../trade/price/cents.ts';
import { writeTape } from '../trade/tape/write.ts';
import { wholeWithin } from '../trade/whole.ts';

/** A number as one would write it into a sum: at most so many places, no trailing zeros. */
export function figure(value: number, places = 3): string {
  return String(Number(value.toFixed(places)) + 0);
}

/** A size as a tape shows it, to the nearest sixteenth, in inches. */
export function sayInches(length: Inches): string {
  return writeTape(length, { denominator: 16, round: 'nearest', feet: false });
}

/** A length to cut, as a tape shows it: up to the next sixteenth, so that nothing comes out short. */
export function sayCut(length: Inches): string {
  return writeTape(length, { denominator: 16, round: 'up', feet: false });
}

/** A long length as a tape shows it, to the nearest sixteenth, in feet and inches. */
export function sayFeet(length: Inches): string {
  return writeTape(length, { denominator: 16, round: 'nearest', feet: true });
}

/** A value with its unit, for sentences. A length that lies on a mark of the tape is shown as the tape shows it. */
export function sayValue(value: number, unit: Unit): string {
  if (Math.abs(value) > sayable) return value.toPrecision(3);
  if (unit === 'money') return sayMoney(value);
  if (unit === 'percent') return `${figure(value * 100)} %`;
  if (unit === 'in' && wholeWithin(value * 64) !== null) {
    return writeTape(inches(value), { denominator: 64, round: 'nearest', feet: false });
  }
  const { label } = units[unit];
  if (unit === 'gauge') return `${figure(value)} ga`;
  return label === '' ? figure(value) : `${figure(value)} ${label}`;
}

/** Past this a number is a slip, and says more by its size than by its digits. */
const sayable = 1e15;

/** An amount to the cent: `$1,340.63`. */
export function sayMoney(amount: number): string {
  const cents = toCents(money(amount));
  const text = Math.abs(cents).toFixed(2);
  return `${cents < 0 ? '−' : ''}$${text.replace(/\B(?=(\d{3})+\.)/g, ',')}`;
}

/** `1 piece`, `4 pieces`. */
export function sayCount(count: number, one: string, many = `${one}s`): string {
  return `${figure(count)} ${count === 1 ? one : many}`;
}

/** `round, square or rectangular`. */
export function sayList(items: readonly (string | number)[], joint = 'or'): string {
  const last = items.at(-1);
  if (last === undefined) return 'nothing';
  if (items.length === 1) return String(last);
  return `${items.slice(0, -1).join(', ')} ${joint} ${last}`;
}

/** What somebody wrote, as it is told back; of a long text the beginning. */
export function quoted(text: string): string {
  return `“${text.length > 60 ? `${text.slice(0, 57)}…` : text}”`;
}

/** `a length`, `an area`. */
export function article(phrase: string): string {
  if (/^(a|an|the) /.test(phrase)) return phrase;
  return `${/^[aeiou]/.test(phrase) ? 'an' : 'a'} ${phrase}`;
}
