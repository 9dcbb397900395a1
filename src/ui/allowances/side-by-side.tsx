import { useMemo, useState } from 'react';
import type { SizeFigures, Way } from '../../session/side-by-side.ts';
import { ways } from '../../session/side-by-side.ts';
import type { WrapRow } from '../../templates/allowances/wraps.ts';
import { Plot } from '../plot/plot.tsx';
import { SideBySideTable, wayNames } from './side-by-side-table.tsx';

/** One wrap by the shop's figure, the published table and geometry: the R that each leaves, drawn over the diameter, and
 *  every size with its cut in a table. */
export function SideBySide({
  wrap,
  tried,
  now,
  isFiguring,
}: {
  readonly wrap: WrapRow;
  readonly tried: readonly SizeFigures[];
  readonly now: readonly SizeFigures[] | null;
  readonly isFiguring: boolean;
}) {
  const [at, setAt] = useState(16);
  const rated = ratedR(wrap);
  const round = useMemo(() => tried.filter(({ size }) => size.shape === 'round'), [tried]);
  const lines = useMemo(() => ways.map((way) => lineOf(way, round)), [round]);
  return (
    <section className="allowances-compare" aria-labelledby="allowances-compare" aria-busy={isFiguring}>
      <h2 id="allowances-compare">{wrap.name}, side by side</h2>
      {round.length > 0 ? (
        <Plot
          title={`R left by each way, ${wrap.name}`}
          says={`What R is left on round duct from 4 to 24 inches when ${wrap.name} is cut by the shop’s own figure, by the published table and by geometry.`}
          across={{ label: 'diameter', unit: 'in' }}
          up={{ label: 'R left' }}
          lines={lines}
          format={{ x: (diameter) => String(diameter), y: (r) => r.toFixed(1) }}
          at={at}
          onAt={setAt}
        />
      ) : (
        <p className="side-by-side-note" role="status">
          Every size is being figured …
        </p>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
      <section className="side-by-side-frame" tabIndex={0} aria-label="Every size">
        <SideBySideTable
          sizes={tried}
          now={now}
          rated={rated}
          says={`What to cut of ${wrap.name} by each way, and what R that leaves`}
        />
      </section>
      <p className="side-by-side-note">
        Cut is once round with the lap, up to the shop’s fraction. R left is figured from how far that cut
        squeezes the wrap. {rated === null ? '' : `! is less than the R ${rated} that it is rated at. `}Local
        code says what R is needed.
      </p>
    </section>
  );
}

function lineOf(way: Way, sizes: readonly SizeFigures[]) {
  return {
    name: wayNames[way],
    points: sizes.map(({ size, ways: own }) => ({
      x: size.width,
      y: own[way].r,
      shows: own[way].r === null ? 'no figure' : `R ${own[way].r.toFixed(1)}`,
    })),
  };
}

function ratedR(wrap: WrapRow): number | null {
  const field = wrap.fields.find(({ heading }) => heading.toLowerCase() === 'installed r');
  const content = field?.cell.content;
  return typeof content === 'number' ? content : null;
}
