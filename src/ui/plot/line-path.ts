import { line } from 'd3-shape';
import { isDrawn, type PlotPoint, type Spot } from './plot-line.ts';
import type { PlotScales } from './plot-scales.ts';

/** A line ready to be drawn. */
export interface LinePath {
  /** Path text; it breaks off at each gap. */
  readonly path: string;
  /** Points with a gap on both sides, which a path alone would not show. */
  readonly alone: readonly Spot[];
  /** Where the line ends on the right; nothing when it has no point. */
  readonly end: Spot | undefined;
  /** Places close together all along the line, to see what would hide it. */
  readonly trace: readonly Spot[];
}

/** The points need not be sorted. */
export function linePath(points: readonly PlotPoint[], { across, up }: PlotScales): LinePath {
  const sorted = points.toSorted((one, other) => one.x - other.x);
  const places = sorted.map(({ x, y }) => (isDrawn(y) ? { x: tenths(across(x)), y: tenths(up(y)) } : null));
  const spots = places.filter((place) => place !== null);
  const draw = line<Spot | null>()
    .defined((place) => place !== null)
    .x((place) => place?.x ?? 0)
    .y((place) => place?.y ?? 0);
  return {
    path: draw(places) ?? '',
    alone: places.flatMap((place, at) => (place && !places[at - 1] && !places[at + 1] ? [place] : [])),
    end: spots.at(-1),
    trace: spots.flatMap((spot, at) => {
      const next = spots[at + 1];
      return next ? between(spot, next) : [spot];
    }),
  };
}

const traceStep = 6;

/** From one place on, up to but without the next. */
function between(from: Spot, to: Spot): readonly Spot[] {
  const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / traceStep));
  return Array.from({ length: steps }, (_, step) => ({
    x: from.x + ((to.x - from.x) * step) / steps,
    y: from.y + ((to.y - from.y) * step) / steps,
  }));
}

function tenths(length: number): number {
  return Math.round(length * 10) / 10;
}
