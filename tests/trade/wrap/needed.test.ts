import { describe, expect, test } from 'vitest';
import { fahrenheit, inches } from '../../../src/base/quantity.ts';
import { type DuctInPlace, type NeededCode, neededR } from '../../../src/trade/wrap/needed.ts';

const duct = (about: Partial<DuctInPlace>): DuctInPlace => ({
  place: 'attic',
  size: inches(8),
  duty: 'supply',
  zone: null,
  difference: null,
  ...about,
});

function rOf(code: NeededCode, about: Partial<DuctInPlace>): number {
  const found = neededR(code, duct(about));
  if (!found.ok) throw new Error(found.fault.code);
  return found.value.r;
}

describe('the energy code of 2015 for homes', () => {
  test('asks for more in an attic, and for less of a duct under 3 in', () => {
    expect(rOf('IECC 2015 homes', { size: inches(3) })).toBe(8);
    expect(rOf('IECC 2015 homes', { size: inches(2.99) })).toBe(6);
    expect(rOf('IECC 2015 homes', { place: 'crawl space', size: inches(3) })).toBe(6);
    expect(rOf('IECC 2015 homes', { place: 'basement', size: inches(2.5) })).toBe(4.2);
    expect(rOf('IECC 2015 homes', { place: 'inside' })).toBe(0);
  });

  test('is not stretched to places that it does not name', () => {
    expect(neededR('IECC 2015 homes', duct({ place: 'outdoors' }))).toMatchObject({
      ok: false,
      fault: { code: 'no_code_row', table: 'IECC 2015 homes', what: 'a duct outdoors' },
    });
  });
});

test('supply and return in an attic differ in 2009 and in one summary of 2018, not in 2015', () => {
  const both = (code: NeededCode) => [rOf(code, { duty: 'supply' }), rOf(code, { duty: 'return' })];
  expect(both('IECC 2009 homes')).toEqual([8, 6]);
  expect(both('IRC 2018 homes')).toEqual([8, 6]);
  expect(both('IECC 2015 homes')).toEqual([8, 8]);
});

test('a commercial duct outdoors goes by the climate zone, which must be given', () => {
  const outdoors = (zone: number | null) => ({ place: 'outdoors', zone }) as const;
  expect([1, 4, 5, 8].map((zone) => rOf('IECC 2015 commercial', outdoors(zone)))).toEqual([8, 8, 12, 12]);
  expect(rOf('IECC 2015 commercial', { place: 'attic' })).toBe(6);
  expect(neededR('IECC 2015 commercial', duct(outdoors(null)))).toMatchObject({
    fault: { code: 'needs_for_table', what: 'zone' },
  });
  expect(neededR('Washington 2015 commercial', duct(outdoors(6)))).toMatchObject({
    fault: { code: 'no_code_row', what: 'zone 6' },
  });
});

test('Minnesota goes by the difference where no place is named', () => {
  const at = (difference: number) =>
    rOf('Minnesota homes', { place: 'basement', difference: fahrenheit(difference) });
  expect([0, 15, 15.1, 40, 40.1].map(at)).toEqual([0, 0, 3.3, 3.3, 5]);
  expect(neededR('Minnesota homes', duct({ place: 'basement' }))).toMatchObject({
    fault: { code: 'needs_for_table', what: 'difference' },
  });
  expect(rOf('Minnesota homes', { place: 'garage' })).toBe(8);
});

test('Ontario’s 2.1 m²·K/W is R 11.92', () => {
  expect(rOf('Ontario homes', {})).toBeCloseTo(11.924, 3);
});
