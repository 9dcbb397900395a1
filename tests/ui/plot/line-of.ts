import type { PlotLine } from '../../../src/ui/plot/plot-line.ts';

/** A line of bare figures. */
export function lineOf(
  name: string,
  ...points: readonly (readonly [x: number, y: number | null])[]
): PlotLine {
  return { name, points: points.map(([x, y]) => ({ x, y, shows: y === null ? 'none' : String(y) })) };
}
