import type { Workbook } from '../../../src/workbook/document.ts';
import { count, figured, given, words } from '../cells.ts';
import { line, namedLine } from '../form.ts';
import { lockedSheets } from '../locks.ts';
import { jobSheet } from '../trunk/job.ts';
import { besidePieces, rectangular, type ShapeOf } from '../trunk/piece-rows.ts';
import { sealSheet } from '../trunk/seal-and-fasten.ts';
import { wrapSheet } from '../trunk/wrap.ts';
import { allowances } from './allowances.ts';
import { blankColumns, blanks } from './blanks.ts';
import { examples } from './examples.ts';
import { pieces } from './pieces.ts';
import { taps } from './taps.ts';
import { fewest, ways } from './ways.ts';

const shapeOf: ShapeOf = () => rectangular;

const made = namedLine(
  'job_made',
  words('Made from'),
  given(
    {
      asks: 'From how many blanks is each section made? A piece may have its own.',
      choices: [fewest, ...ways],
      usual: fewest,
    },
    { content: fewest },
  ),
  words('by girth and stock sheet; a piece may have its own', { style: { wraps: true } }),
);

const collars = line(
  words('Tap collars'),
  figured(`SUMIF(Taps!${besidePieces('N')},">0",Taps!${besidePieces('E')})`, count),
  words('collars, of the sizes on Taps'),
);

const forms = [
  jobSheet({ blanks: blankColumns, tapsNotCounted: 'P', made: [made], orders: [collars] }),
  pieces,
  taps,
  blanks,
  wrapSheet(shapeOf),
  sealSheet({ shapeOf, blanks: blankColumns }),
  allowances,
];

export const rectTrunk: Workbook = {
  id: 'rect-trunk',
  title: 'Rectangular trunk with taps',
  kind: 'template',
  template: { name: 'Rectangular trunk with taps', revision: 2 },
  revisions: [
    {
      revision: 2,
      says: 'Whole boxes, sheets and sections are counted without the noise of long decimals. Everything but the givens is locked in a job; Allowances stays open.',
    },
  ],
  sheets: lockedSheets(forms),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
