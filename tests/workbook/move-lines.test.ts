import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CellAddress, readAddress, writeRange } from '../../src/base/address.ts';
import { isFault } from '../../src/base/value.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { lineAfterMove } from '../../src/formula/stretch.ts';
import { cellAt } from '../../src/workbook/cells.ts';
import type { MoveLinesCommand } from '../../src/workbook/command/move-lines.ts';
import { runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, type Difference, invertDifference } from '../../src/workbook/difference.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../../src/workbook/document.ts';
import { storedForm } from '../../src/workbook/file.ts';
import { shownValue } from '../../src/workbook/standing.ts';
import { noValues, type Values, valueAt, valuesAfter, withValues } from '../../src/workbook/values.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { formula, sheetOf, words } from './sample.ts';

const size = 8;
const number = (content: number): Cell => ({ content, role: 'text' });

function at(place: string): CellAddress {
  const address = readAddress(place);
  if (!address) throw new Error(place);
  return address;
}

function workbookOf(rows: Sheet['rows'], others: Sheet['rows'] = []): Workbook {
  return {
    id: 'moving',
    title: 'Larkspur Lane, lot 7',
    kind: 'job',
    sheets: [sheetOf('runs', 'Runs', rows), sheetOf('sums', 'Sums', others)],
    names: {
      first: { sheet: 'runs', range: { from: at('B2'), to: at('B2') } },
      all: { sheet: 'runs', range: { from: at('A1'), to: at('H8') } },
    },
    examples: [],
  };
}

function moving(workbook: Workbook, command: Omit<MoveLinesCommand, 'type' | 'sheet'>): Difference {
  const outcome = runCommand(workbook, { type: 'move_lines', sheet: 'runs', ...command });
  if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
  return outcome.value;
}

function textAt(workbook: Workbook, sheet: number, place: string): unknown {
  const own = workbook.sheets[sheet];
  const content = own ? (cellAt(own, at(place))?.content ?? null) : null;
  return isFormula(content) ? `=${content.formula}` : content;
}

const meaning = (workbook: Workbook) => {
  const { workbook: stored } = storedForm({ workbook, values: noValues });
  return JSON.stringify({ ...stored, sheets: stored.sheets.map(({ columns: _, ...rest }) => rest) });
};

const corner = fc.tuple(
  fc.constantFrom('', '$'),
  fc.constantFrom(...'ABCDEFGH'),
  fc.constantFrom('', '$'),
  fc.integer({ min: 1, max: size }),
);
const reference = fc
  .tuple(fc.constantFrom('', '', 'Runs!'), corner)
  .map(([sheet, parts]) => sheet + parts.join(''));
const text = fc.oneof(
  fc.tuple(reference, fc.constantFrom('+', '*', '-'), reference).map((parts) => parts.join('')),
  fc.tuple(reference, reference).map(([one, other]) => `IF(${one}>3,${other},first)`),
  fc.constantFrom('SUM(Sums!A1:B3)', 'MAX(Sums!B1:B2)'),
);
/** On the other sheet also blocks, of lines that still lie together when they move among themselves. */
const otherText = fc.oneof(
  reference.map((one) => `2*Runs!${one.replace('Runs!', '')}`),
  fc.constantFrom('SUM(Runs!A1:H8)', 'SUM(all)', 'SUM(Runs!H8:A1)'),
);
const cellOf = (texts: fc.Arbitrary<string>): fc.Arbitrary<Cell | null> =>
  fc.oneof(
    { weight: 4, arbitrary: fc.integer({ min: -9, max: 9 }).map(number) },
    { weight: 3, arbitrary: texts.map((one) => formula(one)) },
    fc.constantFrom('S1', 'S10').map(words),
    fc.constant(null),
  );
const rowsOf = (texts: fc.Arbitrary<string>, rows: number, columns: number) =>
  fc.array(fc.array(cellOf(texts), { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  });
const move = fc
  .record({
    axis: fc.constantFrom('row' as const, 'column' as const),
    at: fc.nat({ max: size - 1 }),
    count: fc.integer({ min: 1, max: 3 }),
    to: fc.nat({ max: size }),
  })
  .map(({ count, ...rest }) => ({ ...rest, count: Math.min(count, size - rest.at) }));

function figureOf(workbook: Workbook, values: Values, sheet: number, address: CellAddress): unknown {
  const own = workbook.sheets[sheet];
  const value = own ? shownValue(own, address, cellAt(own, address), values) : null;
  return isFault(value) ? 'no figure' : value;
}

test('lines that move keep their values, and so does all that reads them; undo brings all back', async () => {
  const calculator = createCalculator({ functions: [] });
  await fc.assert(
    fc.asyncProperty(
      rowsOf(text, size, size),
      rowsOf(otherText, 3, 2),
      move,
      async (rows, others, command) => {
        const before = workbookOf(rows, others);
        const difference = moving(before, command);
        const after = applyDifference(before, difference);
        const [was, is] = [await figureWorkbook(before, calculator), await figureWorkbook(after, calculator)];
        for (let row = 0; row < size; row += 1) {
          for (let column = 0; column < size; column += 1) {
            const from = { row, column };
            const to = { ...from, [command.axis]: lineAfterMove(from[command.axis], command) };
            expect(figureOf(after, is, 0, to)).toBe(figureOf(before, was, 0, from));
            if (row < 3 && column < 2)
              expect(figureOf(after, is, 1, from)).toBe(figureOf(before, was, 1, from));
          }
        }
        // Until new figures come, those that are known stand at the new places.
        const carried = valuesAfter(was, difference, before);
        for (const [key, value] of is.get('Runs') ?? []) {
          if (!isFault(value)) expect(carried.get('Runs')?.get(key)).toEqual(value);
        }
        expect(meaning(applyDifference(after, invertDifference(difference)))).toBe(meaning(before));
      },
    ),
    { numRuns: 100 },
  );
}, 60_000);

describe('what reads a block of lines', () => {
  const rows = [1, 2, 3, 4, 5, 6].map((one) => [number(one), formula(`A${one}*2`)]);
  const sums = [[formula('SUM(Runs!A2:A4)')]];
  const sumAfter = (command: { at: number; count: number; to: number }) => {
    const workbook = workbookOf(rows, sums);
    return textAt(applyDifference(workbook, moving(workbook, { axis: 'row', ...command })), 1, 'A1');
  };

  test('keeps them when they change places among themselves, the ends too', () => {
    expect(sumAfter({ at: 1, count: 1, to: 4 })).toBe('=SUM(Runs!A2:A4)');
    expect(sumAfter({ at: 3, count: 1, to: 1 })).toBe('=SUM(Runs!A2:A4)');
  });

  test('goes along when all of them move', () => {
    expect(sumAfter({ at: 1, count: 3, to: 6 })).toBe('=SUM(Runs!A4:A6)');
  });

  test('takes in what is put between them, and not what is put before or after', () => {
    expect(sumAfter({ at: 5, count: 1, to: 2 })).toBe('=SUM(Runs!A2:A5)');
    expect(sumAfter({ at: 5, count: 1, to: 1 })).toBe('=SUM(Runs!A3:A5)');
    expect(sumAfter({ at: 5, count: 1, to: 4 })).toBe('=SUM(Runs!A2:A4)');
  });

  test('lets go of what is taken elsewhere', () => {
    expect(sumAfter({ at: 3, count: 1, to: 6 })).toBe('=SUM(Runs!A2:A3)');
    expect(sumAfter({ at: 1, count: 1, to: 6 })).toBe('=SUM(Runs!A2:A3)');
  });
});

describe('lines that move', () => {
  test('take along their width and that they are hidden; what stays in sight grows and shrinks with them', () => {
    const sheet: Sheet = {
      ...sheetOf('runs', 'Runs', [[words('a'), words('b'), words('c')], [], [], [number(4)]]),
      columns: [{ width: 5 }, { width: 9, hidden: true }, { width: 30 }],
      hiddenRows: [1, 3],
      frozen: { rows: 2, columns: 1 },
    };
    const workbook = { ...workbookOf([]), sheets: [sheet] };
    const columns = applyDifference(workbook, moving(workbook, { axis: 'column', at: 1, count: 1, to: 5 }));
    expect(columns.sheets[0]?.columns.map(({ width, hidden }) => [width, hidden ?? false])).toEqual([
      [5, false],
      [30, false],
      [12, false],
      [12, false],
      [9, true],
    ]);
    const down = applyDifference(workbook, moving(workbook, { axis: 'row', at: 0, count: 1, to: 4 }));
    expect(down.sheets[0]).toMatchObject({ hiddenRows: [0, 2], frozen: { rows: 1, columns: 1 } });
    const up = applyDifference(workbook, moving(workbook, { axis: 'row', at: 3, count: 1, to: 1 }));
    expect(up.sheets[0]).toMatchObject({ hiddenRows: [1, 2], frozen: { rows: 3, columns: 1 } });
    const allDown = applyDifference(workbook, moving(workbook, { axis: 'row', at: 0, count: 2, to: 4 }));
    expect(allDown.sheets[0]).toMatchObject({ hiddenRows: [1, 3], frozen: { rows: 0, columns: 1 } });
  });

  test('that come to stand where they are change nothing, and none leave the sheet', () => {
    const workbook = workbookOf([[number(1)], [number(2)]]);
    expect(moving(workbook, { axis: 'row', at: 0, count: 2, to: 1 })).toEqual([]);
    const outcome = runCommand(workbook, {
      type: 'move_lines',
      sheet: 'runs',
      axis: 'column',
      at: 0,
      count: 1,
      to: 703,
    });
    expect(outcome.ok ? '' : wordCommandFault(outcome.fault)).toMatch(/room for 702 columns/);
  });

  test('carry the figures that are shown', () => {
    const workbook = workbookOf([[number(1), formula('A1*2')], [number(2)]]);
    const values = withValues(noValues, [{ sheet: 'Runs', row: 0, column: 1, value: 2 }]);
    const difference = moving(workbook, { axis: 'row', at: 0, count: 1, to: 2 });
    expect(valueAt(valuesAfter(values, difference, workbook), 'Runs', at('B2'))).toBe(2);
    expect(
      writeRange(applyDifference(workbook, difference).names.all?.range ?? { from: at('A1'), to: at('A1') }),
    ).toBe('A1:H8');
  });
});
