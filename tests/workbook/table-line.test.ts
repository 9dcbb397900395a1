import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readAddress } from '../../src/base/address.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { onNextLine } from '../../src/formula/next-line.ts';
import { cellAt, sheetNamed } from '../../src/workbook/cells.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../src/workbook/difference.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../../src/workbook/document.ts';
import { readWorkbookFile, storedForm } from '../../src/workbook/file.ts';
import { shownValue } from '../../src/workbook/standing.ts';
import { noValues, type Values } from '../../src/workbook/values.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { diameter, formula, heading, sheetOf, words } from './sample.ts';

const at = (place: string) => {
  const address = readAddress(place);
  if (!address) throw new Error(place);
  return address;
};
const number = (content: number): Cell => ({ content, role: 'text' });

const meaning = (workbook: Workbook) => {
  const { workbook: stored } = storedForm({ workbook, values: noValues });
  return { ...stored, sheets: stored.sheets.map(({ columns: _, ...rest }) => rest) };
};

function having(workbook: Workbook, command: Command): Workbook {
  const outcome = runCommand(workbook, command);
  if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
  const after = applyDifference(workbook, outcome.value);
  expect(meaning(applyDifference(after, invertDifference(outcome.value)))).toEqual(meaning(workbook));
  return after;
}

function textAt(workbook: Workbook, sheet: string, place: string): unknown {
  const own = sheetNamed(workbook, sheet);
  const content = own ? (cellAt(own, at(place))?.content ?? null) : null;
  return isFormula(content) ? `=${content.formula}` : content;
}

const line = (type: 'put_in_line' | 'take_out_line', place: string, sheet = 'pieces'): Command => ({
  type,
  sheet,
  address: at(place),
});

function workbookOf(...sheets: readonly Sheet[]): Workbook {
  return {
    id: 'lines',
    title: 'Larkspur Lane, lot 7',
    kind: 'job',
    sheets,
    names: { lengths: { sheet: 'pieces', range: { from: at('B2'), to: at('B4') } } },
    examples: [],
  };
}

const pieces = sheetOf('pieces', 'Pieces', [
  [heading('Piece'), heading('Width'), heading('Twice')],
  ...[2, 3, 4].map((row) => [
    words(`S${row}`),
    { ...diameter, content: row + 10 },
    formula(`B${row}*2`, { unit: 'in' }),
  ]),
  [words('In all'), formula('SUM(B2:B4)'), formula('SUM(lengths)')],
]);
const wrap = sheetOf('wrap', 'Wrap', [
  [heading('Cut')],
  ...[2, 3, 4].map((row) => [formula(`Pieces!B${row}+Pieces!$B$2+Other!A1`), number(row)]),
]);

describe('a formula on the next line', () => {
  const tables = [
    { sheet: 'Pieces', range: { from: at('A2'), to: at('C5') } },
    { sheet: 'Wrap', range: { from: at('A2'), to: at('A5') } },
  ];

  test.each([
    ['B3*Wrap!A3', 'B4*Wrap!A4'],
    ['B$3+$B3+$B$3', 'B$3+$B4+$B$3'],
    ['B3-B2', 'B4-B3'],
    ['COUNTIF(A2:A5,A3)', 'COUNTIF(A2:A5,A4)'],
    ['SUM(B$2:B3)', 'SUM(B$2:B4)'],
    ['SUM(A3:C3)', 'SUM(A4:C4)'],
    ['Job!B3+B1+B9+lap', 'Job!B3+B1+B9+lap'],
    ['SUM(B1:B9)', 'SUM(B1:B9)'],
  ])('%s reads %s', (text, wanted) => {
    expect(onNextLine(text, 'Pieces', tables)).toBe(wanted);
  });
});

describe('a line that is put in', () => {
  test('is like the one above it, without what people fill in, in every table that follows', () => {
    const after = having(workbookOf(pieces, wrap), line('put_in_line', 'B3'));
    expect(['A4', 'B4', 'C4'].map((place) => textAt(after, 'Pieces', place))).toEqual([null, null, '=B4*2']);
    expect(cellAt(after.sheets[0] ?? expect.fail(), at('B4'))).toMatchObject({ role: 'given', unit: 'in' });
    expect(['A3', 'A5', 'C5'].map((place) => textAt(after, 'Pieces', place))).toEqual(['S3', 'S4', '=B5*2']);
    expect(['A3', 'A4', 'A5'].map((place) => textAt(after, 'Wrap', place))).toEqual([
      '=Pieces!B3+Pieces!$B$2+Other!A1',
      '=Pieces!B4+Pieces!$B$2+Other!A1',
      '=Pieces!B5+Pieces!$B$2+Other!A1',
    ]);
    expect(textAt(after, 'Wrap', 'B4')).toBeNull();
  });

  test('is taken in by totals and names wherever it stands, below the last line too', () => {
    for (const place of ['A2', 'A3', 'A4']) {
      const after = having(workbookOf(pieces, wrap), line('put_in_line', place));
      expect(textAt(after, 'Pieces', 'B6')).toBe('=SUM(B2:B5)');
      expect(after.names.lengths?.range).toEqual({ from: at('B2'), to: at('B5') });
    }
  });

  test('goes into the table that is followed when it is asked for in one that follows', () => {
    const after = having(workbookOf(pieces, wrap), line('put_in_line', 'A3', 'wrap'));
    expect(['A4', 'C4'].map((place) => textAt(after, 'Pieces', place))).toEqual([null, '=B4*2']);
    expect(textAt(after, 'Wrap', 'A4')).toBe('=Pieces!B4+Pieces!$B$2+Other!A1');
  });

  test('does not tell twice what reads nothing of its line', () => {
    const order = sheetOf('order', 'Order', [
      [heading('Thing'), heading('Count'), heading('Cost')],
      [words('Sheets'), formula('SUM(Pieces!B2:B4)'), formula('B2*3')],
      [words('Tape'), formula('lengths_of_tape'), formula('B3*4')],
      [words('In all'), null, formula('SUM(C2:C3)')],
    ]);
    const after = having(workbookOf(pieces, order), line('put_in_line', 'A2', 'order'));
    expect(['A3', 'B3', 'C3', 'C5'].map((place) => textAt(after, 'Order', place))).toEqual([
      null,
      null,
      '=B3*3',
      '=SUM(C2:C4)',
    ]);
  });

  test('needs a table', () => {
    for (const place of ['A1', 'A5', 'A9']) {
      const outcome = runCommand(workbookOf(pieces, wrap), line('put_in_line', place));
      expect(outcome.ok ? '' : wordCommandFault(outcome.fault)).toMatch(/^This row is no line of a table/);
    }
  });
});

test('a line that is taken out is gone from every table that follows, and nothing is left without its cells', () => {
  const after = having(workbookOf(pieces, wrap), line('take_out_line', 'C3'));
  expect(textAt(after, 'Pieces', 'B4')).toBe('=SUM(B2:B3)');
  expect(textAt(after, 'Wrap', 'A3')).toBe('=Pieces!B3+Pieces!$B$2+Other!A1');
  expect(JSON.stringify(meaning(after))).not.toContain('#REF!');
});

test('rows that move inside their table take along the lines that follow them', () => {
  const move: Command = { type: 'move_lines', sheet: 'pieces', axis: 'row', at: 1, count: 1, to: 4 };
  const after = having(workbookOf(pieces, wrap), move);
  expect(textAt(after, 'Pieces', 'A4')).toBe('S2');
  expect([2, 3, 4].map((row) => textAt(after, 'Wrap', `B${row}`))).toEqual([3, 4, 2]);
  expect(textAt(after, 'Wrap', 'A2')).toBe('=Pieces!B2+Pieces!$B$4+Other!A1');
});

test('a row does not move to where a formula of it would take in itself', () => {
  const sheet = sheetOf('pieces', 'Pieces', [
    [words('a'), formula('SUM(A2:A4)')],
    [words('b'), formula('SUM(A3:A4)')],
    [number(1), null],
    [number(2), null],
    [formula('SUM(A3:A4)'), null],
  ]);
  const workbook = { ...workbookOf(sheet), names: {} };
  const outcome = runCommand(workbook, {
    type: 'move_lines',
    sheet: 'pieces',
    axis: 'row',
    at: 4,
    count: 1,
    to: 3,
  });
  expect(outcome.ok ? '' : wordCommandFault(outcome.fault)).toBe(
    'All stays as it is: the formula that would come to stand in Pieces!A4 would take in its own cell there. Move it outside the cells that it takes in.',
  );
});

describe('the demo job', () => {
  const read = readWorkbookFile(
    readFileSync(new URL('../../sheets/demo.job.stretchout.json', import.meta.url), 'utf8'),
  );
  if (!read.ok) throw new Error('no demo');
  const { workbook } = read.value;
  const calculator = createCalculator({ functions: tradeFunctions });
  const show = (own: Workbook, values: Values, name: string, place: string) => {
    const sheet = sheetNamed(own, name);
    return sheet ? shownValue(sheet, at(place), cellAt(sheet, at(place)), values) : null;
  };

  test('has a line more in all its tables, and every figure of the others is what it was', async () => {
    const was = await figureWorkbook(workbook, calculator);
    const after = having(workbook, line('put_in_line', 'A3'));
    const is = await figureWorkbook(after, calculator);
    for (const name of ['Pieces', 'Blanks', 'Wrap']) {
      for (const column of ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H']) {
        for (const row of [2, 3, 4, 5, 6, 20]) {
          const now = row > 3 ? row + 1 : row;
          expect([name, column, row, show(after, is, name, `${column}${now}`)]).toEqual([
            name,
            column,
            row,
            show(workbook, was, name, `${column}${row}`),
          ]);
        }
      }
    }
    for (const column of ['D', 'E', 'F', 'G', 'H']) {
      for (const row of [2, 3, 4, 5]) {
        expect(show(after, is, 'Taps', `${column}${row}`)).toEqual(
          show(workbook, was, 'Taps', `${column}${row}`),
        );
      }
    }
    // The new line is empty and waits.
    expect(['Blanks', 'Wrap'].map((name) => show(after, is, name, 'A4'))).toEqual(['', '']);
    const like = having(after, {
      type: 'write',
      sheet: 'pieces',
      at: at('A4'),
      rows: [['S9', 'round', '16', '', '60']],
    });
    const filled = await figureWorkbook(like, calculator);
    expect(show(like, filled, 'Blanks', 'B4')).toBe(show(like, filled, 'Blanks', 'B2'));
    expect(show(like, filled, 'Wrap', 'C4')).toBe(show(like, filled, 'Wrap', 'C2'));
  });

  test('does not let a piece be moved out of its table, where taps would find another one', () => {
    const outcome = runCommand(workbook, {
      type: 'move_lines',
      sheet: 'pieces',
      axis: 'row',
      at: 2,
      count: 1,
      to: 30,
    });
    expect(outcome.ok ? '' : wordCommandFault(outcome.fault)).toMatch(/^All stays as it is: Taps!/);
  });
});
