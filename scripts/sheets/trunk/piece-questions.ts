import type { Cell } from '../../../src/workbook/document.ts';
import { count, feetAndInches, gauge, given } from '../cells.ts';

/** What is asked of a straight piece, whatever its shape. A line that may stay empty is `open`. */

export function howLong(open: { readonly mayBeBlank?: boolean }): Cell {
  return given(
    {
      asks: 'How long is the straight run, joint to joint?',
      least: 1,
      most: 1200,
      why: 'a run under 1 in or over 100 ft is most likely a slip of the unit',
      ...open,
    },
    feetAndInches,
  );
}

export const whichGauge: Cell = given(
  {
    asks: 'What gauge is it? Blank means the gauge of the job.',
    least: 14,
    most: 30,
    why: 'duct is made of 14 to 30 ga sheet',
    mayBeBlank: true,
  },
  gauge,
);

export const howManyCaps: Cell = given(
  {
    asks: 'How many of its ends are closed with a cap?',
    least: 0,
    most: 2,
    why: 'a piece has two ends',
    usual: 0,
    mayBeBlank: true,
  },
  count,
);
