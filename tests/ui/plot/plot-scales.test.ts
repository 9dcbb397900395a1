import { expect, test } from 'vitest';
import { plotScales, plotTicks, spanOf } from '../../../src/ui/plot/plot-scales.ts';
import { lineOf } from './line-of.ts';

const frame = { left: 40, right: 600, top: 30, bottom: 300 };

test('nothing spans nothing, and neither do gaps or heights that are no figures', () => {
  expect(spanOf([])).toBeNull();
  expect(spanOf([lineOf('Gaps', [4, null], [5, Number.NaN], [6, Number.POSITIVE_INFINITY])])).toBeNull();
});

test('a gap at the end still counts across', () => {
  expect(spanOf([lineOf('Run', [4, 10], [24, null])])?.across).toEqual([4, 24]);
});

test('the scale starts at nothing when the lines are far from level, and where they are when nearly level', () => {
  expect(spanOf([lineOf('Run', [4, 2], [24, 10])])?.up).toEqual([0, 10]);
  expect(spanOf([lineOf('Run', [4, 9], [24, 10])])?.up).toEqual([9, 10]);
  expect(spanOf([lineOf('Run', [4, -2], [24, -10])])?.up).toEqual([-10, 0]);
  expect(spanOf([lineOf('Run', [4, -2], [24, 10])])?.up).toEqual([-2, 10]);
});

test('with a step the scale begins and ends at whole steps, and no line is taken for the axis', () => {
  expect(spanOf([lineOf('R', [4, 8.31], [24, 8.84])], 1)?.up).toEqual([8, 9]);
  expect(spanOf([lineOf('R', [4, 6], [24, 6.2])], 1)?.up).toEqual([5, 7]);
  expect(spanOf([lineOf('R', [4, 1], [24, 9.5])], 1)?.up).toEqual([0, 9.5]);
});

test('one point stands in the middle', () => {
  const span = spanOf([lineOf('Run', [8, 0])]);
  if (span === null) throw new Error('no span');
  const { across, up } = plotScales(span, frame);
  expect(across(8)).toBeCloseTo(320, 9);
  expect(up(0)).toBeCloseTo(165, 9);
});

test('ticks are round figures inside the frame, and the highest line stays below the topmost', () => {
  const span = spanOf([lineOf('Run', [4, 0.31], [24, 7.43])]);
  if (span === null) throw new Error('no span');
  const scales = plotScales(span, frame);
  const ticks = plotTicks(scales, frame);
  expect(ticks.across).toEqual([4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24]);
  expect(ticks.up).toEqual([0, 2, 4, 6, 8]);
  expect(scales.up(8)).toBe(frame.top);
  expect(scales.up(0)).toBe(frame.bottom);
});
