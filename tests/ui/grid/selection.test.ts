import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isInRange } from '../../../src/base/address.ts';
import { filledByKey, pulledTo } from '../../../src/ui/grid/fill-target.ts';
import { lineDeeds } from '../../../src/ui/grid/line-deeds.ts';
import { lastPlace, rangeOf, selectionWords, usedPart, wholeLines } from '../../../src/ui/grid/selection.ts';
import { sizeOf } from '../../../src/workbook/command/copy.ts';
import { sheetOf } from './cells.ts';

const addresses = fc.record({ row: fc.nat(30), column: fc.nat(30) });
const ranges = fc.tuple(addresses, addresses).map(([here, head]) => rangeOf({ here, head }));
const block = rangeOf({ here: { row: 1, column: 1 }, head: { row: 2, column: 3 } });

test('a selection is the block between the person and its far corner, whichever way it was drawn', () => {
  fc.assert(
    fc.property(addresses, addresses, (here, head) => {
      const range = rangeOf({ here, head });
      expect(isInRange(here, range) && isInRange(head, range)).toBe(true);
      expect(range).toEqual(rangeOf({ here: head, head: here }));
    }),
  );
});

test('a selection is called by its corners, whole rows and columns by their names', () => {
  const lines = (axis: 'row' | 'column') =>
    selectionWords(rangeOf(wholeLines({ here: { row: 4, column: 2 }, head: { row: 2, column: 4 } }, axis)));
  expect(selectionWords(block)).toBe('B2 to D3, 6 cells');
  expect(lines('row')).toBe('rows 3 to 5');
  expect(lines('column')).toBe('columns C to E');
  expect(selectionWords({ from: block.from, to: block.from })).toBe('');
  expect(selectionWords({ from: { row: 0, column: 0 }, to: lastPlace })).toBe('the whole sheet');
});

test('of whole rows and columns only the part counts that the sheet uses; a block is taken as it was drawn', () => {
  const sheet = sheetOf(['abc', 'abc']);
  const row = rangeOf(wholeLines({ here: { row: 1, column: 0 }, head: { row: 1, column: 0 } }, 'row'));
  expect(usedPart(sheet, row)).toEqual({ from: { row: 1, column: 0 }, to: { row: 1, column: 2 } });
  expect(usedPart(sheet, block)).toEqual(block);
  expect(usedPart(sheet, { from: { row: 0, column: 0 }, to: lastPlace }).to).toEqual({ row: 1, column: 2 });
});

test('a corner that is pulled fills in one way only, and nothing while it is inside', () => {
  fc.assert(
    fc.property(ranges, addresses, (range, pointer) => {
      const target = pulledTo(range, pointer);
      expect(target === null).toBe(isInRange(pointer, range));
      if (!target) return;
      expect(isInRange(range.from, target) && isInRange(range.to, target)).toBe(true);
      const [before, after] = [sizeOf(range), sizeOf(target)];
      expect([before.rows === after.rows, before.columns === after.columns].filter(Boolean)).toHaveLength(1);
    }),
  );
});

test('a key fills from the first line of a block, and a single line from its neighbour', () => {
  expect(filledByKey(block, 'down')).toEqual({ from: { ...block, to: { row: 1, column: 3 } }, to: block });
  const right = filledByKey({ from: { row: 1, column: 1 }, to: { row: 2, column: 1 } }, 'right');
  expect(right?.from).toEqual({ from: { row: 1, column: 0 }, to: { row: 2, column: 0 } });
  expect(right?.to).toEqual({ from: { row: 1, column: 0 }, to: { row: 2, column: 1 } });
  expect(filledByKey({ from: { row: 0, column: 0 }, to: { row: 0, column: 3 } }, 'down')).toBe(null);
});

test('what is put in before and after lines stands where it says', () => {
  expect(
    lineDeeds('one', block, 'row').map(({ says, command: { type, at, count } }) => [says, type, at, count]),
  ).toEqual([
    ['Put in 2 rows above', 'insert_lines', 1, 2],
    ['Put in 2 rows below', 'insert_lines', 3, 2],
    ['Take out rows 2 to 3', 'remove_lines', 1, 2],
  ]);
});
