import './plot.css';
import { type KeyboardEvent, type PointerEvent, useId, useRef, useState } from 'react';
import { LineLegend } from './line-legend.tsx';
import { lineMark } from './line-mark.ts';
import { PlotAxes } from './plot-axes.tsx';
import { plotLayout } from './plot-layout.ts';
import type { PlotLine } from './plot-line.ts';
import { PlotReading } from './plot-reading.tsx';
import { nearestStop, plotStops, stopAt, stopByKey } from './plot-stops.ts';
import { useDrawnWidth } from './use-drawn-width.ts';

export interface PlotProps {
  readonly title: string;
  /** What the plot shows, in a sentence, for those who do not see it. */
  readonly says: string;
  readonly across: { readonly label: string; readonly unit?: string };
  /** With a step the scale begins and ends at whole ones. */
  readonly up: { readonly label: string; readonly step?: number };
  /** What must be known to read it rightly, below the plot. */
  readonly note?: string;
  /** Each of another name. */
  readonly lines: readonly PlotLine[];
  readonly format: { readonly x: (x: number) => string; readonly y: (y: number) => string };
  /** Where the hairline stands, at the nearest place that a line has a point at; without it the plot keeps its own. */
  readonly at?: number;
  readonly onAt?: (x: number) => void;
}

/** Lines over one scale. Each is told by color, dash, mark and name; gaps stay gaps. Pointing, or Left and Right, moves a
 *  hairline that shows what every line comes to. */
export function Plot({ title, says, across, up, note, lines, format, at, onAt }: PlotProps) {
  const id = useId();
  const figure = useRef<HTMLElement>(null);
  const width = useDrawnWidth(figure, { start: 720, least: 400, most: 960 });
  const [own, setOwn] = useState<number>();
  const [said, setSaid] = useState('');

  const layout = plotLayout(lines, width, format.y, up.step);
  if (layout === null)
    return (
      <figure className="plot" ref={figure}>
        <figcaption className="plot-title">{title}</figcaption>
        <p className="plot-nothing">There is nothing to draw: no line has a figure.</p>
      </figure>
    );

  const stops = plotStops(lines);
  const here = stopAt(stops, at ?? own);
  const moves = at === undefined || onAt !== undefined;
  const unit = across.unit === undefined ? '' : ` ${across.unit}`;
  const place = (x: number) => `${format.x(x)}${unit}`;

  function move(x: number) {
    if (x === here) return;
    setOwn(x);
    onAt?.(x);
  }

  function point(event: PointerEvent<SVGSVGElement>) {
    const seen = event.currentTarget.getBoundingClientRect();
    const across = layout?.scales.across.invert(((event.clientX - seen.left) / seen.width) * width);
    const stop = across === undefined ? undefined : nearestStop(stops, across);
    if (stop !== undefined) move(stop);
  }

  function press(event: KeyboardEvent) {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const stop = stopByKey(event.key, stops, here);
    if (stop === undefined) return;
    event.preventDefault();
    const read = lines.map(
      ({ name, points }) => `${name} ${points.find(({ x }) => x === stop)?.shows ?? 'nothing'}`,
    );
    setSaid(`${place(stop)}: ${read.join('; ')}`);
    move(stop);
  }

  return (
    <figure className="plot" ref={figure}>
      <figcaption className="plot-title">{title}</figcaption>
      {layout.names ? null : <LineLegend names={lines.map(({ name }) => name)} />}
      <svg
        className="plot-drawing"
        viewBox={`0 0 ${width} ${layout.height}`}
        role="img"
        aria-label={title}
        aria-describedby={`${id}says`}
        {...(moves ? { tabIndex: 0, onKeyDown: press, onPointerMove: point, onPointerDown: point } : {})}
      >
        <desc id={`${id}says`}>
          {says}
          {moves ? ' Left and Right read the figures point by point.' : ''}
        </desc>
        <PlotAxes
          layout={layout}
          across={across.unit === undefined ? across.label : `${across.label}, ${across.unit}`}
          up={up.label}
          format={format}
        />
        {layout.paths.map(({ path, alone, end }, order) => {
          const { ink, dash, outline } = lineMark(order);
          const marked = end ? [...alone.filter((spot) => spot !== end), end] : alone;
          return (
            <g key={lines[order]?.name} className={ink}>
              <path className="plot-line" d={path} strokeDasharray={dash} />
              {marked.map(({ x, y }) => (
                <path key={x} className="plot-mark" d={outline} transform={`translate(${x} ${y})`} />
              ))}
            </g>
          );
        })}
        {layout.names?.map(({ x, y }, order) => (
          <text key={lines[order]?.name} className={`plot-line-name ${lineMark(order).ink}`} x={x} y={y}>
            {lines[order]?.name}
          </text>
        ))}
        {here === undefined ? null : (
          <PlotReading at={here} head={place(here)} lines={lines} layout={layout} />
        )}
      </svg>
      {note === undefined ? null : <p className="plot-note">{note}</p>}
      <p className="visually-hidden" aria-live="polite">
        {said}
      </p>
    </figure>
  );
}
