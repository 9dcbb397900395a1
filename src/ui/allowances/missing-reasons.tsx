import type { MissingReason } from '../../session/side-by-side-reasons.ts';
import { sizeWords, wayNames } from './side-by-side-table.tsx';

/** Why figures of the table are missing: each reason once, with the letter that stands in the table. */
export function MissingReasons({
  reasons,
  id,
}: {
  readonly reasons: readonly MissingReason[];
  readonly id: string;
}) {
  if (reasons.length === 0) return null;
  return (
    <ul className="side-by-side-reasons" aria-label="Why figures are missing">
      {reasons.map(({ mark, says, of }) => (
        <li key={mark} id={`${id}${mark}`}>
          <sup className="side-by-side-mark">{mark}</sup> {says}
          {of.length > 0 ? (
            <ul>
              {of.map(({ figures, way, says: own }) => (
                <li key={`${way} ${sizeWords(figures)}`}>
                  {sizeWords(figures)}, {wayNames[way].toLowerCase()}: {own}
                </li>
              ))}
            </ul>
          ) : null}
        </li>
      ))}
    </ul>
  );
}
