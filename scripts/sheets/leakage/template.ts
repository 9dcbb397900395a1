import type { Workbook } from '../../../src/workbook/document.ts';
import { lockedSheets } from '../locks.ts';
import { allowances } from './allowances.ts';
import { examples } from './examples.ts';
import { job } from './job.ts';
import { runs } from './runs.ts';

const forms = [job, runs, allowances];

export const leakage: Workbook = {
  id: 'leakage',
  title: 'Leakage and code check',
  kind: 'template',
  template: { name: 'Leakage and code check', revision: 2 },
  revisions: [{ revision: 2, says: 'Everything but the givens is locked in a job; Allowances stays open.' }],
  sheets: lockedSheets(forms),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
