import type { Inches } from '../../base/quantity.ts';
import { type Rounding, roundToTape } from './round.ts';

export interface TapeStyle {
  /** The finest mark used: 16 for sixteenths. */
  readonly denominator: number;
  readonly round: Rounding;
  /** Whether whole feet are split off. */
  readonly feet: boolean;
}

/** A length as a tape shows it, in parts, so that a page can set a real fraction. The fraction is in lowest terms;
 *  `numerator` is 0 and `denominator` 1 when there is none. */
export interface TapeParts {
  readonly sign: 1 | -1;
  /** Null when feet are not split off, or there are none. */
  readonly feet: number | null;
  readonly whole: number;
  readonly numerator: number;
  readonly denominator: number;
}

/** A length as a tape shows it: `14′ 6 ½″`, `66 7⁄16″`, `¾″`. */
export function writeTape(length: Inches, style: TapeStyle): string {
  return tapeText(tapeParts(length, style));
}

export function tapeParts(length: Inches, style: TapeStyle): TapeParts {
  const { marks } = roundToTape(length, style.denominator, style.round);
  const size = Math.abs(marks);
  const wholeInches = Math.floor(size / style.denominator);
  const rest = size % style.denominator;
  const divisor = greatestCommonDivisor(rest, style.denominator);
  const feet = style.feet ? Math.floor(wholeInches / 12) : 0;
  return {
    sign: marks < 0 ? -1 : 1,
    feet: feet > 0 ? feet : null,
    whole: wholeInches - feet * 12,
    numerator: rest / divisor,
    denominator: rest === 0 ? 1 : style.denominator / divisor,
  };
}

export function tapeText(parts: TapeParts): string {
  const fraction = fractionText(parts.numerator, parts.denominator);
  const showsWhole = parts.whole > 0 || fraction === '' || parts.feet !== null;
  const inchesText = [showsWhole ? String(parts.whole) : '', fraction].filter(Boolean).join(' ');
  const feetText = parts.feet === null ? '' : `${parts.feet}′ `;
  return `${parts.sign < 0 ? '-' : ''}${feetText}${inchesText}″`;
}

const fractionSigns: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

function fractionText(numerator: number, denominator: number): string {
  if (numerator === 0) return '';
  return fractionSigns[`${numerator}/${denominator}`] ?? `${numerator}⁄${denominator}`;
}

function greatestCommonDivisor(one: number, other: number): number {
  return other === 0 ? one : greatestCommonDivisor(other, one % other);
}
