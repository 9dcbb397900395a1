import type { Workbook } from '../../../src/workbook/document.ts';
import { jobSheet } from '../trunk/job.ts';
import type { ShapeOf } from '../trunk/piece-rows.ts';
import { sealSheet } from '../trunk/seal-and-fasten.ts';
import { wrapSheet } from '../trunk/wrap.ts';
import { allowances } from './allowances.ts';
import { blankColumns, blanks } from './blanks.ts';
import { examples } from './examples.ts';
import { pieces } from './pieces.ts';
import { taps } from './taps.ts';

const shapeOf: ShapeOf = (row) => `Pieces!B${row}`;

const forms = [
  jobSheet({ blanks: blankColumns, tapsNotCounted: 'I' }),
  pieces,
  taps,
  blanks,
  wrapSheet(shapeOf),
  sealSheet({ shapeOf, blanks: blankColumns }),
  allowances,
];

export const roundTrunk: Workbook = {
  id: 'round-trunk',
  title: 'Round trunk',
  kind: 'template',
  template: { name: 'Round trunk', revision: 5 },
  revisions: [
    {
      revision: 3,
      says: 'A cut that squeezes the wrap past half of its thickness stops in a sentence of its own.',
    },
    { revision: 4, says: 'What the order costs, by the prices on Allowances.' },
    {
      revision: 5,
      says: 'Whole boxes, sheets and sections are counted without the noise of long decimals.',
    },
  ],
  sheets: forms.map((one) => one.sheet),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
