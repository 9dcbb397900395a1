import { expect, test } from 'vitest';
import { barSpans } from '../../../src/ui/plot/bar-spans.ts';

test('bars grow from nothing, all on one scale', () => {
  expect(barSpans([5, 10, 0], 100)).toEqual([
    { from: 0, length: 50 },
    { from: 0, length: 100 },
    { from: 0, length: 0 },
  ]);
});

test('figures below nothing run the other way', () => {
  expect(barSpans([-5, 15], 100)).toEqual([
    { from: 0, length: 25 },
    { from: 25, length: 75 },
  ]);
});

test('no figures, or none that can be drawn, have no length', () => {
  expect(barSpans([], 100)).toEqual([]);
  expect(barSpans([0, Number.NaN], 100).map(({ length }) => length)).toEqual([0, 0]);
});
