import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CellAddress } from '../../src/base/address.ts';
import { cellAt, sheetNamed } from '../../src/workbook/cells.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, type Difference, invertDifference } from '../../src/workbook/difference.ts';
import type { Workbook } from '../../src/workbook/document.ts';
import { storedForm } from '../../src/workbook/file.ts';
import { afterDoing, doAgain, emptyHistory, takeBack } from '../../src/workbook/history.ts';
import { noValues } from '../../src/workbook/values.ts';
import { sampleWorkbook } from './sample.ts';

const address = fc.record({ row: fc.nat({ max: 5 }), column: fc.nat({ max: 4 }) });
const sheet = fc.constantFrom('pieces', 'wrap', 'gone');
const command: fc.Arbitrary<Command> = fc.oneof(
  fc.record({
    type: fc.constant('enter' as const),
    sheet,
    address,
    typed: fc.constantFrom('16', `12' 4"`, 'S3', '=B2*2', '=12', '', 'R-8 wrap', '7', '99'),
  }),
  fc.record({
    type: fc.constant('clear' as const),
    sheet,
    addresses: fc.array(address, { maxLength: 4 }),
  }),
  fc.record({ type: fc.constant('retitle' as const), title: fc.constantFrom('One', 'Two', ' ') }),
);

/** Equal but for blank cells at the ends of rows, which mean nothing. */
const meaning = (workbook: Workbook) => JSON.stringify(storedForm({ workbook, values: noValues }));

describe('every difference can be taken back', () => {
  test('undo of everything gives the first workbook, redo of everything the last', () => {
    fc.assert(
      fc.property(fc.array(command, { maxLength: 20 }), (commands) => {
        const first = sampleWorkbook();
        let workbook = first;
        let history = emptyHistory;
        for (const one of commands) {
          const outcome = runCommand(workbook, one);
          if (!outcome.ok || outcome.value.length === 0) continue;
          workbook = applyDifference(workbook, outcome.value);
          history = afterDoing(history, { says: one.type, difference: outcome.value });
        }
        const last = meaning(workbook);
        for (let step = takeBack(history); step; step = takeBack(history)) {
          workbook = applyDifference(workbook, step.deed.difference);
          history = step.history;
        }
        expect(meaning(workbook)).toBe(meaning(first));
        for (let step = doAgain(history); step; step = doAgain(history)) {
          workbook = applyDifference(workbook, step.deed.difference);
          history = step.history;
        }
        expect(meaning(workbook)).toBe(last);
      }),
      { numRuns: 300 },
    );
  });

  test('a refused command changes nothing and says why', () => {
    const place: CellAddress = { row: 1, column: 1 };
    const outcome = runCommand(sampleWorkbook(), {
      type: 'enter',
      sheet: 'pieces',
      address: place,
      typed: '99',
    });
    expect(outcome).toMatchObject({ ok: false, fault: { code: 'out_of_range', got: 99 } });
  });

  test('sheets and names come and go by the same mechanism', () => {
    const before = sampleWorkbook();
    const [pieces] = before.sheets;
    const difference: Difference = [
      { type: 'sheet', index: 0, before: pieces ?? null, after: null },
      { type: 'name', name: 'diameters', before: before.names.diameters ?? null, after: null },
    ];
    const after = applyDifference(before, difference);
    expect(after.sheets.map((one) => one.name)).toEqual(['Wrap round']);
    expect(after.names).toEqual({});
    expect(meaning(applyDifference(after, invertDifference(difference)))).toBe(meaning(before));
  });
});

describe('what a cell is for stays when its content changes', () => {
  test('a given keeps its question when it is emptied', () => {
    const workbook = sampleWorkbook();
    const outcome = runCommand(workbook, {
      type: 'clear',
      sheet: 'pieces',
      addresses: [{ row: 1, column: 1 }],
    });
    if (!outcome.ok) throw new Error('refused');
    const pieces = sheetNamed(applyDifference(workbook, outcome.value), 'Pieces');
    expect(pieces && cellAt(pieces, { row: 1, column: 1 })).toMatchObject({
      content: null,
      role: 'given',
      question: { asks: 'Diameter of the pipe' },
    });
  });

  test('a formula in an empty cell makes it a figured cell', () => {
    const workbook = sampleWorkbook();
    const outcome = runCommand(workbook, {
      type: 'enter',
      sheet: 'pieces',
      address: { row: 4, column: 0 },
      typed: '= B2 * 2 ',
    });
    expect(outcome).toMatchObject({
      ok: true,
      value: [{ after: { role: 'figured', content: { formula: 'B2 * 2' } } }],
    });
  });
});
