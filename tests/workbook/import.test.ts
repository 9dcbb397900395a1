import { describe, expect, test } from 'vitest';
import { cellAt } from '../../src/workbook/cells.ts';
import { runCommand } from '../../src/workbook/commands.ts';
import { applyDifference } from '../../src/workbook/difference.ts';
import type { Cell, Sheet, Workbook } from '../../src/workbook/document.ts';
import { headingRowOf, type ImportWish, mapByName, planImport } from '../../src/workbook/import.ts';
import { wordImportRefusal } from '../../src/workbook/import-wording.ts';
import { firstFreeLine, type Table, tablesOf } from '../../src/workbook/tables.ts';
import { choiceCell, diameter, formula, heading, sheetOf, words } from './sample.ts';

const mark: Cell = { content: null, role: 'given', question: { asks: 'Which mark?' } };
const empty: Cell = { ...diameter, content: null };
const line = (row: number, filled?: string): readonly (Cell | null)[] => [
  { ...mark, content: filled ?? null },
  filled ? diameter : empty,
  choiceCell,
  formula(`B${row}*2`, { unit: 'in' }),
];

const pieces = sheetOf('pieces', 'Pieces', [
  [heading('Pieces of this job')],
  [heading('Piece'), heading('Diameter'), heading('Wrap'), heading('Twice')],
  line(3, 'S1'),
  line(4),
  line(5),
  [],
  [heading('Blank'), heading('Girth')],
  [formula('A3'), formula('B3')],
  [],
  [heading('Screw'), heading('Count')],
]);

const table = firstOf(tablesOf(pieces));

function firstOf(tables: readonly Table[]): Table {
  const [one] = tables;
  if (!one) throw new Error('The sheet has no table.');
  return one;
}

function wish(rows: ImportWish['rows'], more: Partial<ImportWish> = {}): ImportWish {
  const headings = rows[0] ?? [];
  const mapped = mapByName(table.columns, headings);
  const free = firstFreeLine(pieces, table);
  return {
    file: 'pieces.csv',
    rows,
    firstFileRow: 1,
    mapping: table.columns.flatMap((column, at) => {
      const field = mapped[at];
      return typeof field === 'number' ? [{ column, field }] : [];
    }),
    firstRow: table.firstRow + free,
    room: table.room - free,
    leavesRefused: false,
    ...more,
  };
}

function written(sheet: Sheet, command: NonNullable<ReturnType<typeof planImport>['command']>): Sheet {
  const workbook: Workbook = { id: 'w', title: 't', kind: 'job', sheets: [sheet], names: {}, examples: [] };
  const difference = runCommand(workbook, command);
  if (!difference.ok) throw new Error(difference.fault.code);
  return firstSheet(applyDifference(workbook, difference.value));
}

function firstSheet({ sheets: [sheet] }: Workbook): Sheet {
  if (!sheet) throw new Error('No sheet is left.');
  return sheet;
}

describe('the tables of a sheet', () => {
  test('are its rows of headings with what can be filled in below, each with its room', () => {
    expect(tablesOf(pieces).map(({ headingRow, columns, room }) => ({ headingRow, columns, room }))).toEqual([
      {
        headingRow: 1,
        columns: [
          { column: 0, name: 'Piece' },
          { column: 1, name: 'Diameter' },
          { column: 2, name: 'Wrap' },
        ],
        room: 3,
      },
      {
        headingRow: 9,
        columns: [
          { column: 0, name: 'Screw' },
          { column: 1, name: 'Count' },
        ],
        room: 99_999 - 10,
      },
    ]);
  });

  test('begin to be free after the last line that somebody filled in', () => {
    expect(firstFreeLine(pieces, table)).toBe(1);
  });
});

describe('the columns of a file', () => {
  test('find theirs by name, whatever the case, the spaces and the signs', () => {
    expect(mapByName(table.columns, ['DIAMETER', ' piece ', 'Wrap:'])).toEqual([1, 0, 2]);
    expect(mapByName(table.columns, ['Length', ''])).toEqual([null, null, null]);
  });

  test('are named by the row that has the most of the names', () => {
    expect(headingRowOf(table.columns, [['Our list'], ['Piece'], ['Wrap', 'Piece'], ['S1']])).toBe(2);
    expect(headingRowOf(table.columns, [['S1', '16']])).toBe(null);
  });
});

describe('lines of a file', () => {
  test('go into the first free lines in one deed, and what the file leaves out stays', () => {
    const plan = planImport(
      pieces,
      wish([
        ['Diameter', 'Piece', 'Note'],
        ['12', 'S2', 'x'],
        ['', '', ''],
        ['14 1/2"', 'S3', ''],
      ]),
    );
    expect(plan.refusals).toEqual([]);
    expect(plan.lines.map(({ fileLine, row }) => [fileLine, row])).toEqual([
      [2, 3],
      [4, 4],
    ]);
    expect(plan.lines[1]?.fields[1]?.reads).toEqual({ ok: true, value: '14 ½″' });
    if (!plan.command) throw new Error('There is nothing to write.');
    const sheet = written(pieces, plan.command);
    expect(cellAt(sheet, { row: 4, column: 1 })).toMatchObject({ content: 14.5, typed: '14 1/2"' });
    expect(cellAt(sheet, { row: 3, column: 2 })).toBe(choiceCell);
    expect(cellAt(sheet, { row: 2, column: 0 })?.content).toBe('S1');
  });

  test('are refused with every reason at once, each with its line, its column and its cell', () => {
    const plan = planImport(
      pieces,
      wish([
        ['Piece', 'Diameter', 'Wrap'],
        ['S2', 'twelve', 'R-9 wrap'],
        ['=1+1', '99', 'r-8 WRAP'],
        ['S4', '10', ''],
      ]),
    );
    expect(plan.refusals.map(wordImportRefusal)).toEqual([
      expect.stringMatching(/^Line 2, Diameter \(B4\): “twelve” cannot be read as a length/),
      expect.stringMatching(/^Line 2, Wrap \(C4\): “R-9 wrap” is not one of the choices/),
      expect.stringMatching(/^Line 3, Piece \(A5\): “=1\+1” begins with =/),
      expect.stringMatching(/^Line 3, Diameter \(B5\): .*outside what this cell takes/),
      'Line 4 has no place. There is room for 2 lines here: put rows into the table first, or bring in fewer lines.',
    ]);
  });

  test('with a refusal can be left behind, so that the others move up', () => {
    const rows = [
      ['Piece', 'Diameter'],
      ['S2', 'twelve'],
      ['S3', '12'],
      ['S4', '10'],
    ];
    const plan = planImport(pieces, wish(rows, { leavesRefused: true }));
    expect(plan.refusals).toHaveLength(1);
    expect(plan.command?.rows).toEqual([
      ['S3', '12'],
      ['S4', '10'],
    ]);
  });

  test('that begin with an apostrophe before a sign are read without it', () => {
    const plan = planImport(pieces, wish([['Piece'], ["'@ north wall"], ["'=1"]]));
    expect(plan.lines.map(({ fields }) => fields[0]?.text)).toEqual(['@ north wall', "'=1"]);
  });

  test('go onto an empty sheet as they are', () => {
    const bare = sheetOf('bare', 'Bare', [[words('Mine')]]);
    const columns = [0, 1].map((column) => ({ column, name: String(column) }));
    const plan = planImport(bare, {
      ...wish([
        ['Piece', 'Length'],
        ['S1', `14' 6"`],
      ]),
      firstFileRow: 0,
      mapping: columns.map((column, field) => ({ column, field })),
      firstRow: 2,
      room: 1000,
    });
    if (!plan.command) throw new Error('There is nothing to write.');
    const sheet = written(bare, plan.command);
    expect(cellAt(sheet, { row: 3, column: 1 })).toMatchObject({ content: 174, unit: 'in' });
    expect(cellAt(sheet, { row: 0, column: 0 })?.content).toBe('Mine');
  });
});
