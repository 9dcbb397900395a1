import type { Explanation } from '../../session/explanation.ts';
import { speakTape } from '../speak-tape.ts';
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
