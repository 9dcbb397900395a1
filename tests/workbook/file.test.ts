import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CellValue } from '../../src/base/value.ts';
import { readWorkbookFile, writeWorkbookFile } from '../../src/workbook/file.ts';
import { placeKey } from '../../src/workbook/place-key.ts';
import { wordFileFault } from '../../src/workbook/wording.ts';
import { sampleWorkbook } from './sample.ts';

const kept = {
  workbook: sampleWorkbook(),
  values: new Map([
    [
      'Wrap round',
      new Map<number, CellValue>([
        [placeKey({ row: 1, column: 1 }), 50.26548245743669],
        [placeKey({ row: 1, column: 2 }), 'holds'],
      ]),
    ],
  ]),
};
const text = writeWorkbookFile(kept);

const refusal = (file: string) => {
  const outcome = readWorkbookFile(file);
  if (outcome.ok) throw new Error('The file was taken.');
  return outcome.fault;
};
/** The file with one entry put somewhere: `workbook.sheets.0.name`. */
const changed = (path: string, value: unknown) => {
  const file = JSON.parse(text);
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  keys.reduce((inside, key) => inside[key], file)[last] = value;
  return JSON.stringify(file);
};

test('a workbook comes back from its file as it was, values and all', () => {
  const outcome = readWorkbookFile(text);
  expect(outcome).toEqual({ ok: true, value: kept });
});

test('the sample of version 1 opens for ever', async () => {
  const { readFile } = await import('node:fs/promises');
  const sample = await readFile(new URL('./versions/1.stretchout.json', import.meta.url), 'utf8');
  const outcome = readWorkbookFile(sample);
  expect(outcome.ok && writeWorkbookFile(outcome.value)).toBe(sample);
});

describe('a file that is not what it should be is refused with a reason', () => {
  test.each([
    ['nothing in it', '', 'empty'],
    ['spaces only', ' '.repeat(1000), 'empty'],
    ['more than a workbook may be', ' '.repeat(50 * 1024 * 1024), 'too_large'],
    ['a packed file of another program', 'PK\u0003\u0004 [Content_Types].xml', 'other_program'],
    ['half a file', text.slice(0, text.length / 2), 'not_json'],
    ['something else in JSON', '{"name": "x"}', 'not_a_workbook'],
    ['a list', '[1, 2]', 'not_a_workbook'],
    ['a lot table', '{"stretchoutLots": 1}', 'lot_table'],
    ['a newer version', '{"stretchout": 2}', 'newer_version'],
    ['a version that never was', '{"stretchout": "one"}', 'unknown_version'],
    ['version 0', '{"stretchout": 0}', 'unknown_version'],
    ['a __proto__ key', text.replace('"names": {', '"names": {"__proto__": {},'), 'unsafe_key'],
    ['a constructor key', text.replace('"values": {', '"values": {"constructor": {},'), 'unsafe_key'],
    ['a number for a title', changed('workbook.title', 7), 'wrong_shape'],
    ['a key that nobody knows', changed('workbook.macro', 'x'), 'wrong_shape'],
    [
      'a cell far outside',
      changed('workbook.sheets.0.cells.ZZZ9', { role: 'text', content: 'x' }),
      'wrong_shape',
    ],
    ['two sheets of one name', changed('workbook.sheets.1.name', 'PIECES'), 'wrong_shape'],
    ['a name that points nowhere', changed('workbook.names.diameters.sheet', 'x'), 'wrong_shape'],
    [
      'cells far down on each of many sheets',
      changed(
        'workbook.sheets',
        Array.from({ length: 100 }, (_, index) => ({
          ...JSON.parse(text).workbook.sheets[0],
          id: `s${index}`,
          name: `S${index}`,
          cells: { A99999: { role: 'text', content: 'x' } },
        })),
      ),
      'wrong_shape',
    ],
    ['no sheet at all', changed('workbook.sheets', []), 'wrong_shape'],
  ])('%s', (_, file, code) => {
    const fault = refusal(file);
    expect(fault.code).toBe(code);
    expect(wordFileFault(fault)).toMatch(/^[A-Z].*\.$/);
  });

  test('any cut or any one changed character is refused or read, and never throws', () => {
    fc.assert(
      fc.property(fc.nat({ max: text.length - 1 }), fc.string({ maxLength: 3 }), (at, put) => {
        const outcome = readWorkbookFile(text.slice(0, at) + put + text.slice(at + 1));
        expect(outcome.ok || wordFileFault(outcome.fault).length > 20).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
