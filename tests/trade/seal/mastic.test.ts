import { describe, expect, test } from 'vitest';
import { gallons, inches, squareFeet } from '../../../src/base/quantity.ts';
import { leakageLimit } from '../../../src/trade/seal/limit.ts';
import { beadsFor, masticCoverage, masticFor, pailsFor } from '../../../src/trade/seal/mastic.ts';

describe('mastic', () => {
  // Sealant sheets: 80 sq ft at 20 mil, 50 at 32 mil, 45 to 55 at 32 mil.
  test('covers what sealant sheets print, within 1 %', () => {
    expect(masticCoverage(20) / 80).toBeCloseTo(1, 2);
    expect(masticCoverage(32) / 50).toBeCloseTo(1, 2);
  });
  test('twice the film or twice the band takes twice as much', () => {
    const needed = (band: number, film: number) =>
      masticFor(inches(1000), inches(band), film, 0, 0.56).gallons;
    expect(needed(4, 20)).toBeCloseTo(2 * needed(2, 20), 12);
    expect(needed(2, 40)).toBeCloseTo(2 * needed(2, 20), 12);
  });
  test('comes in whole pails', () => {
    expect(pailsFor(gallons(2), gallons(1)).pails).toBe(2);
    expect(pailsFor(gallons(2.01), gallons(1)).pails).toBe(3);
    expect(pailsFor(gallons(0), gallons(1)).pails).toBe(0);
  });
  test('in a bead: a data sheet prints 30 ft at 1/4 in and 125 ft at 1/8 in; volume gives a little more', () => {
    const feetAt = (bead: number) => beadsFor(inches(1), inches(bead), 10.5, 0).perCartridge / 12;
    expect(feetAt(1 / 4)).toBeCloseTo(32.17, 2);
    expect(feetAt(1 / 8)).toBeCloseTo(128.7, 1);
    expect(beadsFor(inches(12 * 70), inches(1 / 4), 10.5, 0).cartridges).toBe(3);
  });
});

test('the leakage that a code allows goes by floor area, code and stage', () => {
  const at = (...[code, stage]: [Parameters<typeof leakageLimit>[0], Parameters<typeof leakageLimit>[1]]) =>
    leakageLimit(code, stage, squareFeet(2000));
  expect(at('IRC 2018', 'rough-in')).toMatchObject({ value: { limit: 80 } });
  expect(at('IRC 2018', 'buried')).toMatchObject({ value: { limit: 30 } });
  expect(at('IECC 2009', 'finished')).toMatchObject({ value: { limit: 240 } });
  expect(at('IECC 2015', 'buried')).toMatchObject({ fault: { code: 'no_code_row', table: 'IECC 2015' } });
});
