import fc from 'fast-check';
import { expect, test } from 'vitest';
import { writeAddress } from '../../../src/base/address.ts';
import { findCells, piecesOf, type Quest, withReplaced } from '../../../src/ui/find/find-cells.ts';
import { placeKey } from '../../../src/workbook/place-key.ts';
import type { Values } from '../../../src/workbook/values.ts';
import { sampleWorkbook } from '../../workbook/sample.ts';

const plain: Quest = { text: '', where: 'values', isCaseKept: false, isWholeCell: false };
const values: Values = new Map([['Wrap round', new Map([[placeKey({ row: 1, column: 1 }), 50.5]])]]);

function found(quest: Partial<Quest>): readonly string[] {
  return findCells(sampleWorkbook(), values, { ...plain, ...quest }).map(
    ({ sheetId, address, typed }) => `${sheetId} ${writeAddress(address)}${typed === null ? ' figured' : ''}`,
  );
}

test('words are found in all sheets, in any case unless capitals count', () => {
  expect(found({ text: 's1 TRUNK' })).toEqual(['pieces A2', 'wrap A2']);
  expect(found({ text: 's1', isCaseKept: true })).toEqual([]);
  expect(found({ text: 'trunk', isWholeCell: true })).toEqual([]);
});

test('a figured value is found but cannot be typed anew; in formulas its formula can', () => {
  expect(found({ text: '50.5' })).toEqual(['wrap B2 figured']);
  expect(found({ text: 'pieces!', where: 'formulas' })).toEqual(['wrap B2']);
});

test('signs that mean something in patterns are plain letters here', () => {
  expect(found({ text: 'PI()*', where: 'formulas' })).toEqual(['wrap B2']);
  expect(withReplaced('a.b-c', { ...plain, text: '.' }, '$&')).toBe('a$&b-c');
});

test('the pieces of a text are the text, and every second one is what was looked for', () => {
  const word = fc.string({ maxLength: 12 });
  fc.assert(
    fc.property(word, word, (text, wanted) => {
      fc.pre(wanted !== '');
      const pieces = piecesOf(text, { ...plain, text: wanted, isCaseKept: true });
      expect(pieces.join('')).toBe(text);
      expect(pieces.filter((_, at) => at % 2 === 1).every((piece) => piece === wanted)).toBe(true);
      expect(pieces.filter((_, at) => at % 2 === 0).every((piece) => !piece.includes(wanted))).toBe(true);
    }),
  );
});
