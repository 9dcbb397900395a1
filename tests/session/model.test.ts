import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { bookOf } from '../../src/engine/book.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { createSession } from '../../src/session/session.ts';
import { cellAt, sheetNamed } from '../../src/workbook/cells.ts';
import type { Dress } from '../../src/workbook/command/dress.ts';
import type { Command } from '../../src/workbook/commands.ts';
import { isFormula, type Workbook } from '../../src/workbook/document.ts';
import { storedForm } from '../../src/workbook/file.ts';
import { placeOfKey } from '../../src/workbook/place-key.ts';
import { noValues, type Values, withValues } from '../../src/workbook/values.ts';
import { cases } from '../depth.ts';
import { sampleWorkbook } from '../workbook/sample.ts';

const address = fc.record({ row: fc.nat({ max: 5 }), column: fc.nat({ max: 4 }) });
const sheet = fc.constantFrom('pieces', 'wrap', 'third');
const block = fc
  .record({ from: address, rows: fc.nat({ max: 2 }), columns: fc.nat({ max: 1 }) })
  .map(({ from, rows, columns }) => ({
    from,
    to: { row: from.row + rows, column: from.column + columns },
  }));
const axis = fc.constantFrom('row' as const, 'column' as const);
const typed = fc.constantFrom(
  '16',
  '7.5',
  'S3',
  '',
  '=B2*2',
  '=SUM(Pieces!B1:B3)',
  '=Pieces!B2+$C$2',
  "='Wrap round'!B2/2",
  '=SUM(diameters)',
  '=IF(B2>10,B3,A1)',
  '=Third!A1+1',
  '=C2',
);
const command: fc.Arbitrary<Command> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ type: fc.constant('enter' as const), sheet, address, typed }) },
  fc.record({ type: fc.constant('clear' as const), sheet, addresses: fc.array(address, { maxLength: 3 }) }),
  fc.record({
    type: fc.constantFrom('insert_lines' as const, 'remove_lines' as const),
    sheet,
    axis,
    at: fc.nat({ max: 4 }),
    count: fc.integer({ min: 1, max: 2 }),
  }),
  fc.record({
    type: fc.constantFrom('put_in_line' as const, 'take_out_line' as const),
    sheet,
    address,
  }),
  fc.record({
    type: fc.constant('move_lines' as const),
    sheet,
    axis,
    at: fc.nat({ max: 4 }),
    count: fc.integer({ min: 1, max: 2 }),
    to: fc.nat({ max: 7 }),
  }),
  fc.record({
    type: fc.constant('write' as const),
    sheet,
    at: address,
    rows: fc.array(fc.array(typed, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 2 }),
  }),
  fc.record({
    type: fc.constant('copy' as const),
    from: fc.record({ sheet, range: block }),
    to: fc.record({ sheet, range: block }),
  }),
  fc.record({
    type: fc.constant('move' as const),
    from: fc.record({ sheet, range: block }),
    to: fc.record({ sheet, at: address }),
  }),
  fc.record({ type: fc.constant('fill' as const), sheet, from: block }).map(({ from, ...rest }) => ({
    ...rest,
    from,
    to: { from: from.from, to: { row: from.to.row + 2, column: from.to.column } },
  })),
  fc.record({
    type: fc.constant('dress' as const),
    sheet,
    addresses: fc.array(address, { maxLength: 2 }),
    dress: fc.constantFrom<Dress>(
      { unit: 'in' },
      { unit: null, style: { bold: true } },
      { role: 'check' },
      { trait: { wraps: true } },
      { note: 'Ask the roofer.' },
    ),
  }),
  fc.constant<Command>({ type: 'add_sheet', id: 'third', name: 'Third', index: 1 }),
  fc.record({
    type: fc.constant('retype' as const),
    entries: fc.array(fc.record({ sheet, address, typed }), { minLength: 1, maxLength: 3 }),
  }),
  fc.record({ type: fc.constant('sort_rows' as const), sheet, block }).chain(({ block: range, ...rest }) =>
    fc
      .shuffledSubarray(
        Array.from({ length: range.to.row - range.from.row + 1 }, (_, row) => row),
        { minLength: range.to.row - range.from.row + 1 },
      )
      .map((order) => ({ ...rest, range, order })),
  ),
  fc.record({
    type: fc.constantFrom('hide_lines' as const, 'show_lines' as const),
    sheet,
    axis,
    at: fc.nat({ max: 4 }),
    count: fc.integer({ min: 1, max: 2 }),
  }),
  fc.record({
    type: fc.constant('freeze' as const),
    sheet,
    rows: fc.nat({ max: 3 }),
    columns: fc.nat({ max: 3 }),
  }),
  fc.constant<Command>({ type: 'copy_sheet', sheet: 'pieces', id: 'third', name: 'Third' }),
  fc.record({
    type: fc.constant('describe_sheet' as const),
    sheet,
    says: fc.constantFrom('Fill in.', 'Cut.'),
  }),
  fc.record({ type: fc.constant('remove_sheet' as const), sheet }),
  fc.record({
    type: fc.constant('rename_sheet' as const),
    sheet,
    name: fc.constantFrom('Pieces', 'Third', "It's", 'Wrap round', 'Cuts'),
  }),
  fc.record({
    type: fc.constantFrom('hide_lines' as const, 'show_lines' as const),
    sheet,
    axis,
    at: fc.nat({ max: 4 }),
    count: fc.integer({ min: 1, max: 2 }),
  }),
  fc.record({
    type: fc.constant('freeze' as const),
    sheet,
    rows: fc.nat({ max: 3 }),
    columns: fc.nat({ max: 2 }),
  }),
  fc.record({
    type: fc.constant('resize_column' as const),
    sheet,
    at: fc.nat({ max: 4 }),
    widths: fc.array(fc.integer({ min: 2, max: 40 }), { maxLength: 2 }),
  }),
  fc.constant<Command>({ type: 'copy_sheet', sheet: 'pieces', id: 'third', name: 'Third' }),
  fc.record({ type: fc.constant('describe_sheet' as const), sheet, says: fc.constantFrom('', 'Fill it.') }),
  fc.record({ type: fc.constant('move_sheet' as const), sheet, index: fc.nat({ max: 2 }) }),
  fc.record({
    type: fc.constant('name_range' as const),
    name: fc.constantFrom('lap', 'diameters', 'R8'),
    sheet,
    range: fc.constant({ from: { row: 1, column: 1 }, to: { row: 2, column: 1 } }),
  }),
  fc.record({
    type: fc.constant('rename_name' as const),
    name: fc.constantFrom('lap', 'diameters'),
    to: fc.constantFrom('lap', 'widths', 'SUM'),
  }),
  fc.record({
    type: fc.constant('remove_name' as const),
    name: fc.constantFrom('lap', 'diameters', 'widths'),
  }),
);

const step = fc.oneof(
  { weight: 5, arbitrary: command },
  fc.constantFrom('undo' as const, 'undo' as const, 'redo' as const),
);

/** The sheets may hold empty cells and rows at their ends, which mean nothing. */
const meaning = (workbook: Workbook) => {
  const { workbook: stored } = storedForm({ workbook, values: noValues });
  return JSON.stringify({ ...stored, sheets: stored.sheets.map(({ columns: _, ...rest }) => rest) });
};

/** Values of the cells that hold formulas now, by sheet and place. */
function figures(workbook: Workbook, values: Values): Record<string, unknown> {
  const all: Record<string, unknown> = {};
  for (const [name, own] of values) {
    const holder = sheetNamed(workbook, name);
    for (const [key, value] of own) {
      const place = placeOfKey(key);
      const cell = holder ? cellAt(holder, place) : null;
      if (cell && isFormula(cell.content)) all[`${name} ${place.row} ${place.column}`] = value;
    }
  }
  return all;
}

describe('whatever is done in whatever order', () => {
  test(
    'shown figures are those of a workbook opened afresh, and everything can be taken back',
    async () => {
      await fc.assert(
        fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 12 }), async (steps) => {
          const session = createSession({
            kept: { workbook: sampleWorkbook(), values: noValues },
            calculator: Promise.resolve(createCalculator({ functions: tradeFunctions })),
          });
          for (const one of steps) {
            if (one === 'undo') session.undo();
            else if (one === 'redo') session.redo();
            else session.run(one);
            await session.settled();
            const { workbook, values } = session.getState();
            const fresh = await createCalculator({ functions: tradeFunctions }).open(bookOf(workbook));
            expect(figures(workbook, values)).toEqual(figures(workbook, withValues(noValues, fresh)));
          }
          const last = meaning(session.getState().workbook);
          let deeds = 0;
          while (session.undo() !== null) deeds += 1;
          expect(meaning(session.getState().workbook)).toBe(meaning(sampleWorkbook()));
          for (let deed = 0; deed < deeds; deed += 1) session.redo();
          expect(meaning(session.getState().workbook)).toBe(last);
        }),
        { numRuns: cases(20, 1000) },
      );
    },
    cases(120_000, 3_600_000),
  );
});
