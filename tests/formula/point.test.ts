import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseFormula } from '../../src/formula/parse.ts';
import { canPointAt, heldNext } from '../../src/formula/point.ts';

/** A text with `|` where the caret stands. */
function caretIn(written: string): readonly [string, number] {
  return [written.replace('|', ''), written.indexOf('|')];
}

describe('a cell can be put in', () => {
  test.each(['|', 'B2+|', 'SUM(|', 'SUM(|)', 'IF(A1>|,2,3)', 'A1*|', 'A1 & |', 'B2:|', 'MAX(1,|'])(
    '%s',
    (written) => {
      expect(canPointAt(...caretIn(written))).toBe(true);
    },
  );
});

describe('no cell can be put in', () => {
  test.each(['B2|', '12|', 'SUM|', '"a, |"', "'Main |", 'A1+|B2', 'SUM(A1)|', '|B2', '5%|'])(
    '%s',
    (written) => {
      expect(canPointAt(...caretIn(written))).toBe(false);
    },
  );
});

test.each([
  ['B2|', '$B$2'],
  ['$B$2|', 'B$2'],
  ['B$|2', '$B2'],
  ['$B2|', 'B2'],
  ['1+|B2:C9*2', '$B$2:$C$9'],
  ["'Main trunk'!B2|", "'Main trunk'!$B$2"],
])('the reference at the caret of %s is held as %s', (written, held) => {
  const replacement = heldNext(...caretIn(written));
  expect(replacement?.insert).toBe(held);
});

test('a name or a number is not held', () => {
  expect(heldNext('lap', 3)).toBeNull();
  expect(heldNext('12+3', 1)).toBeNull();
});

test('wherever a cell can be put in, the text is a formula afterwards if it was one with a number there', () => {
  const piece = fc.constantFrom(
    'A1',
    '+',
    '*',
    '(',
    ')',
    ',',
    'SUM(',
    '12',
    '"x"',
    ' ',
    '-',
    '>',
    '%',
    'lap',
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 8 }), fc.array(piece, { maxLength: 4 }), (before, after) => {
      const [start, end] = [before.join(''), after.join('')];
      fc.pre(canPointAt(start + end, start.length));
      const isFormula = (put: string) => parseFormula(start + put + end).ok;
      expect(isFormula('B2')).toBe(isFormula('7'));
    }),
  );
});
