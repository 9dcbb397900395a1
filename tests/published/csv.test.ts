import { expect, it } from 'vitest';
import { readCsv } from './csv.ts';

it('cells are found by their heading, in quotes or not', () => {
  expect(readCsv('id,says,unit\r\nA,"a ""lap"", 2 in",in\n\nB,,\n')).toEqual([
    { id: 'A', says: 'a "lap", 2 in', unit: 'in' },
    { id: 'B', says: '', unit: '' },
  ]);
});

it('the last line needs no end', () => {
  expect(readCsv('id,unit\nA,in')).toEqual([{ id: 'A', unit: 'in' }]);
});
