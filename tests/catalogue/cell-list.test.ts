import { describe, expect, it } from 'vitest';
import type { CellFault } from '../../src/base/value.ts';
import type { RawArgument } from '../../src/catalogue/argument.ts';
import { findFunction } from '../../src/catalogue/list.ts';
import { wordFault } from '../../src/catalogue/wording.ts';
import { exampleWraps } from '../../src/catalogue/wraps.ts';
import { yesNo } from '../../src/catalogue/yes-no.ts';

function rolls(cuts: RawArgument, pieces: RawArgument, each: RawArgument = null): number | string {
  const outcome = findFunction('WRAP.ROLLS')?.call([cuts, pieces, 'R-8 wrap', exampleWraps, 0, each]);
  if (!outcome) return 'no function';
  return outcome.ok ? outcome.value.value : wordFault(outcome.fault);
}

describe('the rolls of a whole job', () => {
  it('are counted from two columns side by side, whatever is blank', () => {
    expect(rolls([[60], [null], ['']], [[10], [null], ['']])).toBe(1);
    expect(rolls([[60], [60]], [[10], [1]])).toBe(2);
    expect(rolls([[null]], [[null]])).toBe(0);
  });

  it('leave out the rows of another wrap, even when those have no cut yet', () => {
    const each = [['r-8 WRAP '], ['R-4 wrap']];
    expect(rolls([[60], [null]], [[10], [5]], each)).toBe(1);
  });

  it('are refused when the columns do not belong together', () => {
    expect(rolls([[60], [60]], [[1]])).toBe(
      'The block of pieces has 1 cell, but 2 belong together, one to each row. Point to the same rows in each column.',
    );
    expect(rolls([[60], [null]], [[1], [4]])).toBe(
      'Row 2 has pieces but nothing in the cuts. Fill that cell in, or make the pieces 0.',
    );
  });

  it('are refused where one cut is out of range, or has no value of its own', () => {
    expect(rolls([[60], [9000]], [[1], [1]])).toMatch(/cuts is 9000″.*1″ to 800″, because/);
    const fault: CellFault = { fault: 'circular', sentence: 'It goes round in a ring.' };
    expect(rolls([[fault]], [[1]])).toBe('The cuts has no value yet. It goes round in a ring.');
  });

  it('never join a piece from two ends: a piece longer than a roll is refused', () => {
    expect(rolls(700, 1)).toMatch(/longer than a whole roll of 600″.*two shorter cuts/);
  });
});

it('a yes or no is taken as it is typed and as a cell has it', () => {
  const { read } = yesNo({ says: 'whether feet are split off' });
  expect([true, false, 'YES', 'no'].map((raw) => read(raw, 'feet'))).toEqual(
    ['yes', 'no', 'yes', 'no'].map((value) => ({ ok: true, value })),
  );
  expect(read('maybe', 'feet')).toMatchObject({ ok: false, fault: { code: 'not_a_choice' } });
});
