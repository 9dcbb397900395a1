import type { Workbook } from '../../../src/workbook/document.ts';
import { lockedSheets } from '../locks.ts';
import { allowances } from './allowances.ts';
import { cutList } from './cut-list.ts';
import { examples } from './examples.ts';
import { job } from './job.ts';
import { kinds } from './kinds.ts';
import { kindSheet } from './sheet.ts';

const forms = [job, ...kinds.map(kindSheet), cutList, allowances];

export const fittings: Workbook = {
  id: 'fittings',
  title: 'Fittings',
  kind: 'template',
  template: { name: 'Fittings', revision: 2 },
  revisions: [
    {
      revision: 2,
      says: 'Whole sheets are counted without the noise of long decimals. Everything but the givens is locked in a job; Allowances stays open.',
    },
  ],
  sheets: lockedSheets(forms),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
