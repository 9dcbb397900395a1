import { expect, test } from 'vitest';
import { bookOf } from '../../src/engine/book.ts';
import { placeName, readPlaceName } from '../../src/engine/place-name.ts';
import type { Workbook } from '../../src/workbook/document.ts';

const workbook: Workbook = {
  id: 'trial',
  title: 'Trial job',
  kind: 'job',
  sheets: [
    {
      id: 's1',
      name: 'Main trunk',
      says: '',
      columns: [],
      rows: [[{ content: 16, role: 'given' }, null, { content: { formula: 'A1*2' }, role: 'figured' }], []],
    },
    { id: 's2', name: 'Wrap', says: '', columns: [], rows: [[{ content: 'R-8', role: 'text' }]] },
  ],
  names: {
    lap: { sheet: 's1', range: { from: { row: 0, column: 0 }, to: { row: 0, column: 0 } } },
    wraps: { sheet: 's2', range: { from: { row: 4, column: 0 }, to: { row: 8, column: 27 } } },
  },
  examples: [],
};

test('a workbook is handed to the calculator as contents by sheet name and absolute ranges', () => {
  expect(bookOf(workbook)).toEqual({
    sheets: [
      { name: 'Main trunk', rows: [[16, null, { formula: 'A1*2' }], []] },
      { name: 'Wrap', rows: [['R-8']] },
    ],
    names: { lap: "'Main trunk'!$A$1", wraps: 'Wrap!$A$5:$AB$9' },
  });
});

test.each(['Wrap', 'Main trunk', '2nd', "Cook's", "'", 'Wrap_2', 'A1', 'ä'])(
  'the place of a cell on %s reads back',
  (sheet) => {
    const place = { sheet, row: 11, column: 30 };
    expect(readPlaceName(placeName(place))).toEqual(place);
  },
);

test.each(['A1', 'Wrap!', '!A1', 'Wrap!A0', "'Wrap!A1", 'Wrap!a1', ''])('%j is no place', (name) => {
  expect(readPlaceName(name)).toBeNull();
});
