import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { roundToTape } from '../../../src/trade/tape/round.ts';

const up = (length: number) => roundToTape(inches(length), 8, 'up').rounded;

it('a length on a mark stays on it, even when its last binary digits are off', () => {
  expect([up(66.5), up(66.50000000000001), up(66.49999999999999)]).toEqual([66.5, 66.5, 66.5]);
});

it('a length past a mark goes to the next one', () => {
  expect(up(66.501)).toBe(66.625);
});

it('says how much rounding added', () => {
  expect(roundToTape(inches(66.4), 8, 'up').added).toBeCloseTo(0.1, 12);
  expect(roundToTape(inches(66.4), 8, 'down').added).toBeCloseTo(-0.025, 12);
});

it('half a mark goes away from zero', () => {
  const nearest = (length: number) => roundToTape(inches(length), 16, 'nearest').rounded;
  expect([nearest(1 / 32), nearest(-1 / 32)]).toEqual([1 / 16, -1 / 16]);
});
