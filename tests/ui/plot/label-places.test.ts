import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelPlaces } from '../../../src/ui/plot/label-places.ts';

const room = {
  height: 16,
  gap: 10,
  reach: 16,
  frame: { left: 0, right: 300, top: 0, bottom: 200 },
};
const end = (y: number, x = 200) => ({ x, y, width: 60 });

test('a name with room stands at its line', () => {
  expect(labelPlaces([end(20), end(100)], room, [])).toEqual([
    { x: 210, y: 20 },
    { x: 210, y: 100 },
  ]);
});

test('names that would touch part evenly and keep the order of their lines', () => {
  expect(labelPlaces([end(104), end(100)], room, [])?.map(({ y }) => y)).toEqual([110, 94]);
  expect(labelPlaces([end(100), end(100), end(100)], room, [])?.map(({ y }) => y)).toEqual([84, 100, 116]);
});

test('names at the top move down into the drawing', () => {
  expect(labelPlaces([end(2), end(12)], room, [])?.map(({ y }) => y)).toEqual([8, 24]);
});

test.each([
  ['would have to stand too far from their lines', [end(100), end(100), end(100), end(100)], []],
  ['run out of the drawing', [end(100, 240)], []],
  ['would lie on a line that goes on', [end(100, 80)], [{ x: 120, y: 104 }]],
])('there is no place for names that %s', (_why, ends, spots) => {
  expect(labelPlaces(ends, room, spots)).toBeNull();
});

test('names never overlap, and never leave their lines', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { maxLength: 8 }), (heights) => {
      const places = labelPlaces(
        heights.map((y) => end(y)),
        room,
        [],
      );
      if (places === null) return;
      const sorted = places.map(({ y }) => y).sort((one, other) => one - other);
      for (const [at, y] of sorted.entries())
        expect(y - (sorted[at - 1] ?? Number.NEGATIVE_INFINITY)).toBeGreaterThanOrEqual(room.height - 0.01);
      for (const [at, { y }] of places.entries())
        expect(Math.abs(y - (heights[at] ?? Number.NaN))).toBeLessThanOrEqual(room.reach);
    }),
  );
});
