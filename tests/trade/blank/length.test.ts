import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { blankLength } from '../../../src/trade/blank/length.ts';

it('a section of 60 in with half an inch turned back at each end is cut at 61 in', () => {
  expect(blankLength(inches(60), inches(0.5), inches(0.5))).toBe(61);
});

it('the two ends may differ', () => {
  expect(blankLength(inches(60), inches(1), inches(0))).toBe(61);
});
