import { leastTables } from '../../src/trade/gauge/least.ts';
import { stretchOutMethods } from '../../src/trade/wrap/stretch-out.ts';
import type { Cell } from '../../src/workbook/document.ts';
import { given, inchesOfWater, resistance } from './cells.ts';

/** What several templates ask in the same words. */

export const whichGaugeTable: Cell = given(
  {
    asks: 'Which table of least gauges is law here? Ask the local code.',
    choices: [...leastTables, 'not checked'],
    usual: 'dwelling code',
  },
  { content: 'dwelling code' },
);

export const whichPressure: Cell = given(
  {
    asks: 'Which static pressure is the duct made for?',
    least: 0.01,
    most: 10,
    why: 'duct is made for at most 10 in. w.g.',
    usual: 1,
  },
  { content: 1, ...inchesOfWater },
);

export const whichR: Cell = given(
  {
    asks: 'Which installed R does the local code or the customer ask for?',
    least: 0,
    most: 40,
    why: 'no code asks for more on a duct',
    usual: 8,
  },
  { content: 8, ...resistance },
);

export const whichMethod: Cell = given(
  {
    asks: 'By the published table, by geometry, or by this shop’s own figures?',
    choices: [...stretchOutMethods],
    usual: 'published',
  },
  { content: 'published' },
);
