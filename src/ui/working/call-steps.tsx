import type { CellValue } from '../../base/value.ts';
import { sources as known, type Source } from '../../catalogue/sources.ts';
import type { Step } from '../../catalogue/working.ts';
import type { Shown } from '../../workbook/show.ts';
import { FractionText } from './fraction-text.tsx';
import { stepFigures } from './step-figures.ts';
import { TapeFigure } from './tape-figure.tsx';

/** The working line by line; the last line is the sum of it all. */
export function CallSteps({
  steps,
  sources,
  result,
}: {
  readonly steps: readonly Step[];
  readonly sources: readonly Source[];
  /** The value of the whole cell: where the last line is that value, it is shown as the cell shows it. */
  readonly result?: { readonly shown: Shown; readonly value: CellValue };
}) {
  if (steps.length === 0) return null;
  const figures = stepFigures(steps);
  return (
    <ol className="call-steps">
      {steps.map((step, index) => {
        const isLast = index === steps.length - 1;
        const figure = figures[index] ?? '';
        const tape =
          isLast && result?.shown.type === 'tape' && result.value === step.value ? result.shown.parts : null;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: the place of a line is what it is known by
          <li key={index} className={classOf(figure, isLast)}>
            <span className="call-step-says">
              {step.label}
              <Cited step={step} sources={sources} />
              {step.sum ? (
                <span className="working-detail">
                  <FractionText text={step.sum} />
                </span>
              ) : null}
            </span>
            <span className="call-step-value">
              {tape ? <TapeFigure parts={tape} /> : <FractionText text={figure} />}
              {tape ? <span className="working-detail">{figure}</span> : null}
            </span>
          </li>
        );
      })}
    </ol>
  );
}

/** A value that is a list of sizes stands on a line of its own. */
const longestBeside = 18;

function classOf(figure: string, isLast: boolean): string {
  const kinds = ['call-step'];
  if (isLast) kinds.push('call-step-sum');
  if (figure.length > longestBeside) kinds.push('call-step-long');
  return kinds.join(' ');
}

/** The number under which the source of a line stands below, where there is more than one. */
function Cited({ step, sources }: { readonly step: Step; readonly sources: readonly Source[] }) {
  if (!step.source || sources.length < 2) return null;
  const cited: Source = known[step.source];
  const number = sources.findIndex((one) => one.title === cited.title && one.place === cited.place) + 1;
  if (number === 0) return null;
  return (
    <sup className="call-step-cited">
      <span className="visually-hidden"> source </span>
      {number}
    </sup>
  );
}
