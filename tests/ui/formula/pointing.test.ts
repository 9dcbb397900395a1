import { describe, expect, test } from 'vitest';
import { createPointing } from '../../../src/ui/formula/pointing.ts';

const pieces = { id: 'p', name: 'Pieces' };
const trunk = { id: 't', name: 'Main trunk' };

function writing(text: string, caret = text.length) {
  const field = { text, caret };
  const pointing = createPointing(
    {
      read: () => ({ ...field }),
      replace: ({ from, to, insert }) => {
        field.text = field.text.slice(0, from) + insert + field.text.slice(to);
        field.caret = from + insert.length;
      },
    },
    { sheet: pieces, address: { row: 1, column: 1 } },
    { row: 99, column: 25 },
  );
  return { field, pointing };
}

describe('while a formula is written', () => {
  test('a cell that is picked anew takes the place of the one before', () => {
    const { field, pointing } = writing('2*');
    pointing.pointTo(pieces, { row: 0, column: 0 }, { row: 0, column: 0 });
    pointing.pointTo(trunk, { row: 2, column: 1 }, { row: 0, column: 0 });
    expect(field.text).toBe("2*'Main trunk'!A1:B3");
  });

  test('what was typed by hand is left alone', () => {
    const { field, pointing } = writing('2*B7');
    expect(pointing.canPoint()).toBe(false);
    expect(pointing.step(1, 0, false)).toBe(false);
    expect(field.text).toBe('2*B7');
  });

  test('walking begins at the formula’s own cell, ends at the edge of the sheet, and reaches with Shift', () => {
    const { field, pointing } = writing('SUM()', 4);
    pointing.step(0, -1, false);
    expect(field.text).toBe('SUM(A2)');
    pointing.step(0, -1, false);
    expect(field.text).toBe('SUM(A2)');
    pointing.step(2, 0, true);
    pointing.step(0, 1, true);
    expect(field.text).toBe('SUM(A2:B4)');
    pointing.step(1, 0, false);
    expect(field.text).toBe('SUM(A3)');
  });

  test('after another letter is typed the picked cell is no longer picked', () => {
    const { field, pointing } = writing('');
    pointing.step(0, 1, false);
    field.text += '+';
    field.caret += 1;
    pointing.step(0, 1, false);
    expect(field.text).toBe('C2+C2');
  });
});
