import type { Workbook } from '../../../src/workbook/document.ts';
import { allowances } from './allowances.ts';
import { examples } from './examples.ts';
import { job } from './job.ts';
import { runs } from './runs.ts';

const forms = [job, runs, allowances];

export const leakage: Workbook = {
  id: 'leakage',
  title: 'Leakage and code check',
  kind: 'template',
  template: { name: 'Leakage and code check', revision: 1 },
  sheets: forms.map((one) => one.sheet),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
