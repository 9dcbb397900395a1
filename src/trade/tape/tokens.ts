import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { TapeFault } from './fault.ts';

export type TapeUnit = 'ft' | 'in' | 'mm' | 'cm' | 'm';

/** The smallest pieces of a written length, each with the place where it begins. */
export type TapeToken =
  | { readonly type: 'number'; readonly at: number; readonly text: string; readonly value: number }
  | {
      readonly type: 'fraction';
      readonly at: number;
      readonly numerator: number;
      readonly denominator: number;
    }
  | { readonly type: 'unit'; readonly at: number; readonly unit: TapeUnit }
  | { readonly type: 'slash'; readonly at: number }
  | { readonly type: 'minus'; readonly at: number };

const fractionSigns: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

const unitWords: Readonly<Record<string, TapeUnit>> = {
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  in: 'in',
  inch: 'in',
  inches: 'in',
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
};

// Sticky, so that each is tried exactly where the text has got to.
const space = /\s+/y;
const number = /\d+(?:\.\d*)?|\.\d+/y;
const inchMark = /["″”“]|['′’‘]{2}/y;
const footMark = /['′’‘]/y;
const word = /[a-z]+\.?/iy;
const slash = /[/⁄∕]/y;
const minus = /[-−–]/y;

/** Splits a written length into tokens. */
export function tapeTokens(text: string): Outcome<readonly TapeToken[], TapeFault> {
  const tokens: TapeToken[] = [];
  let at = 0;
  const take = (pattern: RegExp): string | null => {
    pattern.lastIndex = at;
    return pattern.exec(text)?.[0] ?? null;
  };
  while (at < text.length) {
    const blank = take(space);
    if (blank) {
      at += blank.length;
      continue;
    }
    const [token, length] = tokenAt(text, at, take);
    if (!token) return failed(strange(text, at, take));
    tokens.push(token);
    at += length;
  }
  return done(tokens);
}

function tokenAt(
  text: string,
  at: number,
  take: (pattern: RegExp) => string | null,
): readonly [TapeToken | null, number] {
  const digits = take(number);
  if (digits) return [{ type: 'number', at, text: digits, value: Number(digits) }, digits.length];
  const sign = fractionSigns[text.charAt(at)];
  if (sign) return [{ type: 'fraction', at, numerator: sign[0], denominator: sign[1] }, 1];
  const inch = take(inchMark);
  if (inch) return [{ type: 'unit', at, unit: 'in' }, inch.length];
  if (take(footMark)) return [{ type: 'unit', at, unit: 'ft' }, 1];
  if (take(slash)) return [{ type: 'slash', at }, 1];
  if (take(minus)) return [{ type: 'minus', at }, 1];
  const letters = take(word) ?? '';
  const unit = Object.hasOwn(unitWords, bare(letters)) ? unitWords[bare(letters)] : undefined;
  return unit ? [{ type: 'unit', at, unit }, letters.length] : [null, 0];
}

function strange(text: string, at: number, take: (pattern: RegExp) => string | null): TapeFault {
  if (text.charAt(at) === ',') return { code: 'comma', at, instead: text.trim().replaceAll(',', '.') };
  return { code: 'unknown_sign', at, got: take(word) ?? String.fromCodePoint(text.codePointAt(at) ?? 0) };
}

function bare(letters: string): string {
  return letters.toLowerCase().replace('.', '');
}
