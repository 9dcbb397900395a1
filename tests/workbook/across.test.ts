import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAddress } from '../../src/base/address.ts';
import { acrossAt } from '../../src/workbook/across.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../src/workbook/difference.ts';
import type { Cell, Workbook } from '../../src/workbook/document.ts';
import { readWorkbookFile, storedForm, writeWorkbookFile } from '../../src/workbook/file.ts';
import { headingOver } from '../../src/workbook/label.ts';
import { readRecord, recordOf } from '../../src/workbook/record.ts';
import { noValues } from '../../src/workbook/values.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { diameter, formula, heading, sheetOf, words } from './sample.ts';

const at = (place: string) => {
  const address = readAddress(place);
  if (!address) throw new Error(place);
  return address;
};

function workbookOf(...rows: (Cell | null)[][]): Workbook {
  return {
    id: 'across',
    title: 'Larkspur Lane, lot 7',
    kind: 'job',
    sheets: [sheetOf('pieces', 'Pieces', rows)],
    names: {},
    examples: [],
  };
}

const wide = (content: string, across: number): Cell => ({ ...heading(content), across });

function having(workbook: Workbook, command: Command): Workbook {
  const outcome = runCommand(workbook, command);
  if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
  const changed = applyDifference(workbook, outcome.value);
  expect(
    storedForm({ workbook: applyDifference(changed, invertDifference(outcome.value)), values: noValues })
      .workbook.sheets[0]?.cells,
  ).toEqual(storedForm({ workbook, values: noValues }).workbook.sheets[0]?.cells);
  return changed;
}

/** `A1 3`: what covers a place, and over how many columns. */
function covers(workbook: Workbook, place: string): string | null {
  const [sheet] = workbook.sheets;
  const across = sheet ? acrossAt(sheet, at(place)) : null;
  return across && `${String.fromCharCode(65 + across.head.column)}${across.head.row + 1} ${across.columns}`;
}

const goAcross = (place: string, across: number | null): Command => ({
  type: 'dress',
  sheet: 'pieces',
  addresses: [at(place)],
  dress: { across },
});
const columns = (type: 'insert_lines' | 'remove_lines', first: number, count = 1): Command => ({
  type,
  sheet: 'pieces',
  axis: 'column',
  at: first,
  count,
});
const moved = (first: number, count: number, to: number): Command => ({
  type: 'move_lines',
  sheet: 'pieces',
  axis: 'column',
  at: first,
  count,
  to,
});

describe('a heading that goes across its neighbors', () => {
  test('covers as many as it is told, up to where something stands, and all of them again when that is gone', () => {
    let workbook = having(workbookOf([heading('Trunk'), null, null, null, words('x')]), goAcross('A1', 4));
    expect(['A1', 'B1', 'D1', 'E1'].map((place) => covers(workbook, place))).toEqual([
      'A1 4',
      'A1 4',
      'A1 4',
      null,
    ]);
    workbook = having(workbook, { type: 'enter', sheet: 'pieces', address: at('C1'), typed: '7' });
    expect(['B1', 'C1', 'D1'].map((place) => covers(workbook, place))).toEqual(['A1 2', null, null]);
    workbook = having(workbook, { type: 'clear', sheet: 'pieces', addresses: [at('C1')] });
    expect(covers(workbook, 'D1')).toBe('A1 4');
    expect(covers(having(workbook, goAcross('A1', null)), 'B1')).toBeNull();
  });

  test('covers what is put in between, and less when columns go', () => {
    const workbook = workbookOf([words('x'), wide('Trunk', 3), null, null]);
    expect(covers(having(workbook, columns('insert_lines', 2, 2)), 'F1')).toBe('B1 5');
    expect(covers(having(workbook, columns('insert_lines', 1)), 'C1')).toBe('C1 3');
    expect(covers(having(workbook, columns('insert_lines', 4)), 'B1')).toBe('B1 3');
    expect(covers(having(workbook, columns('remove_lines', 3, 2)), 'C1')).toBe('B1 2');
    const alone = having(workbook, columns('remove_lines', 2, 2));
    expect(alone.sheets[0]?.rows[0]?.[1]).toEqual(heading('Trunk'));
  });

  test('goes along with its columns, and ends when it leaves them', () => {
    const workbook = workbookOf([words('x'), wide('Trunk', 3), null, null]);
    expect(covers(having(workbook, moved(1, 3, 6)), 'D1')).toBe('D1 3');
    expect(covers(having(workbook, moved(0, 1, 3)), 'A1')).toBe('A1 2');
    expect(having(workbook, moved(1, 1, 8)).sheets[0]?.rows[0]?.[7]).toEqual(heading('Trunk'));
  });

  test('names the columns under it', () => {
    const [sheet] = workbookOf([null, wide('Trunk', 2), null], [words('S1'), diameter, diameter]).sheets;
    expect(sheet && headingOver(sheet, at('C2'))).toBe('Trunk');
  });

  test('is a heading or plain words: what is figured, checked or filled in shows in its own column', () => {
    const workbook = workbookOf([wide('Trunk', 3), diameter, formula('1+1')]);
    for (const place of ['B1', 'C1']) {
      const outcome = runCommand(workbook, goAcross(place, 2));
      expect(outcome.ok ? '' : wordCommandFault(outcome.fault)).toMatch(
        /^. ?.*holds no heading and no words/,
      );
    }
    const figured = having(workbook, { type: 'enter', sheet: 'pieces', address: at('A1'), typed: '=1' });
    expect(figured.sheets[0]?.rows[0]?.[0]).not.toHaveProperty('across');
    const given = having(workbook, {
      type: 'dress',
      sheet: 'pieces',
      addresses: [at('A1')],
      dress: { role: 'given' },
    });
    expect(given.sheets[0]?.rows[0]?.[0]).not.toHaveProperty('across');
  });
});

test('what goes across comes back from the file and from the database as it was', () => {
  const cell = fc.oneof(
    fc.constant(null),
    fc.integer({ min: 2, max: 702 }).map((across) => wide('Trunk', across)),
    fc
      .integer({ min: 2, max: 9 })
      .map((across): Cell => ({ ...words('Ask the roofer'), across, style: { align: 'middle' } })),
    fc.constant(diameter),
  );
  fc.assert(
    fc.property(fc.array(fc.array(cell, { maxLength: 6 }), { minLength: 1, maxLength: 4 }), (rows) => {
      const kept = { workbook: workbookOf(...rows), values: noValues };
      const stored = storedForm(kept);
      for (const read of [
        readWorkbookFile(writeWorkbookFile(kept)),
        readRecord(structuredClone(recordOf(kept))),
      ]) {
        if (!read.ok) throw new Error(JSON.stringify(read.fault));
        expect(storedForm(read.value)).toEqual(stored);
      }
    }),
  );
});

test.each([1, 1.5, 703, '3', null])('a file whose heading goes across %s columns is refused', (across) => {
  const kept = { workbook: workbookOf([wide('Trunk', 4)]), values: noValues };
  const text = writeWorkbookFile(kept).replace('"across": 4', `"across": ${JSON.stringify(across)}`);
  expect(readWorkbookFile(text)).toMatchObject({ ok: false, fault: { code: 'wrong_shape' } });
});
