import type { PlotLayout } from './plot-layout.ts';

/** Round figures on both sides of the lines, and what they measure. */
export function PlotAxes({
  layout: { height, frame, scales, ticks },
  across,
  up,
  format,
}: {
  readonly layout: PlotLayout;
  readonly across: string;
  readonly up: string;
  readonly format: { readonly x: (x: number) => string; readonly y: (y: number) => string };
}) {
  return (
    <g>
      <text className="plot-axis-name" x={0} y={12}>
        {up}
      </text>
      {ticks.up.map((tick) => (
        <g key={tick} className="plot-tick" transform={`translate(0 ${scales.up(tick)})`}>
          <line x1={frame.left} x2={frame.right} />
          <text className="plot-tick-up" x={frame.left - 8}>
            {format.y(tick)}
          </text>
        </g>
      ))}
      <line className="plot-ground" x1={frame.left} x2={frame.right} y1={frame.bottom} y2={frame.bottom} />
      {ticks.across.map((tick) => (
        <g key={tick} className="plot-tick" transform={`translate(${scales.across(tick)} ${frame.bottom})`}>
          <line className="plot-ground" y2={5} />
          <text className="plot-tick-across" y={16}>
            {format.x(tick)}
          </text>
        </g>
      ))}
      <text className="plot-axis-name plot-axis-across" x={(frame.left + frame.right) / 2} y={height - 9}>
        {across}
      </text>
    </g>
  );
}
