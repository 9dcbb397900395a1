import fc from 'fast-check';
import { expect, test } from 'vitest';
import { unitNames } from '../../src/base/unit.ts';
import type { Cell, Format } from '../../src/workbook/document.ts';
import { readEntry } from '../../src/workbook/entry.ts';
import { sheetTexts, textOf } from '../../src/workbook/sheet-texts.ts';
import { noValues } from '../../src/workbook/values.ts';
import { heading, sheetOf, words } from './sample.ts';

const formats: readonly (Format | undefined)[] = [
  undefined,
  { type: 'millimetres', places: 1 },
  { type: 'decimal', places: 2 },
  { type: 'tape', denominator: 16, round: 'up', feet: true },
];

test('a sheet is written as a full block, as shown or with every digit', () => {
  const length: Cell = { content: 57.617, role: 'given', unit: 'in', format: formats[3] as Format };
  const share: Cell = { content: 0.07, role: 'given', unit: 'percent' };
  const sheet = sheetOf('s', 'S', [
    [heading('Piece'), heading('Girth')],
    [words('S1'), length],
    [share, null, null],
    [],
  ]);
  expect(sheetTexts(sheet, noValues, 'shown')).toEqual([
    ['Piece', 'Girth'],
    ['S1', '4′ 9 ⅝″'],
    ['7 %', ''],
  ]);
  expect(sheetTexts(sheet, noValues, 'exact')).toEqual([
    ['Piece', 'Girth'],
    ['S1', '57.617'],
    ['7', ''],
  ]);
  expect(sheetTexts({ ...sheet, rows: [] }, noValues, 'shown')).toEqual([]);
});

test('a number of any unit, written with every digit, is read back by its cell as the same number', () => {
  const numbers = fc
    .double({ min: -1e6, max: 1e6, noNaN: true })
    .filter((one) => Math.abs(one) > 1e-6 || one === 0);
  fc.assert(
    fc.property(
      numbers,
      fc.constantFrom(...unitNames),
      fc.constantFrom(...formats),
      (value, unit, format) => {
        const whole = unit === 'count' || unit === 'gauge' ? Math.round(value) : value;
        const cell: Cell = { content: null, role: 'given', unit, ...(format ? { format } : {}) };
        const entry = readEntry(textOf(whole, cell, 'exact'), cell);
        expect(entry.ok).toBe(true);
        if (!entry.ok) return;
        const back = Number(entry.value.content);
        expect(Math.abs(back - whole)).toBeLessThanOrEqual(Math.abs(whole) * 1e-12);
      },
    ),
    { numRuns: 2000 },
  );
});

test('a number of any unit, written as it is shown, is read back by its cell as what is shown', () => {
  const numbers = fc.double({ min: 0, max: 1e5, noNaN: true });
  fc.assert(
    fc.property(
      numbers,
      fc.constantFrom(...unitNames),
      fc.constantFrom(...formats),
      (value, unit, format) => {
        const whole = unit === 'count' || unit === 'gauge' ? Math.round(value) : value;
        const cell: Cell = { content: null, role: 'given', unit, ...(format ? { format } : {}) };
        const shown = textOf(whole, cell, 'shown');
        const entry = readEntry(shown, cell);
        expect(entry).toMatchObject({ ok: true });
        if (entry.ok) expect(textOf(Number(entry.value.content), cell, 'shown')).toBe(shown);
      },
    ),
    { numRuns: 2000 },
  );
});
