import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../fixed-seed.ts';
import { type LotCommand, runLotCommand } from '../../src/lots/commands.ts';
import { doToLots, lotHistory, redoLots, undoLots } from '../../src/lots/history.ts';
import type { LotTable } from '../../src/lots/lot-table.ts';
import { wordLotFault } from '../../src/lots/wording.ts';
import type { Workbook } from '../../src/workbook/document.ts';
import { lot, smallHouse, tableOf } from './small-house.ts';

function tableAfter(table: LotTable, ...commands: readonly LotCommand[]): LotTable {
  return commands.reduce((sofar, command) => {
    const outcome = runLotCommand(sofar, command);
    if (!outcome.ok) throw new Error(wordLotFault(outcome.fault));
    return outcome.value;
  }, table);
}

function refusal(table: LotTable, command: LotCommand): string {
  const outcome = runLotCommand(table, command);
  return outcome.ok ? '' : wordLotFault(outcome.fault);
}

const table = tableOf([lot('Lot 7'), lot('Lot 8', { options: { Insulation: 'R-8' } })]);

describe('what is typed for a lot', () => {
  test('is read by the unit and the range of the given itself', () => {
    const typed = (label: string, text: string): LotCommand => ({
      type: 'override',
      at: 0,
      label,
      typed: text,
    });
    expect(tableAfter(table, typed('Length of the trunk', `41' 6"`)).rows[0]?.overrides).toEqual({
      'House!B2': 498,
    });
    expect(
      tableAfter(table, typed('Length of the trunk', '1372mm')).rows[0]?.overrides['House!B2'],
    ).toBeCloseTo(54.02, 2);
    expect(tableAfter(table, typed('Branches', '4'), typed('Branches', '')).rows[0]?.overrides).toEqual({});
    expect(refusal(table, typed('Length of the trunk', `200'`))).toContain('100′');
    expect(refusal(table, typed('Branches', '2.5'))).toMatch(/whole/);
    expect(refusal(table, typed('Branches', '=1+1'))).toMatch(/holds values/);
    expect(refusal(table, typed('Attic', '3'))).toMatch(/“Attic” does not vary/);
  });

  test('a choice goes by its name in upper or lower case; another one is refused with those there are', () => {
    const choose = (choice: string | null): LotCommand => ({
      type: 'choose',
      at: 0,
      option: 'Insulation',
      choice,
    });
    expect(tableAfter(table, choose('r-8')).rows[0]?.options).toEqual({ Insulation: 'R-8' });
    expect(tableAfter(table, choose('R-8'), choose(null)).rows[0]?.options).toEqual({});
    expect(refusal(table, choose('R-9'))).toBe('“R-9” is not one of the choices. Take R-6 or R-8.');
  });
});

describe('lots', () => {
  test('a new one and a copy get the next free number; no two have the same name', () => {
    const grown = tableAfter(table, { type: 'add_lot', house: 'bungalow' }, { type: 'copy_lot', at: 0 });
    expect(grown.rows.map(({ name }) => name)).toEqual(['Lot 7', 'Lot 10', 'Lot 8', 'Lot 9']);
    expect(refusal(table, { type: 'name_lot', at: 1, name: 'lot 7 ' })).toMatch(/already/);
    expect(refusal(table, { type: 'name_lot', at: 1, name: ' ' })).toMatch(/no name/);
  });

  test('move among the others', () => {
    const three = tableAfter(table, { type: 'copy_lot', at: 1 });
    const moved = tableAfter(three, { type: 'move_lot', from: 2, to: 0 });
    expect(moved.rows.map(({ name }) => name)).toEqual(['Lot 9', 'Lot 7', 'Lot 8']);
  });
});

describe('house types', () => {
  test('one that is in use stays; a template without anything that varies is none', () => {
    expect(refusal(table, { type: 'remove_type', house: 'Bungalow' })).toMatch(
      /^Lot 7 and Lot 8 are of the type/,
    );
    const { house: _, ...plain } = smallHouse({ name: 'Plain' });
    expect(refusal(table, { type: 'add_type', workbook: plain })).toMatch(/no house type/);
    expect(refusal(table, { type: 'add_type', workbook: smallHouse() })).toMatch(/already/);
  });

  test('a newer revision keeps what lots say by the name of the given, though it stands elsewhere now', () => {
    const own = tableAfter(table, { type: 'override', at: 0, label: 'Diameter', typed: '12' });
    const newer = tableAfter(own, {
      type: 'replace_type',
      house: 'Bungalow',
      workbook: withRowOnTop(smallHouse({ revision: 2 })),
      drops: false,
    });
    expect(newer.rows[0]?.overrides).toEqual({ 'House!B4': 12 });
    expect(newer.types[0]?.template?.revision).toBe(2);
  });

  test('what a newer revision does not know is dropped only when that is agreed to', () => {
    const type = smallHouse({ revision: 2 });
    const without: Workbook = { ...type, house: { options: [], varies: [], results: [] } };
    const command = { type: 'replace_type', house: 'Bungalow', workbook: without, drops: false } as const;
    expect(refusal(table, command)).toMatch(/dropped: Lot 8: Insulation\. Nothing was changed/);
    expect(tableAfter(table, { ...command, drops: true }).rows[1]?.options).toEqual({});
  });

  test('a lot that says nothing is told of when something else is usual, and one that says it keeps it', () => {
    const type = smallHouse({ revision: 2 });
    const options = (type.house?.options ?? []).map((one) =>
      one.name === 'Insulation' ? { ...one, usual: 'R-8' } : one,
    );
    const other: Workbook = { ...type, house: { varies: [], results: [], ...type.house, options } };
    const two = tableOf([lot('Lot 1'), lot('Lot 2', { options: { Insulation: 'R-6' } })]);
    const command = { type: 'replace_type', house: 'Bungalow', workbook: other, drops: false } as const;
    expect(refusal(two, command)).toMatch(
      /there: Lot 1: Insulation, R-6 before and R-8 now\. Say on the lot what is to stay\. Nothing was changed/,
    );
    expect(tableAfter(two, { ...command, drops: true }).rows[1]?.options).toEqual({ Insulation: 'R-6' });
  });

  test('a usual given that is another in the newer revision is told as the lot shows it', () => {
    const type = smallHouse({ revision: 2 });
    const sheets = type.sheets.map((sheet) => ({
      ...sheet,
      rows: sheet.rows.map((row) =>
        row.map((cell) => (cell?.content === 360 ? { ...cell, content: 300 } : cell)),
      ),
    }));
    const command = {
      type: 'replace_type',
      house: 'Bungalow',
      workbook: { ...type, sheets },
      drops: false,
    } as const;
    const two = tableOf([lot('Lot 1'), lot('Lot 2', { overrides: { 'House!B2': 360 } })]);
    expect(refusal(two, command)).toMatch(
      /there: Lot 1: Length of the trunk, 30′.* before and 25′.* now\. Say/,
    );
  });
});

function withRowOnTop(type: Workbook): Workbook {
  const down = (place: string) => place.replace(/\d+$/, (row) => String(Number(row) + 1));
  const house = type.house ?? { options: [], varies: [], results: [] };
  return {
    ...type,
    sheets: type.sheets.map((sheet) => ({ ...sheet, rows: [[], ...sheet.rows] })),
    house: { ...house, options: house.options.slice(0, 1), varies: house.varies.map(down), results: [] },
  };
}

const anyCommand: fc.Arbitrary<LotCommand> = fc.oneof(
  fc.record({ type: fc.constant('add_lot' as const), house: fc.constant('Bungalow') }),
  fc.record({ type: fc.constant('copy_lot' as const), at: fc.nat(5) }),
  fc.record({
    type: fc.constant('remove_lots' as const),
    at: fc.nat(5),
    count: fc.integer({ min: 1, max: 3 }),
  }),
  fc.record({ type: fc.constant('move_lot' as const), from: fc.nat(5), to: fc.nat(5) }),
  fc.record({ type: fc.constant('name_lot' as const), at: fc.nat(5), name: fc.constantFrom('A', 'B', '') }),
  fc.record({
    type: fc.constant('override' as const),
    at: fc.nat(5),
    label: fc.constantFrom('Diameter', 'Branches'),
    typed: fc.constantFrom('5', '12', ''),
  }),
  fc.record({
    type: fc.constant('choose' as const),
    at: fc.nat(5),
    option: fc.constant('Insulation'),
    choice: fc.constantFrom('R-8', null),
  }),
  fc.record({ type: fc.constant('remark' as const), at: fc.nat(5), remark: fc.constantFrom('', 'corner') }),
  fc.record({ type: fc.constant('retitle' as const), title: fc.constantFrom('One', 'Two') }),
);

test('taking everything back leads to the very same table, and doing it again to where it was', () => {
  fc.assert(
    fc.property(fc.array(anyCommand, { maxLength: 25 }), (commands) => {
      let history = lotHistory(table);
      for (const command of commands) {
        const next = doToLots(history, command);
        if (next.ok) history = next.value;
      }
      const end = history.table;
      const count = history.done.length;
      for (let step = 0; step < count; step += 1) history = undoLots(history);
      expect(history.table).toEqual(table);
      for (let step = 0; step < count; step += 1) history = redoLots(history);
      expect(history.table).toEqual(end);
    }),
  );
});

test('undo and redo tell by name what they do', () => {
  const chosen = doToLots(lotHistory(table), { type: 'choose', at: 0, option: 'Insulation', choice: 'R-8' });
  expect(chosen.ok && chosen.value.done.at(-1)?.says).toBe('R-8 for Insulation of Lot 7');
});
