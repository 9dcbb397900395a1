import { expect, test } from 'vitest';
import type { Sheet, Workbook } from '../../src/workbook/document.ts';
import { sheetReaders } from '../../src/workbook/sheet-readers.ts';

function sheet(id: string, name: string, ...formulas: readonly string[]): Sheet {
  return {
    id,
    name,
    says: '',
    columns: [],
    rows: formulas.map((formula) => [{ content: { formula }, role: 'figured' }]),
  };
}

test('the cells that read a sheet are counted: by its name in any case, by a quoted one, by a name that lies on it', () => {
  const workbook: Workbook = {
    id: 'own',
    title: 'Own',
    kind: 'job',
    sheets: [
      sheet('one', "Wren's trunk", '1', 'A1*2'),
      sheet('two', 'Wrap', "'wren''s trunk'!A1+1", 'SUM(girths)', 'LEN("Wren\'s trunk")', 'A1'),
    ],
    names: { Girths: { sheet: 'one', range: { from: { row: 0, column: 0 }, to: { row: 1, column: 0 } } } },
    examples: [],
  };
  expect(sheetReaders(workbook, 'one')).toBe(2);
  expect(sheetReaders(workbook, 'two')).toBe(0);
});
