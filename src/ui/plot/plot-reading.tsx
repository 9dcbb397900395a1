import { lineMark } from './line-mark.ts';
import type { PlotLayout } from './plot-layout.ts';
import { isDrawn, type PlotLine } from './plot-line.ts';
import { readingPlace } from './reading-place.ts';
import { textWidth } from './text-width.ts';

const size = 13;
const row = 19;
const pad = 9;

/** The hairline at one stop, with what every line comes to there. */
export function PlotReading({
  at,
  head,
  lines,
  layout: { frame, scales, paths },
}: {
  readonly at: number;
  readonly head: string;
  readonly lines: readonly PlotLine[];
  readonly layout: PlotLayout;
}) {
  const hairline = scales.across(at);
  const read = lines.map((line) => ({ name: line.name, point: line.points.find(({ x }) => x === at) }));
  const names = Math.max(...read.map(({ name }) => textWidth(name, size)));
  const figures = Math.max(...read.map(({ point }) => textWidth(point?.shows ?? '–', size)));
  const box = {
    width: Math.max(2 * pad + 16 + names + 14 + figures, 2 * pad + textWidth(head, size)),
    height: pad + row * (lines.length + 1) + pad / 2,
  };
  const place = readingPlace(
    hairline,
    box,
    frame,
    paths.flatMap((path) => path.trace),
  );
  return (
    <g className="plot-reading">
      <line className="plot-hairline" x1={hairline} x2={hairline} y1={frame.top} y2={frame.bottom} />
      {read.map(({ name, point }, order) =>
        point && isDrawn(point.y) ? (
          <g key={name} className={lineMark(order).ink}>
            <path
              className="plot-mark plot-mark-here"
              d={lineMark(order).outline}
              transform={`translate(${hairline} ${scales.up(point.y)})`}
            />
          </g>
        ) : null,
      )}
      <g transform={`translate(${place.x} ${place.y})`}>
        <rect className="plot-reading-box" width={box.width} height={box.height} rx={4} />
        <text className="plot-reading-head" x={pad} y={pad + row / 2}>
          {head}
        </text>
        {read.map(({ name, point }, order) => (
          <g
            key={name}
            className={lineMark(order).ink}
            transform={`translate(0 ${pad + row * (order + 1.5)})`}
          >
            <path className="plot-mark" d={lineMark(order).outline} transform={`translate(${pad + 5} 0)`} />
            <text className="plot-reading-name" x={pad + 16}>
              {name}
            </text>
            <text className="plot-reading-figure" x={box.width - pad}>
              {point?.shows ?? '–'}
            </text>
          </g>
        ))}
      </g>
    </g>
  );
}
