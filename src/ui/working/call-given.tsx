import type { GivenArgument } from '../../session/explanation.ts';
import { FractionText } from './fraction-text.tsx';

/** What a trade function was given: as it stands in the formula, what it came to, and why where it was left out. */
export function CallGiven({
  name,
  given,
}: {
  readonly name: string;
  readonly given: readonly GivenArgument[];
}) {
  if (given.length === 0) return null;
  return (
    <div className="call-given">
      <h3 className="working-heading">
        Given to <code>{name}</code>
      </h3>
      <ul>
        {given.map((one) => (
          <li key={one.argument} className={one.usually === null ? '' : 'call-given-usual'}>
            <span className="call-given-says">
              <span className="call-given-name">{one.argument}</span>
              <span className="working-detail">{one.says}</span>
              {one.usually === null ? null : (
                <span className="working-detail">Left out, so the usual value: {one.usually}</span>
              )}
            </span>
            <span className="call-given-value">
              <FractionText text={one.value} />
              {isPlain(one) ? null : <code>{one.written}</code>}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** What was written says no more than the value: a text, a number, or nothing. */
function isPlain({ written, value }: GivenArgument): boolean {
  return written === '' || written.replaceAll('"', '') === value;
}
