import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAddress, writeAddress } from '../../src/base/address.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../src/workbook/difference.ts';
import type { Cell, Workbook } from '../../src/workbook/document.ts';
import { byPlaceAfter, readKeptPlace, writeKeptPlace } from '../../src/workbook/kept-places.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { sampleWorkbook, sheetOf } from './sample.ts';

/** Two sheets of six by six cells; each given holds its own address, so that whoever moves is known again. */
function workbookOf(): Workbook {
  const cells = (name: string) =>
    Array.from({ length: 6 }, (_, row) =>
      Array.from(
        { length: 6 },
        (_, column): Cell => ({ content: `${name} ${writeAddress({ row, column })}`, role: 'given' }),
      ),
    );
  return {
    id: 'kept',
    title: 'Round trunk',
    kind: 'template',
    sheets: [sheetOf('a', 'Pieces', cells('a')), sheetOf('b', 'Seal and fasten', cells('b'))],
    names: {},
    examples: [
      {
        name: 'one',
        source: 'by hand',
        given: { 'Pieces!B2': 'a B2', 'Seal and fasten!C3': 'b C3', 'Pieces!F6': 'a F6' },
        gives: { 'Pieces!C4': { value: 'a C4' }, 'Seal and fasten!A1': { value: 'b A1', tolerance: 2 } },
      },
    ],
  };
}

function after(workbook: Workbook, command: Command): Workbook {
  const outcome = runCommand(workbook, command);
  if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
  const changed = applyDifference(workbook, outcome.value);
  expect(applyDifference(changed, invertDifference(outcome.value)).examples).toEqual(workbook.examples);
  return changed;
}

const at = (text: string) => {
  const address = readAddress(text);
  if (!address) throw new Error(text);
  return address;
};

const line = fc.nat({ max: 5 });
const sheet = fc.constantFrom('a', 'b');
const block = fc
  .record({ row: line, column: line, down: fc.nat({ max: 2 }), right: fc.nat({ max: 2 }) })
  .map(({ row, column, down, right }) => ({
    from: { row, column },
    to: { row: Math.min(5, row + down), column: Math.min(5, column + right) },
  }));
const moving: fc.Arbitrary<Command> = fc.oneof(
  fc.record({
    type: fc.constantFrom('insert_lines' as const, 'remove_lines' as const),
    sheet,
    axis: fc.constantFrom('row' as const, 'column' as const),
    at: line,
    count: fc.integer({ min: 1, max: 3 }),
  }),
  fc.record({
    type: fc.constant('move_lines' as const),
    sheet,
    axis: fc.constantFrom('row' as const, 'column' as const),
    at: line,
    count: fc.integer({ min: 1, max: 3 }),
    to: fc.nat({ max: 8 }),
  }),
  fc.record({ from: fc.record({ sheet, range: block }), row: line, column: line, to: sheet }).map(
    ({ from, row, column, to }): Command => ({
      type: 'move',
      from,
      to: { sheet: to, at: { row, column } },
    }),
  ),
  fc.tuple(sheet, fc.shuffledSubarray([0, 1, 2], { minLength: 3 })).map(
    ([id, order]): Command => ({
      type: 'sort_rows',
      sheet: id,
      range: { from: at('A2'), to: at('F4') },
      order,
    }),
  ),
  fc.tuple(sheet, fc.constantFrom('Cuts', 'Wrap round')).map(
    ([id, name]): Command => ({
      type: 'rename_sheet',
      sheet: id,
      name,
    }),
  ),
  sheet.map((id): Command => ({ type: 'remove_sheet', sheet: id })),
);

describe('places of worked examples', () => {
  test('follow whatever moves their cells, and go when the cells go', () => {
    fc.assert(
      fc.property(fc.array(moving, { minLength: 1, maxLength: 5 }), (commands) => {
        let workbook = workbookOf();
        for (const command of commands) {
          const outcome = runCommand(workbook, command);
          if (outcome.ok) workbook = after(workbook, command);
        }
        const standing = new Map<string, string>();
        for (const { name, rows } of workbook.sheets) {
          for (const [row, cells] of rows.entries()) {
            for (const [column, cell] of cells.entries()) {
              if (cell) standing.set(String(cell.content), writeKeptPlace({ sheet: name, row, column }));
            }
          }
        }
        const wanted = (contents: readonly string[]) =>
          contents.flatMap((content) => {
            const place = standing.get(content);
            return place === undefined ? [] : [[place, content]];
          });
        const results = wanted(['a C4', 'b A1']);
        const [example] = workbook.examples;
        expect(example === undefined).toBe(results.length === 0);
        if (!example) return;
        expect(Object.entries(example.given)).toEqual(wanted(['a B2', 'b C3', 'a F6']));
        expect(Object.entries(example.gives).map(([place, { value }]) => [place, value])).toEqual(results);
      }),
      { numRuns: 500 },
    );
  });

  test('of other sheets stay as they are written, without a change', () => {
    const outcome = runCommand(workbookOf(), {
      type: 'insert_lines',
      sheet: 'a',
      axis: 'row',
      at: 20,
      count: 1,
    });
    expect(outcome.ok && outcome.value.map((change) => change.type)).toEqual(['lines']);
  });

  test('that name no cell are left alone', () => {
    const kept = { Pieces: 1, '!B2': 2, 'Pieces!R': 3 };
    expect(byPlaceAfter(kept, () => null)).toBe(kept);
    expect(readKeptPlace('Seal and fasten!AB12')).toEqual({ sheet: 'Seal and fasten', row: 11, column: 27 });
  });
});

describe('the places of a house type', () => {
  test('follow a row that is put in above them, and one that goes takes its place along', () => {
    const house = {
      options: [
        { name: 'Wrap', usual: 'R-8', choices: [{ name: 'R-8', sets: { 'Pieces!C2': 'R-8 wrap' } }] },
      ],
      varies: ['Pieces!B2', 'Pieces!B3'],
      lotName: 'Pieces!A2',
      results: [{ name: 'Girth', place: 'Wrap round!B2' }],
    };
    const template = { ...sampleWorkbook(), kind: 'template' as const, house };
    const inserted = runCommand(template, {
      type: 'insert_lines',
      sheet: 'pieces',
      axis: 'row',
      at: 1,
      count: 1,
    });
    if (!inserted.ok) throw new Error(inserted.fault.code);
    const lower = applyDifference(template, inserted.value);
    expect(lower.house?.varies).toEqual(['Pieces!B3', 'Pieces!B4']);
    expect(lower.house?.lotName).toBe('Pieces!A3');
    expect(lower.house?.options[0]?.choices[0]?.sets).toEqual({ 'Pieces!C3': 'R-8 wrap' });
    const removed = runCommand(lower, {
      type: 'remove_lines',
      sheet: 'pieces',
      axis: 'row',
      at: 2,
      count: 1,
    });
    if (!removed.ok) throw new Error(removed.fault.code);
    const { house: left } = applyDifference(lower, removed.value);
    expect(left?.varies).toEqual(['Pieces!B3']);
    expect(left).not.toHaveProperty('lotName');
  });
});
