import { describe, expect, test } from 'vitest';
import { sheetWithId } from '../../src/workbook/cells.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../src/workbook/difference.ts';
import type { Sheet, Workbook } from '../../src/workbook/document.ts';
import { readWorkbookFile, storedForm, writeWorkbookFile } from '../../src/workbook/file.ts';
import { noValues } from '../../src/workbook/values.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { sampleWorkbook } from './sample.ts';

const shown = ({ columns: _widths, ...sheet }: Sheet) => sheet;

/** Equal but for blank cells at the ends of rows and widths past those that were said, which mean nothing. */
const meaning = (workbook: Workbook) =>
  storedForm({ workbook, values: noValues }).workbook.sheets.map(({ columns: _widths, ...sheet }) => sheet);

function having(...commands: readonly Command[]): Workbook {
  return commands.reduce((workbook, command) => {
    const outcome = runCommand(workbook, command);
    if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
    const next = applyDifference(workbook, outcome.value);
    expect(meaning(applyDifference(next, invertDifference(outcome.value)))).toEqual(meaning(workbook));
    return next;
  }, sampleWorkbook());
}

function pieces(...commands: readonly Command[]): Sheet {
  const sheet = sheetWithId(having(...commands), 'pieces');
  if (!sheet) throw new Error('The sheet is gone.');
  return sheet;
}

function refusal(command: Command): string {
  const outcome = runCommand(sampleWorkbook(), command);
  return outcome.ok ? '' : wordCommandFault(outcome.fault);
}

const sheet = 'pieces';

describe('columns', () => {
  test('take a width between 2 and 120 characters', () => {
    const widths = [5.04, 0, 500];
    expect(pieces({ type: 'resize_column', sheet, at: 1, widths }).columns.map(({ width }) => width)).toEqual(
      [14, 5, 2, 120],
    );
  });

  test('that are hidden keep their width, and are hidden still when others are put in before them', () => {
    const { columns } = pieces(
      { type: 'hide_lines', sheet, axis: 'column', at: 1, count: 1 },
      { type: 'insert_lines', sheet, axis: 'column', at: 0, count: 1 },
    );
    expect(columns[2]).toEqual({ width: 10, hidden: true });
  });
});

describe('rows that are hidden', () => {
  const hide: Command = { type: 'hide_lines', sheet, axis: 'row', at: 1, count: 1 };

  test('go along with rows put in above them, and come back with rows taken out', () => {
    expect(pieces(hide, { type: 'insert_lines', sheet, axis: 'row', at: 0, count: 2 }).hiddenRows).toEqual([
      3,
    ]);
    expect(pieces(hide, { type: 'remove_lines', sheet, axis: 'row', at: 1, count: 1 })).not.toHaveProperty(
      'hiddenRows',
    );
  });

  test('are shown again', () => {
    const show: Command = { type: 'show_lines', sheet, axis: 'row', at: 0, count: 3 };
    expect(pieces(hide, show)).not.toHaveProperty('hiddenRows');
  });

  test('are never all that there are', () => {
    expect(refusal({ type: 'hide_lines', sheet, axis: 'row', at: 0, count: 3 })).toMatch(/^Then no row/);
    expect(refusal({ type: 'hide_lines', sheet, axis: 'column', at: 0, count: 9 })).toMatch(/no column/);
  });
});

describe('what stays in sight', () => {
  const freeze: Command = { type: 'freeze', sheet, rows: 1, columns: 2 };

  test('grows and shrinks with the lines put into it and taken out of it', () => {
    const within: Command = { type: 'insert_lines', sheet, axis: 'column', at: 1, count: 2 };
    expect(pieces(freeze, within).frozen).toEqual({ rows: 1, columns: 4 });
    const past: Command = { type: 'insert_lines', sheet, axis: 'row', at: 1, count: 2 };
    expect(pieces(freeze, past).frozen).toEqual({ rows: 1, columns: 2 });
    const out: Command = { type: 'remove_lines', sheet, axis: 'row', at: 0, count: 2 };
    expect(pieces(freeze, out).frozen).toEqual({ rows: 0, columns: 2 });
  });

  test('leaves room for what moves', () => {
    expect(refusal({ type: 'freeze', sheet, rows: 13, columns: 0 })).toMatch(/^13 rows would fill/);
    expect(refusal({ type: 'freeze', sheet, rows: 0, columns: 7 })).toMatch(/at most 6 can stay/);
  });

  test('is kept in the file, with what is hidden', () => {
    const workbook = having(
      freeze,
      { type: 'hide_lines', sheet, axis: 'row', at: 2, count: 1 },
      { type: 'hide_lines', sheet, axis: 'column', at: 1, count: 1 },
    );
    const read = readWorkbookFile(writeWorkbookFile({ workbook, values: noValues }));
    expect(read.ok && read.value.workbook.sheets.map(shown)).toEqual(workbook.sheets.map(shown));
    expect(read.ok && read.value.workbook.sheets[0]?.columns).toEqual(workbook.sheets[0]?.columns);
  });
});

describe('a sheet', () => {
  test('is copied with all that stands on it, and its own name in a formula becomes that of the copy', () => {
    const { sheets } = having(
      { type: 'enter', sheet, address: { row: 1, column: 3 }, typed: "=Pieces!B2+'Wrap round'!B2" },
      { type: 'copy_sheet', sheet, id: 'copied', name: 'Pieces upstairs' },
    );
    expect(sheets.map(({ name }) => name)).toEqual(['Pieces', 'Pieces upstairs', 'Wrap round']);
    expect(sheets[1]?.rows[1]?.[3]?.content).toEqual({ formula: "'Pieces upstairs'!B2+'Wrap round'!B2" });
  });

  test('is not copied under a name that is taken', () => {
    expect(refusal({ type: 'copy_sheet', sheet, id: 'copied', name: 'wrap ROUND' })).toMatch(
      /^There is a sheet named “Wrap round” already/,
    );
  });

  test('takes another sentence, of 500 characters at most', () => {
    expect(pieces({ type: 'describe_sheet', sheet, says: ' Fill it. ' }).says).toBe('Fill it.');
    expect(refusal({ type: 'describe_sheet', sheet, says: 'x'.repeat(501) })).toMatch(/501 characters/);
  });
});
