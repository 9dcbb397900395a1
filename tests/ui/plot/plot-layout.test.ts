import { expect, test } from 'vitest';
import { lineMark } from '../../../src/ui/plot/line-mark.ts';
import { plotLayout } from '../../../src/ui/plot/plot-layout.ts';
import { lineOf } from './line-of.ts';

const steel = lineOf('Steel', [4, 8], [24, 2]);
const flexible = lineOf('Flexible', [4, 10], [24, 6]);

test('names stand at the ends of the lines, inside the drawing', () => {
  const layout = plotLayout([steel, flexible], 720, String);
  const [end] = layout?.paths.map((path) => path.end) ?? [];
  expect(layout?.names?.[0]).toEqual({ x: (end?.x ?? 0) + 11, y: end?.y });
  expect(layout?.frame.right).toBeLessThan(720 - 50);
});

test.each([
  [
    'names are long',
    [steel, lineOf('Flexible duct pulled tight and hung every four feet', [4, 10], [24, 6])],
  ],
  ['a line has no figure', [steel, lineOf('Flexible', [4, null])]],
  ['lines end together', ['A', 'B', 'C', 'D', 'E'].map((name) => lineOf(name, [4, 8], [24, 2]))],
])('when %s, a legend has them and the lines have the width', (_why, lines) => {
  const layout = plotLayout(lines, 720, String);
  expect(layout?.names).toBeNull();
  expect(layout?.frame.right).toBe(704);
});

test('long figures get their room', () => {
  const left = (showsUp: (y: number) => string) => plotLayout([steel], 720, showsUp)?.frame.left ?? 0;
  expect(left((y) => `$${y},000.00`)).toBeGreaterThan(left(String) + 40);
});

test('nothing has no layout', () => {
  expect(plotLayout([lineOf('Flexible', [4, null])], 720, String)).toBeNull();
});

test('the first lines differ in color, dash and mark each; no two of twenty are alike', () => {
  const marks = Array.from({ length: 20 }, (_, place) => lineMark(place));
  for (const part of ['ink', 'dash', 'outline'] as const)
    expect(new Set(marks.slice(0, 5).map((mark) => mark[part])).size).toBe(5);
  expect(new Set(marks.map((mark) => JSON.stringify(mark))).size).toBe(20);
});
