import type { TapeParts } from '../trade/tape/write.ts';

/** `5 feet 6 and 7/16 inches`; the marks of feet and inches are read out by no one. */
export function speakTape({ sign, feet, whole, numerator, denominator }: TapeParts): string {
  const fraction = numerator > 0 ? `${numerator}/${denominator}` : '';
  const wholeText = whole > 0 || fraction === '' ? String(whole) : '';
  const inches = [wholeText, fraction].filter(Boolean).join(' and ');
  const isOne = (whole === 1 && fraction === '') || (whole === 0 && fraction !== '');
  return [
    sign < 0 ? 'minus' : '',
    feet === null ? '' : `${feet} ${feet === 1 ? 'foot' : 'feet'}`,
    `${inches} ${isOne ? 'inch' : 'inches'}`,
  ]
    .filter(Boolean)
    .join(' ');
}
