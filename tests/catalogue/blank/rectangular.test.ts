import { describe, expect, it } from 'vitest';
import type { RawArgument } from '../../../src/catalogue/argument.ts';
import { blankRectangular } from '../../../src/catalogue/blank/rectangular.ts';

function worked(...raw: readonly RawArgument[]) {
  const outcome = blankRectangular.call(raw);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

describe('the working of a rectangular blank', () => {
  it('lists every part with its count, lines and width, and ends in the one asked for', () => {
    const steps = worked(20, 8, 'U and flat', 1).steps();
    expect(steps.map((step) => [step.label, step.value])).toEqual([
      ['Part 2, flat: how many', 1],
      ['Part 2, flat: lines from the left edge', '1″, 21″'],
      ['Part 2, flat: blank width', 22],
      ['Part 1, U: how many', 1],
      ['Part 1, U: lines from the left edge', '¼″, 8 ¼″, 28 ¼″, 36 ¼″'],
      ['Part 1, U: blank width', 36.5],
    ]);
  });

  it('takes the number of pieces for the make', () => {
    expect([1, 2, 4].map((pieces) => worked(20, 8, pieces).value)).toEqual(
      ['one piece', 'two L halves', 'four pieces'].map((made) => worked(20, 8, made).value),
    );
  });

  it('warns when a blank is wider than a sheet is long', () => {
    const warns = (width: number) =>
      worked(width, 20, 'one piece')
        .cautions()
        .some((caution) => caution.sentence.includes('10 ft sheet'));
    expect([warns(39), warns(40)]).toEqual([false, true]);
  });
});

it('a second kind of blank is refused where all blanks are alike', () => {
  expect(blankRectangular.call([20, 8, 'one piece', 2])).toMatchObject({
    ok: false,
    fault: { code: 'trade', fault: { code: 'no_such_part', part: 2 } },
  });
});
