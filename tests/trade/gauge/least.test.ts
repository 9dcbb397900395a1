import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches, inchesOfWater } from '../../../src/base/quantity.ts';
import {
  type DuctInUse,
  type LeastTable,
  leastSheet,
  leastTables,
  lightestGalvanized,
} from '../../../src/trade/gauge/least.ts';
import { sheetOf } from '../../../src/trade/gauge/sheet.ts';

const duct: DuctInUse = {
  shape: 'rectangular',
  size: inches(16),
  pressure: inchesOfWater(0.5),
  metal: 'galvanized',
  isExposed: false,
};

function least(table: LeastTable, change: Partial<DuctInUse>) {
  const outcome = leastSheet(table, { ...duct, ...change });
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

it.each(leastTables)('by the %s a larger duct never gets a lighter sheet', (table) => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 19, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (size, more) => {
        const small = least(table, { size: inches(size) }).thickness;
        expect(least(table, { size: inches(size + more) }).thickness).toBeGreaterThanOrEqual(small);
      },
    ),
  );
});

it('more pressure never gets a lighter sheet, and a pressure between two columns takes the higher', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('round' as const, 'rectangular' as const),
      fc.double({ min: 2, max: 20, noNaN: true }),
      fc.double({ min: 0.51, max: 1, noNaN: true }),
      (shape, size, between) => {
        const at = (pressure: number) =>
          least('dwelling code', { shape, size: inches(size), pressure: inchesOfWater(pressure) }).thickness;
        expect(at(between)).toBe(at(1));
        expect(at(1)).toBeGreaterThanOrEqual(at(0.5));
      },
    ),
  );
});

it('a size between two rows takes the larger row; under 12 in stops short of 12', () => {
  expect(least('dwelling code', { size: inches(8.25) }).row).toBe(10);
  const round = (size: number) => least('dwelling code', { shape: 'round', size: inches(size) });
  expect([11.9, 12, 14.5].map((size) => round(size).row)).toEqual([12, 14, 17]);
});

it('past its last size and pressure the dwelling table gives nothing', () => {
  expect(leastSheet('dwelling code', { ...duct, size: inches(20.5) })).toEqual({
    ok: false,
    fault: { code: 'past_the_table', table: 'dwelling code', what: 'size', got: 20.5, most: 20 },
  });
  expect(leastSheet('dwelling code', { ...duct, pressure: inchesOfWater(1.5) })).toEqual({
    ok: false,
    fault: { code: 'past_the_table', table: 'dwelling code', what: 'pressure', got: 1.5, most: 1 },
  });
});

it('the handbook series changes after 12, 30, 54 and 84 in', () => {
  const gauge = (size: number) => least('estimating handbook', { size: inches(size) }).gauge;
  expect([12, 13, 30, 31, 54, 55, 84, 85].map(gauge)).toEqual([26, 24, 24, 22, 22, 20, 20, 18]);
});

it('the older table asks a heavier sheet of exposed rectangular duct, not of round pipe', () => {
  const gauges = (change: Partial<DuctInUse>) =>
    [14, 15].map((size) => least('older code', { ...change, size: inches(size) }).gauge);
  expect(gauges({})).toEqual([30, 28]);
  expect(gauges({ isExposed: true })).toEqual([28, 26]);
  expect(gauges({ isExposed: true, shape: 'round' })).toEqual([30, 28]);
  expect(gauges({ isExposed: true, metal: 'aluminum' })).toEqual([24, 22]);
});

it('the lightest gauge meets the thickness, and the next lighter does not', () => {
  fc.assert(
    fc.property(fc.integer({ min: 13, max: 70 }), (thousandths) => {
      const gauge = lightestGalvanized(inches(thousandths / 1000)) ?? Number.NaN;
      const minimum = (one: number) => {
        const sheet = sheetOf('galvanized', one, 'minimum');
        return sheet.ok ? Math.round(1000 * sheet.value.thickness) : 0;
      };
      expect(minimum(gauge)).toBeGreaterThanOrEqual(thousandths);
      expect(minimum(gauge + 2)).toBeLessThan(thousandths);
    }),
  );
});

it('nothing on the list is thick enough for plate', () => {
  expect(lightestGalvanized(inches(0.08))).toBeNull();
});
