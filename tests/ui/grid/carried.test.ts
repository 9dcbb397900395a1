import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type CellRange, readAddress, writeRange } from '../../../src/base/address.ts';
import { type Unit, unitNames } from '../../../src/base/unit.ts';
import { type Carried, lastLinesDeed, pasteOf, shownText } from '../../../src/ui/grid/carried.ts';
import { lastPlace } from '../../../src/ui/grid/selection.ts';
import { textToPaste } from '../../../src/ui/grid/text-to-paste.ts';
import type { Cell, Sheet, Workbook } from '../../../src/workbook/document.ts';
import { readEntry } from '../../../src/workbook/entry.ts';
import { emptyHistory, type History } from '../../../src/workbook/history.ts';
import { noValues, withValues } from '../../../src/workbook/values.ts';
import { sheetWith, text } from './cells.ts';

const length: Cell = { content: 16, role: 'given', unit: 'in' };
const wide: Cell = { ...length, content: 70 };
const asked: Cell = { ...length, content: null, question: { asks: 'How wide?', most: 60 } };
const figured: Cell = { content: { formula: 'A1*2' }, role: 'figured', unit: 'in' };
const sheet = sheetWith([
  [length, figured, text('two\tparts')],
  [asked, null, wide],
]);
const values = withValues(noValues, [{ sheet: 'one', row: 0, column: 1, value: 32.00001 }]);
const workbook: Workbook = { id: 'w', title: '', kind: 'job', sheets: [sheet], names: {}, examples: [] };

function range(written: string): CellRange {
  const [from, to = from] = written.split(':').map(readAddress);
  if (!from || !to) throw new Error(`${written} is no range`);
  return { from, to };
}

function carry(written: string, kind: Carried['kind'] = 'copy'): Carried {
  const taken = range(written);
  return { kind, sheetId: 'one', range: taken, text: shownText(sheet, values, taken), lines: null };
}

function paste(
  clipboard: string,
  carried: Carried | null,
  to: string | CellRange,
  options: { isValuesOnly?: boolean; history?: History; on?: Sheet } = {},
) {
  const into = {
    workbook,
    values,
    history: options.history ?? emptyHistory,
    sheet: options.on ?? sheet,
    range: typeof to === 'string' ? range(to) : to,
    isValuesOnly: options.isValuesOnly ?? false,
  };
  const outcome = pasteOf(clipboard, carried, into);
  if (outcome.type === 'refused') return outcome.sentence;
  const { command, covers } = outcome;
  return [command.type, writeRange(covers), ...(command.type === 'write' ? command.rows : [])];
}

test('what is carried is put in while its own text is on the clipboard, however that breaks its lines', () => {
  const carried = carry('A1:A2');
  expect(paste(carried.text, carried, 'E5')).toEqual(['copy', 'E5:E6']);
  expect(paste(carried.text.replaceAll('\n', '\r\n'), carried, 'E5')).toEqual(['copy', 'E5:E6']);
  expect(paste('18', carried, 'E5')).toEqual(['write', 'E5:E5', ['18']]);
  expect(paste(carried.text, { ...carried, kind: 'cut' }, 'E5')).toEqual(['move', 'E5:E6']);
});

test('a block is put in as often as it goes into what is selected, and once into whole rows and columns', () => {
  const carried = carry('A1');
  expect(paste(carried.text, carried, 'D4:E6')).toEqual(['copy', 'D4:E6']);
  expect(paste(carried.text, { ...carried, kind: 'cut' }, 'D4:E6')).toEqual(['move', 'D4:D4']);
  expect(
    paste(carried.text, carried, { from: { row: 4, column: 0 }, to: { row: 4, column: lastPlace.column } }),
  ).toEqual(['copy', 'A5:A5']);
  expect(paste('1\t2', null, 'D4:G5')).toEqual([
    'write',
    'D4:G5',
    ['1', '2', '1', '2'],
    ['1', '2', '1', '2'],
  ]);
  expect(paste('1\t2\n3', null, 'D4')).toEqual(['write', 'D4:E5', ['1', '2'], ['3']]);
});

test('a given keeps its question: what asks something else is entered there, formulas shifted', () => {
  const carried = carry('B1:C1');
  expect(paste(carried.text, carried, 'A2')).toEqual(['write', 'A2:B2', ['=#REF!*2', 'two\tparts']]);
  expect(paste(carry('C2').text, carry('C2'), 'A2')).toEqual(['write', 'A2:A2', ['70″']]);
  expect(paste(carry('A2').text, carry('A2'), 'A2')).toEqual(['copy', 'A2:A2']);
});

test('values are put in exactly as they are, not as they are shown', () => {
  const carried = carry('B1:C1');
  expect(paste(carried.text, carried, 'D5', { isValuesOnly: true })).toEqual([
    'write',
    'D5:E5',
    ['32.00001″', 'two\tparts'],
  ]);
});

test('after lines have moved nothing is pasted from where the cells were', () => {
  const carried = carry('A1');
  const lines = { type: 'lines', sheet: 'one', axis: 'row', at: 0, before: [], after: [] } as const;
  const history: History = { done: [{ says: 'putting in row 1', difference: [lines] }], undone: [] };
  expect(paste(carried.text, carried, 'E5', { history })).toMatch(/^Rows, columns or sheets have changed/);
  expect(paste(carried.text, { ...carried, lines: lastLinesDeed(history) }, 'E5', { history })).toEqual([
    'copy',
    'E5:E5',
  ]);
  expect(paste(carried.text, { ...carried, sheetId: 'gone' }, 'E5')).toMatch(/^Rows, columns or sheets/);
});

test('a cell without a figure has no value to paste', () => {
  const fault = { fault: 'circular', sentence: 'It goes in a circle.' } as const;
  const broken = withValues(noValues, [{ sheet: 'one', row: 0, column: 1, value: fault }]);
  const taken = range('B1');
  const carried: Carried = {
    kind: 'copy',
    sheetId: 'one',
    range: taken,
    text: shownText(sheet, broken, taken),
    lines: null,
  };
  const into = {
    workbook,
    values: broken,
    history: emptyHistory,
    sheet,
    range: range('D1'),
    isValuesOnly: true,
  };
  expect(pasteOf(carried.text, carried, into)).toMatchObject({ type: 'refused' });
});

test('a value pasted into a cell of the same unit, of either length or of none is the very same measure; another unit is refused', () => {
  const isLength = (unit: Unit | undefined) => unit === 'in' || unit === 'ft';
  const units = fc.constantFrom<Unit | undefined>(undefined, ...unitNames);
  const isLabelled = (unit: Unit | undefined) =>
    unit !== undefined && unit !== 'count' && unit !== 'ratio' && unit !== 'percent';
  fc.assert(
    fc.property(fc.integer({ min: -4000, max: 4000 }), units, units, (value, from, to) => {
      const source: Cell = { content: value, role: 'given', ...(from && { unit: from }) };
      const target: Cell | null = to ? { content: null, role: 'given', unit: to } : null;
      const entry = readEntry(textToPaste(value, source, target), target);
      if (from !== to && from && to && isLabelled(from) && !(isLength(from) && isLength(to))) {
        expect(entry.ok).toBe(false);
      } else if (isLength(from)) {
        expect(entry.ok || !isLength(to)).toBe(true);
        if (!entry.ok) return;
        const inInches = (number: unknown, unit: Unit | undefined) =>
          Number(number) * (unit === 'ft' ? 12 : 1);
        expect(inInches(entry.value.content, to ?? entry.value.unit)).toBeCloseTo(inInches(value, from), 9);
      } else if (entry.ok && from === to) expect(entry.value.content).toBeCloseTo(value, 9);
    }),
    { numRuns: 3000 },
  );
});
