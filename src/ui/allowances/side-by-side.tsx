import { useId, useMemo, useState } from 'react';
import type { Caution } from '../../catalogue/working.ts';
import { codeDecides, handlingFibers, sharpDuct } from '../../catalogue/wrap/cautions.ts';
import type { SizeFigures, Way } from '../../session/side-by-side.ts';
import { ways } from '../../session/side-by-side.ts';
import { missingReasons } from '../../session/side-by-side-reasons.ts';
import type { WrapRow } from '../../templates/allowances/wraps.ts';
import { Plot } from '../plot/plot.tsx';
import { CallCautions } from '../working/call-cautions.tsx';
import { MissingReasons } from './missing-reasons.tsx';
import { isLessThanRated, SideBySideTable, sizeWords, wayNames } from './side-by-side-table.tsx';

/** What holds of every cut, whichever figures come out. */
const care: readonly Caution[] = [...handlingFibers, sharpDuct, codeDecides];

/** One wrap by the shop's figure, the published table and geometry: the R that each leaves, drawn over the diameter, and
 *  every size with its cut in a table. */
export function SideBySide({
  wrap,
  tried,
  now,
  fraction,
  isFiguring,
}: {
  readonly wrap: WrapRow;
  readonly tried: readonly SizeFigures[];
  readonly now: readonly SizeFigures[] | null;
  /** The finest mark of the shop's tape: 16 for sixteenths. */
  readonly fraction: number;
  readonly isFiguring: boolean;
}) {
  const id = useId();
  const [at, setAt] = useState(16);
  const rated = ratedR(wrap);
  const round = useMemo(() => tried.filter(({ size }) => size.shape === 'round'), [tried]);
  const lines = useMemo(() => ways.map((way) => lineOf(way, round)), [round]);
  const reasons = useMemo(() => missingReasons(tried), [tried]);
  const isSqueezed = tried.some((size) => ways.some((way) => isLessThanRated(size.ways[way].r, rated)));
  const here = round.find(({ size }) => size.width === at);
  return (
    <section className="allowances-compare" aria-labelledby="allowances-compare" aria-busy={isFiguring}>
      <h2 id="allowances-compare">{wrap.name}, side by side</h2>
      {round.length > 0 ? (
        <Plot
          title={`R left by each way, ${wrap.name}`}
          says={`What R is left on round duct from 4 to 24 inches when ${wrap.name} is cut by the shop’s own figure, by the published table and by geometry.`}
          across={{ label: 'diameter', unit: 'in' }}
          up={{ label: 'R left', step: 1 }}
          note={`The small steps up and down are no property of the wrap: every cut is rounded up to the next 1/${fraction} in, and what that adds, up to nearly a whole mark, leaves the wrap a little less squeezed at one diameter than at the next. The scale goes from one whole R to another, not from nothing.`}
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
          reasons={reasons}
          reasonsId={id}
          says={`What to cut of ${wrap.name} by each way, and what R that leaves`}
        />
      </section>
      <MissingReasons reasons={reasons} id={id} />
      <p className="side-by-side-note">
        Cut is once round with the lap, up to the shop’s fraction. R left is figured from how far that cut
        squeezes the wrap.{' '}
        {isSqueezed
          ? `! is less than the R ${rated} that it is rated at; no R is published for wrap that far squeezed, so the figure is carried on from the two published ones and may be too high.`
          : ''}
      </p>
      <CallCautions cautions={[...care, ...(here ? looksAt(here) : [])]} />
    </section>
  );
}

/** What is to be looked at in the cuts of one size, each with its way. */
function looksAt(figures: SizeFigures): readonly Caution[] {
  return ways.flatMap((way) =>
    figures.ways[way].cautions
      .filter(({ level }) => level === 'look')
      .map((caution) => ({
        ...caution,
        sentence: `${sizeWords(figures)}, ${wayNames[way].toLowerCase()}: ${caution.sentence}`,
      })),
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
