import type { Verdict } from '../../workbook/check.ts';
import { verdictWords } from './verdict-words.ts';

/** What a check says, as a sign, a word and its sentence. */
export function VerdictBox({ verdict: { verdict, sentence } }: { readonly verdict: Verdict }) {
  const { sign, word } = verdictWords[verdict];
  return (
    <div className={`verdict verdict-${verdict}`}>
      <p className="verdict-word">
        <span className="verdict-sign" aria-hidden="true">
          {sign}
        </span>
        {word}
      </p>
      {sentence ? <p className="verdict-sentence">{sentence}</p> : null}
    </div>
  );
}
