import { describe, expect, test } from 'vitest';
import { readAddress } from '../../src/base/address.ts';
import { withCell } from '../../src/workbook/cells.ts';
import type { Workbook } from '../../src/workbook/document.ts';
import { nameUsers } from '../../src/workbook/name-users.ts';
import { readPlace, writePlace } from '../../src/workbook/place.ts';
import { formula, sampleWorkbook } from './sample.ts';

function having(place: string, text: string): Workbook {
  const workbook = sampleWorkbook();
  const address = readAddress(place);
  if (!address) throw new Error(place);
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) =>
      sheet.id === 'wrap' ? withCell(sheet, address, formula(text)) : sheet,
    ),
  };
}

describe('the formulas that use a name', () => {
  test('are found in any case, once each', () => {
    const users = nameUsers(having('D2', 'SUM(Diameters)+MAX(diameters)'));
    expect(users.get('diameters')).toEqual([{ sheet: 'wrap', address: { row: 1, column: 3 } }]);
  });

  test('are not those that only write it in a text or as a part of a longer word', () => {
    expect(nameUsers(having('D2', '"diameters"&diameters_2')).get('diameters')).toEqual([]);
  });
});

describe('a place that is typed', () => {
  const workbook = sampleWorkbook();

  test.each([
    ['B2', 'Pieces!B2'],
    [' $b$2 ', 'Pieces!B2'],
    ['C9:B2', 'Pieces!B2:C9'],
    ["'Wrap round'!A1", "'Wrap round'!A1"],
    ['DIAMETERS', 'Pieces!B2:B3'],
  ])('%s is %s', (typed, written) => {
    const place = readPlace(workbook, 'pieces', typed);
    expect(place && writePlace(workbook, place)).toBe(written);
  });

  test.each(['', 'trunk', 'Attic!B2', 'B2+1', '12', 'B2:'])('%j is none', (typed) => {
    expect(readPlace(workbook, 'pieces', typed)).toBeNull();
  });
});
