import { expect, test } from 'vitest';
import { runCommand } from '../../src/workbook/commands.ts';
import { applyDifference, type Difference, invertDifference } from '../../src/workbook/difference.ts';
import { emptyWorkbook } from '../../src/workbook/empty.ts';
import {
  afterDoing,
  afterMark,
  type DeedMark,
  emptyHistory,
  keptPart,
  takeBack,
} from '../../src/workbook/history.ts';
import { fitsAfter, readHistory, readMark } from '../../src/workbook/recalled.ts';

const workbook = emptyWorkbook('own', 'Own');

function entering(typed: string, row = 0): Difference {
  const outcome = runCommand(workbook, {
    type: 'enter',
    sheet: 'sheet-1',
    address: { row, column: 0 },
    typed,
  });
  if (!outcome.ok) throw new Error('This can be entered.');
  return outcome.value;
}

test('a history written down deed by deed is the one that was there', () => {
  const [one, other] = [entering('1'), entering('2', 1)];
  const first = afterDoing(emptyHistory, { says: 'one', difference: one });
  const second = afterDoing(first, { says: 'other', difference: other });
  const lines: readonly (readonly [DeedMark, Difference])[] = [
    [{ type: 'did', says: 'one' }, one],
    [{ type: 'did', says: 'other' }, other],
    [{ type: 'took_back' }, invertDifference(other)],
    [{ type: 'did_again' }, other],
    [{ type: 'took_back' }, invertDifference(other)],
  ];
  const read = lines.reduce((sofar, [mark, difference]) => afterMark(sofar, mark, difference), emptyHistory);
  expect(read).toEqual(takeBack(second)?.history);
});

test('the newest hundred deeds are kept, and fewer where they are large', () => {
  const deeds = Array.from({ length: 150 }, (_, at) => ({ says: String(at), difference: entering('1') }));
  const kept = keptPart({ done: deeds, undone: [] });
  expect(kept.done).toHaveLength(100);
  expect(kept.done.at(-1)?.says).toBe('149');
  const large = deeds.map((deed) => ({
    ...deed,
    difference: Array.from({ length: 18 }, () => entering('x'.repeat(500))).flat(),
  }));
  const few = keptPart({ done: large, undone: [] });
  expect(few.done.length).toBeGreaterThan(50);
  expect(JSON.stringify(few.done.map(({ difference }) => difference)).length).toBeLessThan(1_000_500);
});

test('what cannot be read leaves no history, and a deed that comes to no workbook does not fit', () => {
  expect(readHistory(undefined)).toEqual(emptyHistory);
  expect(readHistory({ done: [{ says: 1, difference: [] }], undone: [] })).toEqual(emptyHistory);
  expect(readHistory({ done: [{ says: 'one', difference: ['x'] }], undone: [] })).toEqual(emptyHistory);
  expect(readMark({ type: 'elsewise' })).toBe(null);
  const good = entering('12');
  expect(fitsAfter(workbook, good)).toBe(true);
  expect(fitsAfter(applyDifference(workbook, good), invertDifference(good))).toBe(true);
  const bad = good.map((change) => ({ ...change, after: { content: { evil: 1 }, role: 'boss' } }));
  expect(fitsAfter(workbook, bad as unknown as Difference)).toBe(false);
  expect(fitsAfter(workbook, [{ type: 'elsewise' }] as unknown as Difference)).toBe(false);
});
