import { expect, test } from 'vitest';
import { runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../src/workbook/difference.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { sampleWorkbook } from './sample.ts';

test('cells of several sheets are typed anew as one deed, and come back as one', () => {
  const before = sampleWorkbook();
  const outcome = runCommand(before, {
    type: 'retype',
    entries: [
      { sheet: 'pieces', address: { row: 1, column: 1 }, typed: '18"' },
      { sheet: 'wrap', address: { row: 1, column: 1 }, typed: '=PI()*Pieces!B3' },
    ],
  });
  if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
  const after = applyDifference(before, outcome.value);
  expect(after.sheets[0]?.rows[1]?.[1]?.content).toBe(18);
  expect(after.sheets[1]?.rows[1]?.[1]?.content).toEqual({ formula: 'PI()*Pieces!B3' });
  expect(applyDifference(after, invertDifference(outcome.value))).toEqual(before);
});

test('nothing is written where one entry is refused, and every refusal is told with its sheet', () => {
  const outcome = runCommand(sampleWorkbook(), {
    type: 'retype',
    entries: [
      { sheet: 'pieces', address: { row: 0, column: 0 }, typed: 'Part' },
      { sheet: 'pieces', address: { row: 1, column: 1 }, typed: '70' },
      { sheet: 'pieces', address: { row: 1, column: 2 }, typed: 'felt' },
      { sheet: 'wrap', address: { row: 1, column: 1 }, typed: '3' },
    ],
  });
  if (outcome.ok) throw new Error('taken');
  const told = wordCommandFault(outcome.fault);
  expect(told).toMatch(
    /^Nothing was written\.\nPieces!B2: .*\nPieces!C2: .*\nWrap round!B2: This cell is figured/s,
  );
});
