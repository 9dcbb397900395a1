import type { Workbook } from '../../../src/workbook/document.ts';
import { lockedSheets } from '../locks.ts';
import { allowances } from './allowances.ts';
import { compare } from './compare.ts';
import { examples } from './examples.ts';
import { job } from './job.ts';

const forms = [job, compare, allowances];

export const insulation: Workbook = {
  id: 'insulation',
  title: 'Insulation comparison',
  kind: 'template',
  template: { name: 'Insulation comparison', revision: 2 },
  revisions: [
    {
      revision: 2,
      says: 'Whole boxes are counted without the noise of long decimals. Everything but the givens is locked in a job; Allowances stays open.',
    },
  ],
  sheets: lockedSheets(forms),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
