import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { instantiate } from '../../src/templates/instantiate.ts';
import { cellAt, cellsOf, sheetWithId } from '../../src/workbook/cells.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference } from '../../src/workbook/difference.ts';
import { type Cell, isFormula, type Workbook } from '../../src/workbook/document.ts';
import { readWorkbookFile, writeWorkbookFile } from '../../src/workbook/file.ts';
import { noValues } from '../../src/workbook/values.ts';
import { formula, heading, diameter as pipe, sampleWorkbook, sheetOf, words } from './sample.ts';

function having(workbook: Workbook, ...commands: readonly Command[]): Workbook {
  return commands.reduce((now, command) => {
    const outcome = runCommand(now, command);
    if (!outcome.ok) throw new Error(outcome.fault.code);
    return applyDifference(now, outcome.value);
  }, workbook);
}

/** The sample as a template whose author has locked everything that is no given. */
function lockedTemplate(): Workbook {
  return having(
    sampleWorkbook(),
    { type: 'make_template', name: 'Two pieces' },
    { type: 'lock_all_but_givens', sheet: 'pieces' },
    { type: 'lock_all_but_givens', sheet: 'wrap' },
  );
}

const lockedJob = () => instantiate(lockedTemplate(), { id: 'job', title: 'Lot 8' });

const address = fc.record({ row: fc.nat({ max: 4 }), column: fc.nat({ max: 4 }) });
const sheet = fc.constantFrom('pieces', 'wrap');
const range = fc.tuple(address, address).map(([one, other]) => ({
  from: { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) },
  to: { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) },
}));
const typed = fc.constantFrom('16', '', '=1', 'words', `3'`);
const axis = fc.constantFrom('row' as const, 'column' as const);
const anything: fc.Arbitrary<Command> = fc.oneof(
  fc.record({ type: fc.constant('enter' as const), sheet, address, typed }),
  fc.record({ type: fc.constant('clear' as const), sheet, addresses: fc.array(address, { maxLength: 4 }) }),
  fc.record({
    type: fc.constant('write' as const),
    sheet,
    at: address,
    rows: fc.array(fc.array(typed, { maxLength: 3 }), { maxLength: 3 }),
  }),
  fc.record({
    type: fc.constant('retype' as const),
    entries: fc.array(fc.record({ sheet, address, typed }), { maxLength: 3 }),
  }),
  fc.record({
    type: fc.constant('dress' as const),
    sheet,
    addresses: fc.array(address, { maxLength: 3 }),
    dress: fc.constantFrom({ role: 'given' as const }, { note: 'mine' }, { unit: 'ft' as const }),
  }),
  fc.record({
    type: fc.constant('copy' as const),
    from: fc.record({ sheet, range }),
    to: fc.record({ sheet, range }),
  }),
  fc.record({
    type: fc.constant('move' as const),
    from: fc.record({ sheet, range }),
    to: fc.record({ sheet, at: address }),
  }),
  fc.record({
    type: fc.constantFrom('insert_lines' as const, 'remove_lines' as const),
    sheet,
    axis,
    at: fc.nat({ max: 4 }),
    count: fc.integer({ min: 1, max: 3 }),
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
    to: fc.nat({ max: 6 }),
  }),
  fc.record({
    type: fc.constant('sort_rows' as const),
    sheet,
    range: fc.constant({ from: { row: 1, column: 0 }, to: { row: 2, column: 2 } }),
    order: fc.constant([1, 0]),
  }),
  fc.record({ type: fc.constant('remove_sheet' as const), sheet }),
  fc.record({ type: fc.constant('rename_sheet' as const), sheet, name: fc.constantFrom('Other', 'Third') }),
  fc.record({ type: fc.constant('remove_name' as const), name: fc.constant('diameters') }),
);

/** What the locked cells of a workbook say, whatever place they have gone to: a formula by what is no reference in it. */
function lockedCells(workbook: Workbook): readonly string[] {
  return workbook.sheets
    .flatMap((one) => [...cellsOf(one)])
    .filter(({ cell }) => cell.locked)
    .map(({ cell }) => JSON.stringify({ ...cell, content: outline(cell) }));
}

function outline({ content }: Cell): unknown {
  if (!isFormula(content)) return content;
  return content.formula.replace(/('?[A-Z][a-z]+( [a-z]+)?'?!)?\$?[A-Z]+\$?[0-9]+/g, '_');
}

describe('a locked cell of a job', () => {
  test('is the same after any run of commands, whatever was taken and whatever was refused', () => {
    let refused = 0;
    let carriedOut = 0;
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 15 }), (commands) => {
        let job = lockedJob();
        const before = [...lockedCells(job)].sort();
        for (const command of commands) {
          const outcome = runCommand(job, command);
          if (!outcome.ok) {
            refused += outcome.fault.code === 'locked_cells' ? 1 : 0;
            continue;
          }
          carriedOut += outcome.value.length > 0 ? 1 : 0;
          job = applyDifference(job, outcome.value);
          // A further line of a table may bring further ones.
          const after = [...lockedCells(job)];
          for (const one of before) {
            expect(after).toContain(one);
            after.splice(after.indexOf(one), 1);
          }
        }
      }),
      { numRuns: 400 },
    );
    expect(refused).toBeGreaterThan(100);
    expect(carriedOut).toBeGreaterThan(100);
  });

  test('is named when it is typed over, and the givens beside it take what is typed', () => {
    const job = lockedJob();
    const refused = runCommand(job, {
      type: 'enter',
      sheet: 'wrap',
      address: { row: 1, column: 1 },
      typed: '=1',
    });
    expect(refused).toMatchObject({ ok: false, fault: { code: 'locked_cells', place: 'Wrap round!B2' } });
    const filled = having(job, {
      type: 'enter',
      sheet: 'pieces',
      address: { row: 1, column: 1 },
      typed: '20',
    });
    expect(cellAt(filled.sheets[0] ?? expect.fail(), { row: 1, column: 1 })?.content).toBe(20);
  });

  test('can be changed when the owner has taken the locks off, and not again when they are put on', () => {
    const enter: Command = { type: 'enter', sheet: 'wrap', address: { row: 0, column: 0 }, typed: 'Mine' };
    const open = having(lockedJob(), { type: 'set_locks', hold: false }, enter);
    expect(sheetWithId(open, 'wrap')?.rows[0]?.[0]?.content).toBe('Mine');
    const shut = having(open, { type: 'set_locks', hold: true });
    expect(runCommand(shut, enter)).toMatchObject({ ok: true, value: [] });
    expect(runCommand(shut, { ...enter, typed: 'Theirs' })).toMatchObject({
      fault: { code: 'locked_cells' },
    });
  });

  test('goes on reading its cells when rows are put in above them', () => {
    const job = having(lockedJob(), { type: 'insert_lines', sheet: 'pieces', axis: 'row', at: 0, count: 2 });
    expect(sheetWithId(job, 'wrap')?.rows[1]?.[1]?.content).toEqual({ formula: 'PI()*Pieces!B4' });
  });

  test('comes with a further line of its table, which is locked as the others are', () => {
    const rows = [7, 8].map((diameter, at) => [
      words(`S${at + 1}`),
      { ...pipe, content: diameter },
      formula(`PI()*B${at + 2}`),
    ]);
    const template = having(
      {
        ...sampleWorkbook(),
        sheets: [
          sheetOf('pieces', 'Pieces', [[heading('Piece'), heading('Across'), heading('Girth')], ...rows]),
        ],
        names: {},
      },
      { type: 'make_template', name: 'One table' },
      { type: 'lock_all_but_givens', sheet: 'pieces' },
    );
    const job = having(instantiate(template, { id: 'job', title: 'Lot 9' }), {
      type: 'put_in_line',
      sheet: 'pieces',
      address: { row: 1, column: 0 },
    });
    expect(job.sheets[0]?.rows[2]?.[2]).toMatchObject({ content: { formula: 'PI()*B3' }, locked: true });
    expect(job.sheets[0]?.rows[3]?.[2]).toMatchObject({ content: { formula: 'PI()*B4' }, locked: true });
  });

  test('does not make a copy of itself a locked one', () => {
    const job = having(lockedJob(), {
      type: 'copy_sheet',
      sheet: 'wrap',
      id: 'mine',
      name: 'My own',
    });
    expect(
      sheetWithId(job, 'mine')
        ?.rows.flat()
        .some((cell) => cell?.locked),
    ).toBe(false);
  });
});

describe('the file of a job with locks', () => {
  const text = () => writeWorkbookFile({ workbook: lockedJob(), values: noValues });

  test('opens again with its locks', () => {
    const read = readWorkbookFile(text());
    expect(read).toMatchObject({ ok: true });
    if (read.ok) expect(lockedCells(read.value.workbook)).toEqual(lockedCells(lockedJob()));
  });

  test.each([
    ['a formula', (file: string) => file.replace('PI()*Pieces!B2', 'PI()*Pieces!B3')],
    ['a locked word', (file: string) => file.replace('S1 trunk', 'S7 trunk')],
    ['a lock', (file: string) => file.replace(/,\s*"locked": true/, '')],
    ['the seals', (file: string) => file.replace(/"seals": \{[^}]*\},/, '')],
  ])('is refused when %s is not as it was saved', (_, damage) => {
    expect(damage(text())).not.toBe(text());
    expect(readWorkbookFile(damage(text()))).toMatchObject({ ok: false, fault: { code: 'broken_seal' } });
  });

  test('is refused when a name leads elsewhere, since locked formulas read by it', () => {
    const moved = text().replace(/"range": "B2:B3"/, '"range": "B3:B3"');
    expect(moved).not.toBe(text());
    expect(readWorkbookFile(moved)).toMatchObject({ ok: false, fault: { code: 'broken_seal' } });
  });

  test('opens when only a given was changed', () => {
    const changed = text().replace('"content": 16', '"content": 18');
    expect(changed).not.toBe(text());
    expect(readWorkbookFile(changed).ok).toBe(true);
  });
});
