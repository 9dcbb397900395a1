import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { roundCap } from '../../../src/trade/blank/round-cap.ts';

it('the turned flange takes a ring off the disc: what is left closes the pipe', () => {
  const { area, turned, girth } = roundCap(inches(12), inches(0.5), inches(0));
  const ring = Math.PI * (6.5 ** 2 - 6 ** 2);
  expect(144 * area - ring).toBeCloseTo((Math.PI * turned ** 2) / 4, 9);
  expect(girth).toBeCloseTo(12 * Math.PI, 9);
});

it('ease makes the cap go over the pipe or inside it, and the disc with it', () => {
  const disc = (ease: number) => roundCap(inches(8), inches(0.375), inches(ease)).disc;
  expect([disc(-0.125), disc(0), disc(0.125)]).toEqual([8.625, 8.75, 8.875]);
});
