import { expect, test } from 'vitest';
import { readingPlace } from '../../../src/ui/plot/reading-place.ts';

const frame = { left: 40, right: 640, top: 30, bottom: 330 };
const box = { width: 200, height: 100 };

test('the values stand right of the hairline, or left of it near the right edge', () => {
  expect(readingPlace(100, box, frame, [])).toEqual({ x: 110, y: 30 });
  expect(readingPlace(600, box, frame, [])).toEqual({ x: 390, y: 30 });
});

test('they make way for the lines', () => {
  const falling = [
    { x: 320, y: 60 },
    { x: 400, y: 70 },
    { x: 200, y: 50 },
  ];
  expect(readingPlace(300, box, frame, falling)).toEqual({ x: 310, y: 130 });
});

test('a box wider than either side still stays in the frame', () => {
  expect(readingPlace(340, { width: 400, height: 100 }, frame, [])).toEqual({ x: 240, y: 30 });
});
