import { isDrawn, type PlotLine } from './plot-line.ts';

/** Where the hairline may stand: each place that some line has a point at, from left to right. */
export function plotStops(lines: readonly PlotLine[]): readonly number[] {
  const places = lines.flatMap((line) => line.points.map((point) => point.x));
  return [...new Set(places.filter((place) => isDrawn(place)))].sort((one, other) => one - other);
}

/** The stop nearest to a place; nothing for no place, or one beyond the first or the last. */
export function stopAt(stops: readonly number[], place: number | undefined): number | undefined {
  const [first, last] = [stops[0], stops.at(-1)];
  if (place === undefined || first === undefined || last === undefined) return undefined;
  if (!(place >= first && place <= last)) return undefined;
  return nearestStop(stops, place);
}

export function nearestStop(stops: readonly number[], place: number): number | undefined {
  return stops.reduce<number | undefined>(
    (best, stop) => (best === undefined || Math.abs(stop - place) < Math.abs(best - place) ? stop : best),
    undefined,
  );
}

/** Where a key takes the hairline; nothing for a key that does not move it. */
export function stopByKey(
  key: string,
  stops: readonly number[],
  from: number | undefined,
): number | undefined {
  switch (key) {
    case 'ArrowRight':
      return from === undefined ? stops[0] : (stops.find((stop) => stop > from) ?? stops.at(-1));
    case 'ArrowLeft':
      return from === undefined ? stops.at(-1) : (stops.findLast((stop) => stop < from) ?? stops[0]);
    case 'Home':
      return stops[0];
    case 'End':
      return stops.at(-1);
    default:
      return undefined;
  }
}
