import { describe, expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { tapeParts, writeTape } from '../../../src/trade/tape/write.ts';

describe('a length is written as a tape shows it', () => {
  const sixteenths = { denominator: 16, round: 'nearest', feet: true } as const;
  it.each([
    [174.5, '14′ 6 ½″'],
    [168, '14′ 0″'],
    [12.5, '1′ 0 ½″'],
    [0.75, '¾″'],
    [0, '0″'],
    [66.4375, '5′ 6 7⁄16″'],
    [-30.25, '-2′ 6 ¼″'],
    [-0.001, '0″'],
  ])('%d in is %s', (length, text) => {
    expect(writeTape(inches(length), sixteenths)).toBe(text);
  });

  it('keeps whole inches together when feet are not split off', () => {
    expect(writeTape(inches(174.5), { ...sixteenths, feet: false })).toBe('174 ½″');
  });

  it('carries into the next foot when rounding fills the last inch', () => {
    expect(writeTape(inches(11 + 31 / 32), { denominator: 8, round: 'up', feet: true })).toBe('1′ 0″');
  });

  it('gives its parts in lowest terms, so that a page can set a real fraction', () => {
    expect(tapeParts(inches(174.5), sixteenths)).toEqual({
      sign: 1,
      feet: 14,
      whole: 6,
      numerator: 1,
      denominator: 2,
    });
  });
});
