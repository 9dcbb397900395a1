import { scaleLinear } from 'd3-scale';
import { expect, test } from 'vitest';
import { linePath } from '../../../src/ui/plot/line-path.ts';
import { lineOf } from './line-of.ts';

const scales = { across: scaleLinear([0, 10], [0, 100]), up: scaleLinear([0, 10], [100, 0]) };
const drawn = (...points: Parameters<typeof lineOf>[1][]) =>
  linePath(lineOf('Run', ...points).points, scales);

test('a line breaks off at a gap and goes on behind it', () => {
  expect(drawn([0, 0], [1, 1], [2, null], [3, 3], [4, 4]).path).toBe('M0,100L10,90M30,70L40,60');
});

test('points are joined from left to right, in whatever order they come', () => {
  expect(drawn([4, 4], [0, 0]).path).toBe('M0,100L40,60');
});

test('a point between gaps is told apart, or it could not be seen', () => {
  const { alone } = drawn([0, 0], [1, null], [2, 2], [3, null], [4, 4], [5, 5]);
  expect(alone).toEqual([
    { x: 0, y: 100 },
    { x: 20, y: 80 },
  ]);
});

test('a line ends at its last figure, not at a gap behind it', () => {
  expect(drawn([0, 0], [3, 3], [4, null]).end).toEqual({ x: 30, y: 70 });
  expect(drawn([0, null], [1, Number.NaN])).toEqual({ path: '', alone: [], end: undefined, trace: [] });
});

test('the trace of a line leaves no room for a name to slip through', () => {
  const { trace } = drawn([0, 0], [10, 10]);
  expect(trace[0]).toEqual({ x: 0, y: 100 });
  expect(trace.at(-1)).toEqual({ x: 100, y: 0 });
  for (const [at, spot] of trace.slice(1).entries())
    expect(Math.hypot(spot.x - (trace[at]?.x ?? 0), spot.y - (trace[at]?.y ?? 0))).toBeLessThanOrEqual(6);
});
