import './pair-bars.css';

/** Two figures that measure the same, as bars of one scale. */
export interface PairOfFigures {
  readonly name: string;
  readonly before: { readonly value: number; readonly shows: string };
  readonly after: { readonly value: number; readonly shows: string };
}

const width = 260;
const bar = 11;
const gap = 3;

/** Pairs of bars, one pair to a figure; every pair has a scale of its own, from nothing on, since they measure different
 *  things. The figures stand beside the bars, so that nothing is told by length or color alone. */
export function PairBars({
  pairs,
  same,
  before,
  after,
}: {
  readonly pairs: readonly PairOfFigures[];
  /** What the figures are called that are alike on both sides. */
  readonly same: readonly string[];
  readonly before: string;
  readonly after: string;
}) {
  return (
    <figure className="pair-bars">
      <figcaption>
        <span className="pair-bars-before">▬ {before}</span>{' '}
        <span className="pair-bars-after">▬ {after}</span>
      </figcaption>
      <ul>
        {pairs.map((pair) => {
          const most = Math.max(Math.abs(pair.before.value), Math.abs(pair.after.value)) || 1;
          const length = (value: number) => (Math.max(0, value) / most) * width;
          return (
            <li key={pair.name}>
              <span className="pair-bars-name">{pair.name}</span>
              <svg
                viewBox={`0 0 ${width} ${2 * bar + gap}`}
                width={width}
                height={2 * bar + gap}
                role="img"
                aria-label={`${pair.name}: ${before} ${pair.before.shows}, ${after} ${pair.after.shows}`}
              >
                <rect className="pair-bars-before" width={length(pair.before.value)} height={bar} />
                <rect
                  className="pair-bars-after"
                  y={bar + gap}
                  width={length(pair.after.value)}
                  height={bar}
                />
              </svg>
              <span className="pair-bars-figures" aria-hidden="true">
                <span>{pair.before.shows}</span>
                <span>{pair.after.shows}</span>
              </span>
            </li>
          );
        })}
      </ul>
      {same.length > 0 ? <p className="pair-bars-same">The same on both sides: {same.join('; ')}.</p> : null}
    </figure>
  );
}
