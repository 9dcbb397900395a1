import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches, inchesFromMillimetres } from '../../base/quantity.ts';
import type { TapeFault } from './fault.ts';
import { type TapeToken, type TapeUnit, tapeTokens } from './tokens.ts';

/** The unit that a bare number is taken in. */
export type LengthUnit = 'in' | 'ft' | 'mm' | 'm';

/** What was found in a written length. Exactly one of `feet`, `inches` and `metric` or `feet` with `inches` is set. */
export interface TapeReading {
  readonly isNegative: boolean;
  readonly feet: number | null;
  readonly inches: number | null;
  readonly metric: { readonly amount: number; readonly unit: 'mm' | 'cm' | 'm' } | null;
  readonly length: Inches;
}

const longest = 60;
const millimetres = { mm: 1, cm: 10, m: 1000 } as const;

/** Reads a length as people write it: `12' 4 1/2"`, `41-3/8`, `12.25`, `1372mm`. A bare number is in the default
 *  unit; a bare number after feet is inches. Spaces, curly quotes, primes and fraction signs are all understood. */
export function readTape(text: string, defaultUnit: LengthUnit): Outcome<Inches, TapeFault> {
  const reading = readTapeParts(text, defaultUnit);
  return reading.ok ? done(reading.value.length) : reading;
}

/** The same, with the parts that were found. */
export function readTapeParts(text: string, defaultUnit: LengthUnit): Outcome<TapeReading, TapeFault> {
  const got = text.trim().length;
  if (got === 0) return failed({ code: 'nothing_typed' });
  if (got > longest) return failed({ code: 'too_long', got, most: longest });
  const tokens = tapeTokens(withFootMark(text));
  if (!tokens.ok) return tokens;
  const isNegative = tokens.value[0]?.type === 'minus';
  const amounts = readAmounts(text, isNegative ? tokens.value.slice(1) : tokens.value);
  return amounts.ok ? addUp(text, amounts.value, defaultUnit, isNegative) : amounts;
}

/** `12-4-1/2`, as some write on sheet metal: feet, inches and a fraction. Two numbers alone, `12-4`, could be either. */
function withFootMark(text: string): string {
  return text.replace(/^(\s*\d+)-(\d+)[- ](\d+\/\d+)(?=\s*["″”]?\s*$)/, "$1'$2 $3");
}

/** A number with the unit written after it, or none. */
interface Amount {
  readonly at: number;
  readonly written: string;
  readonly value: number;
  readonly unit: TapeUnit | null;
}

function readAmounts(text: string, tokens: readonly TapeToken[]): Outcome<readonly Amount[], TapeFault> {
  const amounts: Amount[] = [];
  let next = 0;
  while (next < tokens.length || amounts.length === 0) {
    // `12'-4"`: a hyphen may stand between feet and inches.
    if (tokens[next]?.type === 'minus' && amounts.at(-1)?.unit === 'ft') next += 1;
    const number = readNumber(text, tokens, next);
    if (!number.ok) return number;
    const start = tokens[next]?.at ?? 0;
    next = number.value.next;
    const after = tokens[next];
    const unit = after?.type === 'unit' ? after.unit : null;
    const written = text.slice(start, after?.at ?? text.length).trim();
    amounts.push({ at: start, written, value: number.value.value, unit });
    if (unit) next += 1;
  }
  return done(amounts);
}

/** A number, a fraction, or both together; says where the next token is. */
function readNumber(
  text: string,
  tokens: readonly TapeToken[],
  start: number,
): Outcome<{ readonly value: number; readonly next: number }, TapeFault> {
  const first = tokens[start];
  if (first?.type === 'fraction')
    return done({ value: first.numerator / first.denominator, next: start + 1 });
  if (first?.type !== 'number') {
    const at = first?.at ?? text.trimEnd().length;
    return failed({ code: 'number_expected', at, got: text.slice(at).trim().slice(0, 12) });
  }
  if (tokens[start + 1]?.type === 'slash') return readFraction(tokens, start, null);
  const hyphen = tokens[start + 1]?.type === 'minus' ? 1 : 0;
  const second = tokens[start + 1 + hyphen];
  if (second?.type === 'fraction') {
    if (first.text.includes('.')) return failed({ code: 'point_and_fraction', at: second.at });
    return done({ value: first.value + second.numerator / second.denominator, next: start + 2 + hyphen });
  }
  if (second?.type === 'number' && tokens[start + 2 + hyphen]?.type === 'slash') {
    return readFraction(tokens, start + 1 + hyphen, first);
  }
  return done({ value: first.value, next: start + 1 });
}

/** `3/8`, with the whole number before it, if any. */
function readFraction(
  tokens: readonly TapeToken[],
  start: number,
  whole: (TapeToken & { type: 'number' }) | null,
): Outcome<{ readonly value: number; readonly next: number }, TapeFault> {
  const [over, line, under] = tokens.slice(start, start + 3);
  if (over?.type !== 'number' || under?.type !== 'number') {
    return failed({ code: 'half_a_fraction', at: line?.at ?? 0 });
  }
  const pointed = [whole, over, under].find((part) => part?.text.includes('.'));
  if (pointed) return failed({ code: 'point_and_fraction', at: pointed.at });
  const got = `${over.text}/${under.text}`;
  if (under.value === 0) return failed({ code: 'over_zero', at: over.at, got });
  if (whole && over.value >= under.value) {
    const carried = whole.value + Math.floor(over.value / under.value);
    const rest = over.value % under.value;
    const instead = rest === 0 ? String(carried) : `${carried} ${rest}/${under.text}`;
    return failed({ code: 'fraction_of_one_or_more', at: over.at, got, instead });
  }
  return done({ value: (whole?.value ?? 0) + over.value / under.value, next: start + 3 });
}

function addUp(
  text: string,
  amounts: readonly Amount[],
  defaultUnit: LengthUnit,
  isNegative: boolean,
): Outcome<TapeReading, TapeFault> {
  const [first, second, third] = amounts;
  if (!first) return failed({ code: 'nothing_typed' });
  const sign = isNegative ? -1 : 1;
  const nothing = { isNegative, feet: null, inches: null, metric: null };
  if (!second) {
    const unit = first.unit ?? defaultUnit;
    if (unit === 'ft')
      return done({ ...nothing, feet: first.value, length: inches(sign * first.value * 12 + 0) });
    if (unit === 'in')
      return done({ ...nothing, inches: first.value, length: inches(sign * first.value + 0) });
    const length = inchesFromMillimetres(sign * first.value * millimetres[unit] + 0);
    return done({ ...nothing, metric: { amount: first.value, unit }, length });
  }
  if (first.unit === null) return failed({ code: 'one_number_too_many', at: second.at, got: second.written });
  const metricOne = [first, second].find(
    (one) => one.unit !== null && one.unit !== 'ft' && one.unit !== 'in',
  );
  if (metricOne) return failed({ code: 'mixed_systems', at: metricOne.at, got: text.trim() });
  if (first.unit === 'in' && second.unit === 'ft')
    return failed({ code: 'inches_before_feet', at: second.at });
  if (first.unit === 'in' && second.unit === null) {
    return failed({ code: 'one_number_too_many', at: second.at, got: second.written });
  }
  if (first.unit === second.unit) {
    const instead = first.unit === 'ft' ? `${first.written}' ${second.written}"` : `${first.written}"`;
    return failed({ code: 'unit_twice', at: second.at, unit: first.unit, instead });
  }
  if (third) return failed({ code: 'one_number_too_many', at: third.at, got: third.written });
  if (!Number.isInteger(first.value)) return failed({ code: 'part_of_a_foot', at: first.at });
  const length = inches(sign * (first.value * 12 + second.value) + 0);
  return done({ ...nothing, feet: first.value, inches: second.value, length });
}
