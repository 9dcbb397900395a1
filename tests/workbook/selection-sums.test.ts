import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Unit } from '../../src/base/unit.ts';
import type { CellValue } from '../../src/base/value.ts';
import type { Cell, Content, Format, Sheet } from '../../src/workbook/document.ts';
import { type SelectionSums, sumsOf } from '../../src/workbook/selection-sums.ts';
import { noValues, withValues } from '../../src/workbook/values.ts';

const tape: Format = { type: 'tape', denominator: 16, round: 'up', feet: false };

function column(cells: readonly (Cell | null)[]): Sheet {
  return { id: 'one', name: 'One', says: '', columns: [], rows: cells.map((cell) => [cell]) };
}

function measured(content: Content, unit?: Unit, format?: Format): Cell {
  return { content, role: 'given', ...(unit && { unit }), ...(format && { format }) };
}

function sums(cells: readonly (Cell | null)[], figured: CellValue = null): SelectionSums {
  const sheet = column(cells);
  const values = withValues(noValues, [{ sheet: 'One', row: 0, column: 0, value: figured }]);
  return sumsOf(sheet, values, { from: { row: 0, column: 0 }, to: { row: 99_998, column: 701 } });
}

test('lengths are added as they are and shown once as a tape shows them', () => {
  const found = sums([measured(16.02, 'in', tape), null, measured(12.02, 'in', tape), measured(null, 'in')]);
  expect(found).toMatchObject({
    filled: 2,
    numbers: 2,
    sum: '28 1⁄16″',
    least: '12 1⁄16″',
    most: '16 1⁄16″',
  });
});

test('numbers that measure different things are counted, never added or set side by side', () => {
  const found = sums([measured(16, 'in'), measured(3, 'ft'), { content: 'elbow', role: 'text' }]);
  expect(found).toMatchObject({ filled: 3, numbers: 2, isMixed: true, sum: null, least: null, most: null });
});

test('temperatures and gauges have a least and a most but no sum', () => {
  expect(sums([measured(55, 'degF'), measured(95, 'degF')])).toMatchObject({
    sum: null,
    least: '55 °F',
    most: '95 °F',
  });
  expect(sums([measured(26, 'gauge'), measured(24, 'gauge')]).sum).toBe(null);
});

test('a sum that would leave a missing figure out is not given', () => {
  const figured: Cell = { content: { formula: 'A9' }, role: 'figured', unit: 'in', format: tape };
  const missing = { fault: 'divided_by_zero', sentence: 'Nothing to divide by.' } as const;
  expect(sums([figured, measured(3, 'in', tape)], missing)).toMatchObject({
    faults: 1,
    sum: null,
    least: null,
  });
  expect(sums([figured, measured(3, 'in', tape)], 4)).toMatchObject({ faults: 0, sum: '7″' });
});

test('cells without numbers are counted only', () => {
  expect(sums([measured('R-8 wrap'), measured(true)])).toMatchObject({ filled: 2, numbers: 0, sum: null });
  expect(sums([])).toMatchObject({ filled: 0, isMixed: false, least: null });
});

test('the least is never more than the most, and the sum of whole numbers is exact', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 1 }), (numbers) => {
      const found = sums(numbers.map((number) => measured(number)));
      const read = (text: string | null) => Number((text ?? '').replaceAll(',', ''));
      expect(read(found.sum)).toBe(numbers.reduce((sum, number) => sum + number, 0) + 0);
      expect(read(found.least)).toBe(Math.min(...numbers));
      expect(read(found.most)).toBe(Math.max(...numbers));
    }),
  );
});
