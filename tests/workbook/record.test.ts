import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CellValue } from '../../src/base/value.ts';
import { writeBands } from '../../src/workbook/bands.ts';
import { storedForm } from '../../src/workbook/file.ts';
import { placeKey } from '../../src/workbook/place-key.ts';
import { cellReader } from '../../src/workbook/read-cell.ts';
import { readRecord, recordOf } from '../../src/workbook/record.ts';
import { storedCell } from '../../src/workbook/schema.ts';
import { sampleWorkbook } from './sample.ts';

const kept = {
  workbook: sampleWorkbook(),
  values: new Map([
    [
      'Wrap round',
      new Map<number, CellValue>([
        [placeKey({ row: 1, column: 1 }), 50.26548245743669],
        [placeKey({ row: 1, column: 2 }), { fault: 'trade', sentence: 'The gauge is missing.' }],
      ]),
    ],
  ]),
};

/** The record after a database has had it. */
const record = () => structuredClone(recordOf(kept));

test('a workbook comes back from its record as it was, values and all', () => {
  const values = new Map([...kept.values].map(([sheet, own]) => [sheet, writeBands(own).done()]));
  expect(readRecord(record())).toEqual({ ok: true, value: { ...kept, values } });
});

test('a record from before rows were texts still opens', () => {
  expect(readRecord(structuredClone(storedForm(kept)))).toEqual({ ok: true, value: kept });
});

describe('a record that is not what it should be is refused', () => {
  const withRow = (row: string) => {
    const changed = record();
    changed.workbook.sheets[0]?.rows.splice(1, 1, row);
    return changed;
  };
  test.each([
    ['half a row', withRow('[{"content":16,')],
    ['a row that is a number', withRow('7')],
    ['a cell of no role', withRow('[{"content":16}]')],
    ['a cell with a key that nobody knows', withRow('[{"content":16,"role":"text","run":"x"}]')],
    ['a cell with a __proto__ key', withRow('[{"content":16,"role":"text","__proto__":{}}]')],
    ['a content that is a list', withRow('[{"content":[1],"role":"text"}]')],
    ['a unit that nobody knows', withRow('[{"content":1,"role":"given","unit":"cubit"}]')],
    ['more columns than a sheet has', withRow(JSON.stringify(Array(703).fill(null)))],
    ['a value that is a list', { ...record(), values: new Map([['Pieces', new Map([[1, [2]]])]]) }],
    ['values that are a text', { ...record(), values: new Map([['Pieces', 'x']]) }],
    ['no sheet', { ...record(), workbook: { ...record().workbook, sheets: [] } }],
    ['a newer version', { ...record(), stretchout: 2 }],
  ])('%s', (_, data) => {
    const outcome = readRecord(data);
    expect(outcome.ok || outcome.fault.code).toBe('wrong_shape');
  });
});

test('cells are taken exactly as the schema of the file takes them', () => {
  const anything = fc.oneof(
    fc.string({ maxLength: 4 }),
    fc.double(),
    fc.boolean(),
    fc.object({ maxDepth: 1 }),
  );
  const roleLike = fc.oneof(fc.constantFrom('given', 'figured', 'check', 'text', 'heading'), anything);
  const cellLike = fc.record(
    {
      role: roleLike,
      content: fc.oneof(
        fc.record({ formula: fc.oneof(fc.string(), fc.constant('A'.repeat(8193))) }),
        anything,
      ),
      unit: fc.oneof(fc.constantFrom('in', 'lb', 'money'), anything),
      typed: anything,
      note: anything,
      format: fc.oneof(fc.constant({ type: 'decimal', places: 2 }), anything),
      style: fc.oneof(fc.constant({ bold: true }), anything),
      question: fc.oneof(fc.record({ asks: fc.string(), least: fc.double() }), anything),
      other: anything,
    },
    { requiredKeys: [] },
  );
  const readCell = cellReader();
  fc.assert(
    fc.property(cellLike, (data) => {
      expect(readCell(data) !== undefined).toBe(storedCell.safeParse(data).success);
    }),
    { seed: 20261125, numRuns: 2000 },
  );
});
