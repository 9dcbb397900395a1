import { describe, expect, it } from 'vitest';
import { readTape } from '../../../src/trade/tape/read.ts';

const inInches = (text: string) => readTape(text, 'in');

describe('a length is read as people write it', () => {
  it.each([
    [`12' 4 1/2"`, 148.5],
    ['12 ft 4-1/2 in', 148.5],
    [`14' 6`, 174],
    [`14' 6 1/2`, 174.5],
    [`12'-4 1/2"`, 148.5],
    ['41 3/8', 41.375],
    ['41-3/8"', 41.375],
    ['3/8', 0.375],
    ['.5', 0.5],
    ['12.25', 12.25],
    ['12.', 12],
    ['12′ 4 ½″', 148.5],
    ['12’ 4½”', 148.5],
    [`12' 4''`, 148],
    ['¼', 0.25],
    ['2 ¾', 2.75],
    ['1⅛ in.', 1.125],
    ['⅜"', 0.375],
    ['7⅝', 7.625],
    ['⅞ inch', 0.875],
    ['6 7⁄16″', 6.4375],
    ['-3 1/2', -3.5],
    ['−2′ 6″', -30],
    ['  16  ', 16],
    ['12.5 FT', 150],
    ['9/8', 1.125],
    ['12-4-1/2', 148.5],
    ['12-4 1/2"', 148.5],
    ['137.2cm', 137.2 / 2.54],
    ['1372mm', 1372 / 25.4],
    ['1.37 m', 1370 / 25.4],
  ])('%s', (text, length) => {
    const outcome = inInches(text);
    expect(outcome).toMatchObject({ ok: true });
    expect(outcome.ok && outcome.value).toBeCloseTo(length, 12);
  });

  it('takes more than twelve inches after feet, since a tape may be read so', () => {
    expect(inInches(`12' 13 1/2"`)).toEqual({ ok: true, value: 157.5 });
  });

  it('takes a bare number in the unit of its cell', () => {
    expect(readTape('2', 'ft')).toEqual({ ok: true, value: 24 });
    expect(readTape('254', 'mm')).toEqual({ ok: true, value: 10 });
    expect(readTape('2.54', 'm')).toEqual({ ok: true, value: 100 });
    expect(readTape('6"', 'ft')).toEqual({ ok: true, value: 6 });
  });
});

describe('a text that is no length is refused with the place of the trouble', () => {
  it.each([
    ['', { code: 'nothing_typed' }],
    ['   ', { code: 'nothing_typed' }],
    [`12'4'`, { code: 'unit_twice', at: 3, unit: 'ft', instead: `12' 4"` }],
    [`4" 5"`, { code: 'unit_twice', at: 3, unit: 'in', instead: '4"' }],
    [`4" 12'`, { code: 'inches_before_feet', at: 3 }],
    ['1/0', { code: 'over_zero', at: 0, got: '1/0' }],
    ['5 1/2 3', { code: 'one_number_too_many', at: 6, got: '3' }],
    ['14 6', { code: 'one_number_too_many', at: 3, got: '6' }],
    [`6" 1/2`, { code: 'one_number_too_many', at: 3, got: '1/2' }],
    [`1' 2" 3`, { code: 'one_number_too_many', at: 6, got: '3' }],
    ['12,5', { code: 'comma', at: 2, instead: '12.5' }],
    ['3/', { code: 'half_a_fraction', at: 1 }],
    ['/4', { code: 'number_expected', at: 0, got: '/4' }],
    ['1/2/3', { code: 'number_expected', at: 3, got: '/3' }],
    ['1.5 1/2', { code: 'point_and_fraction', at: 0 }],
    ['1/2.5', { code: 'point_and_fraction', at: 2 }],
    ['41 11/8', { code: 'fraction_of_one_or_more', at: 3, got: '11/8', instead: '42 3/8' }],
    [`12.5' 4"`, { code: 'part_of_a_foot', at: 0 }],
    [`3' 20mm`, { code: 'mixed_systems', at: 3, got: `3' 20mm` }],
    ['1 m 20 cm', { code: 'mixed_systems', at: 0, got: '1 m 20 cm' }],
    ['ft', { code: 'number_expected', at: 0, got: 'ft' }],
    ['-', { code: 'number_expected', at: 1, got: '' }],
    ['12 - 4', { code: 'number_expected', at: 3, got: '- 4' }],
    ['about 12', { code: 'unknown_sign', at: 0, got: 'about' }],
    ['12 constructor', { code: 'unknown_sign', at: 3, got: 'constructor' }],
    ['1e3', { code: 'unknown_sign', at: 1, got: 'e' }],
    ['9'.repeat(61), { code: 'too_long', got: 61, most: 60 }],
  ])('%s', (text, fault) => {
    expect(inInches(text)).toEqual({ ok: false, fault });
  });
});
