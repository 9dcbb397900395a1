import { describe, expect, test } from 'vitest';
import { nearestStop, plotStops, stopAt, stopByKey } from '../../../src/ui/plot/plot-stops.ts';
import { lineOf } from './line-of.ts';

const stops = [4, 6, 10];

test('the hairline stops wherever some line has a point, gaps too', () => {
  expect(plotStops([lineOf('One', [10, 1], [4, null]), lineOf('Other', [6, 2], [10, 3])])).toEqual(stops);
});

test('a place between two stops goes to the nearer; one beyond them is nowhere', () => {
  expect(stopAt(stops, 8.5)).toBe(10);
  expect(stopAt(stops, 4)).toBe(4);
  for (const nowhere of [3.9, 10.1, Number.NaN, undefined]) expect(stopAt(stops, nowhere)).toBeUndefined();
  expect(stopAt([], 4)).toBeUndefined();
});

test('pointing beyond the last stop means the last', () => {
  expect(nearestStop(stops, 99)).toBe(10);
  expect(nearestStop([], 99)).toBeUndefined();
});

describe('keys', () => {
  test.each([
    ['ArrowRight', undefined, 4],
    ['ArrowLeft', undefined, 10],
    ['ArrowRight', 4, 6],
    ['ArrowLeft', 10, 6],
    ['ArrowRight', 10, 10],
    ['ArrowLeft', 4, 4],
    ['Home', 6, 4],
    ['End', 6, 10],
    ['Enter', 6, undefined],
  ])('%s from %s goes to %s', (key, from, to) => {
    expect(stopByKey(key, stops, from)).toBe(to);
  });
});
