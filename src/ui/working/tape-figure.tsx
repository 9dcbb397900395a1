import type { TapeParts } from '../../trade/tape/write.ts';
import { speakTape } from '../speak-tape.ts';

/** A length as it is read off a tape, its fraction set as one: numerator, slanting bar, denominator. */
export function TapeFigure({ parts }: { readonly parts: TapeParts }) {
  const { sign, feet, whole, numerator, denominator } = parts;
  const hasFraction = numerator > 0;
  const showsWhole = whole > 0 || !hasFraction || feet !== null;
  return (
    <span className="tape-figure">
      <span aria-hidden="true">
        {sign < 0 ? '−' : ''}
        {feet === null ? null : (
          <span className="tape-figure-feet">
            {feet}
            <span className="tape-figure-mark">′</span>
          </span>
        )}
        <span className="tape-figure-inches">
          {showsWhole ? <span>{whole}</span> : null}
          {hasFraction ? (
            <span className="tape-figure-fraction">
              <span className="tape-figure-numerator">{numerator}</span>
              <span className="tape-figure-bar">⁄</span>
              <span className="tape-figure-denominator">{denominator}</span>
            </span>
          ) : null}
          <span className="tape-figure-mark">″</span>
        </span>
      </span>
      <span className="visually-hidden">{speakTape(parts)}</span>
    </span>
  );
}
