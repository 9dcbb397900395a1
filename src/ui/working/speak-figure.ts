import type { Explanation } from '../../session/explanation.ts';
import type { TapeParts } from '../../trade/tape/write.ts';
import { verdictWords } from './verdict-words.ts';

/** The value of a cell as one would read it out. */
export function speakFigure({ shown, verdict }: Explanation): string {
  if (verdict) return [verdictWords[verdict.verdict].word, verdict.sentence].filter(Boolean).join('. ');
  switch (shown.type) {
    case 'tape':
      return speakTape(shown.parts);
    case 'fault':
      return `No figure. ${shown.fault.sentence}`;
    case 'blank':
      return 'blank';
    default:
      return shown.text;
  }
}

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
