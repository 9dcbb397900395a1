import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { type Frame, isDrawn, type PlotLine } from './plot-line.ts';

export interface PlotScales {
  readonly across: ScaleLinear<number, number>;
  readonly up: ScaleLinear<number, number>;
}

type Range = readonly [least: number, most: number];

/** What the lines span each way, or nothing when no point can be drawn. Gaps count across: the reader sees that they are
 *  gaps. With a step the span upward begins and ends at whole steps, with some room below the lowest line. */
export function spanOf(
  lines: readonly PlotLine[],
  step?: number,
): { readonly across: Range; readonly up: Range } | null {
  const points = lines.flatMap((line) => line.points);
  const heights = points.map((point) => point.y).filter(isDrawn);
  if (heights.length === 0) return null;
  return {
    across: widened(rangeOf(points.map((point) => point.x))),
    up: widened(onSteps(fromNothing(rangeOf(heights)), step)),
  };
}

/** Scales that put the span into the frame. Upward the scale ends at round figures. */
export function plotScales(span: { readonly across: Range; readonly up: Range }, frame: Frame): PlotScales {
  return {
    across: scaleLinear(span.across, [frame.left, frame.right]),
    up: scaleLinear(span.up, [frame.bottom, frame.top]).nice(upTicks(frame)),
  };
}

/** Round figures along each scale, as many as can be read beside each other. */
export function plotTicks(scales: PlotScales, frame: Frame) {
  return {
    across: scales.across.ticks(Math.max(2, Math.floor((frame.right - frame.left) / 56))),
    up: scales.up.ticks(upTicks(frame)),
  };
}

function upTicks(frame: Frame): number {
  return Math.max(2, Math.floor((frame.bottom - frame.top) / 48));
}

function rangeOf(figures: readonly number[]): Range {
  const [first = 0, ...others] = figures.filter(Number.isFinite);
  return others.reduce<Range>(
    ([least, most], figure) => [Math.min(least, figure), Math.max(most, figure)],
    [first, first],
  );
}

/** A scale starts at nothing unless that would press the lines into less than its upper half. */
function fromNothing([least, most]: Range): Range {
  if (least > 0 && least <= most / 2) return [0, most];
  if (most < 0 && most >= least / 2) return [least, 0];
  return [least, most];
}

function onSteps([least, most]: Range, step: number | undefined): Range {
  if (step === undefined || least === 0) return [least, most];
  return [Math.floor(least / step - roomBelow) * step, Math.ceil(most / step) * step];
}

/** Of a step: a line that keeps to the lowest tick would be taken for the axis. */
const roomBelow = 0.1;

/** A single figure gets room on both sides, or it would have no place on the scale. */
function widened([least, most]: Range): Range {
  if (least < most) return [least, most];
  const room = Math.abs(least) / 10 || 1;
  return [least - room, most + room];
}
