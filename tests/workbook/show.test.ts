import { describe, expect, test } from 'vitest';
import type { Unit } from '../../src/base/unit.ts';
import type { Format } from '../../src/workbook/document.ts';
import { showValue } from '../../src/workbook/show.ts';

const sixteenths: Format = { type: 'tape', denominator: 16, round: 'up', feet: false };
const feet: Format = { type: 'tape', denominator: 16, round: 'nearest', feet: true };
const decimal = (places: number): Format => ({ type: 'decimal', places });

describe('a number is shown by the unit and format of its cell', () => {
  test.each<[number, Unit | undefined, Format | undefined, string]>([
    [66.4014, 'in', sixteenths, '66 7⁄16″'],
    [66.5, 'in', sixteenths, '66 ½″'],
    [148.5, 'in', feet, '12′ 4 ½″'],
    [14.5, 'ft', feet, '14′ 6″'],
    [66.40141, 'in', decimal(2), '66.40 in'],
    [10, 'in', { type: 'millimetres', places: 0 }, '254 mm'],
    [0.1, 'percent', undefined, '10 %'],
    [0.125, 'percent', { type: 'percent', places: 1 }, '12.5 %'],
    [1234.5, 'money', undefined, '$1,234.50'],
    [-3, 'money', undefined, '-$3.00'],
    [8.3, 'r', undefined, '8.3'],
    [26, 'gauge', undefined, '26 ga'],
    [12345678, 'count', undefined, '12,345,678'],
    [1 / 3, undefined, undefined, '0.3333'],
    [-0.00001, undefined, undefined, '0'],
    [0.1 + 0.2, undefined, undefined, '0.3'],
  ])('%d in %s with %o is %s', (value, unit, format, text) => {
    expect(showValue(value, unit, format).text).toBe(text);
  });
});

test('blank, words, yes and no, and a fault each have their own kind', () => {
  expect(showValue(null)).toEqual({ type: 'blank', text: '' });
  expect(showValue('S1')).toEqual({ type: 'text', text: 'S1' });
  expect(showValue(true).text).toBe('yes');
  expect(showValue({ fault: 'circular', sentence: 'A1 → A1' })).toMatchObject({
    type: 'fault',
    text: 'goes in a circle',
  });
});
