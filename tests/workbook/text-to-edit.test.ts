import fc from 'fast-check';
import { expect, test } from 'vitest';
import { unitNames } from '../../src/base/unit.ts';
import type { Cell, Format } from '../../src/workbook/document.ts';
import { readEntry } from '../../src/workbook/entry.ts';
import { textToEdit } from '../../src/workbook/text-to-edit.ts';

const formats = fc.constantFrom<Format | undefined>(
  undefined,
  { type: 'tape', denominator: 16, round: 'up', feet: false },
  { type: 'tape', denominator: 64, round: 'nearest', feet: true },
  { type: 'decimal', places: 2 },
  { type: 'percent', places: 1 },
  { type: 'millimetres', places: 1 },
);

function given(content: number, unit: Cell['unit'], format: Format | undefined): Cell {
  return { content, role: 'given', ...(unit && { unit }), ...(format && { format }) };
}

test('a number opened in its cell and left as it is reads back as the very same number', () => {
  const numbers = fc.oneof(
    fc.integer({ min: -5000, max: 50_000 }),
    fc.integer({ min: -6400, max: 64_000 }).map((sixtyFourths) => sixtyFourths / 64),
    fc.integer({ min: 0, max: 100_000 }).map((hundredths) => hundredths / 100),
    fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((number) => Number(number.toFixed(6))),
  );
  fc.assert(
    fc.property(numbers, fc.constantFrom(...unitNames), formats, (content, unit, format) => {
      fc.pre(Number.isInteger(content) || (unit !== 'count' && unit !== 'gauge'));
      const cell = given(content, unit, format);
      const entry = readEntry(textToEdit(cell), cell);
      if (!entry.ok) throw new Error(`${textToEdit(cell)} is refused: ${JSON.stringify(entry.fault)}`);
      expect(entry.value.content).toBeCloseTo(content, 9);
    }),
    { numRuns: 3000 },
  );
});

test('a length opens as the tape shows it only where that is all of it', () => {
  const tape = { type: 'tape', denominator: 16, round: 'up', feet: true } as const;
  expect(textToEdit(given(174.5, 'in', tape))).toBe('14′ 6 ½″');
  expect(textToEdit(given(66.4014, 'in', tape))).toBe('66.4014');
  expect(textToEdit(given(10.5, 'in', { type: 'millimetres', places: 0 }))).toBe('10.5″');
  expect(textToEdit({ content: 1234.5, role: 'text' })).toBe('1234.5');
  expect(textToEdit({ ...given(54, 'in', tape), typed: '1371.6mm' })).toBe('1371.6mm');
});

test('a formula opens with its sign, an empty cell with nothing', () => {
  expect(textToEdit({ content: { formula: 'B2*2' }, role: 'figured' })).toBe('=B2*2');
  expect(textToEdit({ content: null, role: 'given', unit: 'in' })).toBe('');
  expect(textToEdit(null)).toBe('');
});
