import type { Workbook } from '../../../src/workbook/document.ts';
import { allowances } from './allowances.ts';
import { examples } from './examples.ts';
import { job } from './job.ts';
import { pieces } from './pieces.ts';
import { sealAndFasten } from './seal-and-fasten.ts';
import { wrap } from './wrap.ts';

const forms = [job, pieces, wrap, sealAndFasten, allowances];

export const roundTrunk: Workbook = {
  id: 'round-trunk',
  title: 'Round trunk',
  kind: 'template',
  template: { name: 'Round trunk', revision: 1 },
  sheets: forms.map((one) => one.sheet),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
