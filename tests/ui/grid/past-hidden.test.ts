import { expect, test } from 'vitest';
import { readAddress, writeAddress } from '../../../src/base/address.ts';
import { pastHidden } from '../../../src/ui/grid/past-hidden.ts';
import { sheetOf } from './cells.ts';

const sheet = {
  ...sheetOf(['ab.c', 'a..c', 'a..c', '...c']),
  hiddenRows: [0, 2],
  columns: [{ width: 9 }, { width: 9, hidden: true as const }, { width: 9, hidden: true as const }],
};

function at(place: string) {
  const address = readAddress(place);
  if (!address) throw new Error(place);
  return address;
}

test.each([
  ['A2', 'A3', 'A4'],
  ['A4', 'A3', 'A2'],
  ['A2', 'B2', 'D2'],
  ['D2', 'C2', 'A2'],
  ['A2', 'A1', 'A2'],
  ['A2', 'A4', 'A4'],
])('from %s to %s leads to %s', (from, to, there) => {
  expect(writeAddress(pastHidden(sheet, at(from), at(to)))).toBe(there);
});
