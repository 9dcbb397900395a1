import type { Workbook } from '../../../src/workbook/document.ts';
import { lockedSheets } from '../locks.ts';
import { air } from './air.ts';
import { allowances } from './allowances.ts';
import { examples } from './examples.ts';
import { job } from './job.ts';
import { plenum } from './plenum.ts';
import { returns } from './returns.ts';
import { sealSheet } from './seal.ts';

const forms = [job, air, plenum, returns, sealSheet, allowances];

export const returnPlenum: Workbook = {
  id: 'return-plenum',
  title: 'Return and filter plenum',
  kind: 'template',
  template: { name: 'Return and filter plenum', revision: 2 },
  revisions: [
    {
      revision: 2,
      says: 'Whole boxes, bags, sheets and sections are counted without the noise of long decimals. Everything but the givens is locked in a job; Allowances stays open.',
    },
  ],
  sheets: lockedSheets(forms),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
