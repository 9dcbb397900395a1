import { expect, test } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { wrappedSize } from '../../../src/trade/wrap/outside.ts';
import { bottomPins } from '../../../src/trade/wrap/pins.ts';

test('wrap adds its thickness on both sides', () => {
  expect(wrappedSize({ shape: 'round', diameter: inches(16) }, inches(2.25))).toMatchObject({
    width: 20.5,
    depth: null,
    around: 20.5 * Math.PI,
  });
  expect(
    wrappedSize({ shape: 'rectangular', width: inches(20), depth: inches(8) }, inches(1.5)),
  ).toMatchObject({ width: 23, depth: 11, around: 56 + 3 * Math.PI });
});

test('pins hold wrap from below on ducts of 24 in and wider', () => {
  const pins = (width: number, length = 240) =>
    bottomPins(inches(width), inches(length), inches(18), inches(24)).pins;
  expect(pins(36)).toBe(28);
  expect(pins(24)).toBe(28);
  expect(pins(23.99)).toBe(0);
  expect(pins(37)).toBe(42);
});
