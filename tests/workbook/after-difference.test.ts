import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CellAddress } from '../../src/base/address.ts';
import { afterDifference } from '../../src/workbook/after-difference.ts';
import { changeLines } from '../../src/workbook/command/lines.ts';
import { moveLines } from '../../src/workbook/command/move-lines.ts';
import { applyDifference, type Difference, invertDifference } from '../../src/workbook/difference.ts';
import type { Workbook } from '../../src/workbook/document.ts';
import { emptyWorkbook } from '../../src/workbook/empty.ts';
import { text } from '../ui/grid/cells.ts';
import '../fixed-seed.ts';

const sheetId = 'sheet-1';

function withMark({ row, column }: CellAddress): Workbook {
  const workbook = emptyWorkbook('own', 'Own');
  const rows = Array.from({ length: 8 }, (_, down) =>
    Array.from({ length: 8 }, (_, right) => (down === row && right === column ? text('here') : text('.'))),
  );
  return { ...workbook, sheets: workbook.sheets.map((sheet) => ({ ...sheet, rows })) };
}

function placeOfMark({ sheets }: Workbook): CellAddress | null {
  for (const [row, cells] of (sheets[0]?.rows ?? []).entries()) {
    const column = cells.findIndex((cell) => cell?.content === 'here');
    if (column >= 0) return { row, column };
  }
  return null;
}

test('what waits in a cell goes where the cell goes when rows and columns come and go, and back again', () => {
  const place = fc.integer({ min: 0, max: 7 });
  fc.assert(
    fc.property(
      fc.record({ row: place, column: place }),
      fc.constantFrom('insert_lines' as const, 'remove_lines' as const),
      fc.constantFrom('row' as const, 'column' as const),
      place,
      fc.integer({ min: 1, max: 3 }),
      (address, type, axis, at, count) => {
        const workbook = withMark(address);
        const outcome = changeLines(workbook, { type, sheet: sheetId, axis, at, count });
        if (!outcome.ok) throw new Error('These lines can be changed.');
        const hung = [{ sheetId, address }];
        const moved = afterDifference(hung, outcome.value);
        const seen = placeOfMark(applyDifference(workbook, outcome.value));
        expect(moved).toEqual(seen ? [{ sheetId, address: seen }] : []);
        if (seen) expect(afterDifference(moved, invertDifference(outcome.value))).toEqual(hung);
      },
    ),
  );
});

test('what waits in a cell goes along when its row or column is moved past others', () => {
  const place = fc.integer({ min: 0, max: 7 });
  fc.assert(
    fc.property(
      fc.record({ row: place, column: place }),
      fc.constantFrom('row' as const, 'column' as const),
      fc.integer({ min: 0, max: 5 }),
      fc.integer({ min: 1, max: 3 }),
      fc.integer({ min: 0, max: 8 }),
      (address, axis, at, count, to) => {
        const workbook = withMark(address);
        const outcome = moveLines(workbook, { type: 'move_lines', sheet: sheetId, axis, at, count, to });
        if (!outcome.ok) throw new Error('These lines can be moved.');
        const seen = placeOfMark(applyDifference(workbook, outcome.value));
        const hung = [{ sheetId, address }];
        const moved = afterDifference(hung, outcome.value);
        expect(moved).toEqual([{ sheetId, address: seen }]);
        expect(afterDifference(moved, invertDifference(outcome.value))).toEqual(hung);
      },
    ),
  );
});

test('it is gone when something else is put into its cell, and stays when the cell only looks another way', () => {
  const hung = [{ sheetId, address: { row: 1, column: 1 } }];
  const change = (after: ReturnType<typeof text>): Difference => [
    { type: 'cell', sheet: sheetId, address: { row: 1, column: 1 }, before: text('old'), after },
  ];
  expect(afterDifference(hung, change(text('new')))).toEqual([]);
  expect(afterDifference(hung, change({ ...text('old'), note: 'measured twice' }))).toEqual(hung);
  const other = [{ sheetId: 'sheet-2', address: { row: 1, column: 1 } }];
  expect(afterDifference(other, change(text('new')))).toEqual(other);
});
