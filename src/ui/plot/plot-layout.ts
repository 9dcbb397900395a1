import { labelPlaces } from './label-places.ts';
import { type LinePath, linePath } from './line-path.ts';
import type { Frame, PlotLine, Spot } from './plot-line.ts';
import { type PlotScales, plotScales, plotTicks, spanOf } from './plot-scales.ts';
import { textWidth } from './text-width.ts';

/** A plot with a place for everything in it. */
export interface PlotLayout {
  readonly height: number;
  readonly frame: Frame;
  readonly scales: PlotScales;
  readonly ticks: { readonly across: readonly number[]; readonly up: readonly number[] };
  readonly paths: readonly LinePath[];
  /** Where the names stand at the ends of their lines; nothing when they need a legend. */
  readonly names: readonly Spot[] | null;
}

const textSize = 13;
const nameRow = 17;
const nameGap = 11;
const mostForNames = 0.3;

/** Nothing when no line has a figure to draw. `showsUp` writes a figure of the upward scale, which
 *  begins and ends at whole steps where one is given. */
export function plotLayout(
  lines: readonly PlotLine[],
  width: number,
  showsUp: (y: number) => string,
  step?: number,
): PlotLayout | null {
  const span = spanOf(lines, step);
  if (span === null) return null;
  const height = Math.round(Math.max(260, width * 0.46));
  const bare: Frame = { left: 0, right: width, top: 34, bottom: height - 46 };
  const figures = plotTicks(plotScales(span, bare), bare).up.map(showsUp);
  const left = Math.ceil(Math.max(...figures.map((figure) => textWidth(figure, textSize)))) + 14;
  const within = (right: number) => {
    const frame = { ...bare, left, right };
    const scales = plotScales(span, frame);
    const paths = lines.map((line) => linePath(line.points, scales));
    return { height, frame, scales, paths, ticks: plotTicks(scales, frame) };
  };

  const widths = lines.map(({ name }) => textWidth(name, textSize));
  const room = Math.max(...widths);
  const beside = within(Math.floor(width - room - nameGap - 2));
  const ends = beside.paths.flatMap(({ end }, order) => (end ? [{ ...end, width: widths[order] ?? 0 }] : []));
  const names =
    room > width * mostForNames || ends.length < lines.length
      ? null
      : labelPlaces(
          ends,
          {
            height: nameRow,
            gap: nameGap,
            reach: nameRow,
            frame: { left: 0, right: width, top: 0, bottom: height },
          },
          beside.paths.flatMap((path) => path.trace),
        );
  return names ? { ...beside, names } : { ...within(width - 16), names: null };
}
