import type { Workbook } from '../../../src/workbook/document.ts';
import { allowances } from './allowances.ts';
import { blanks } from './blanks.ts';
import { examples } from './examples.ts';
import { job } from './job.ts';
import { pieces } from './pieces.ts';
import { sealAndFasten } from './seal-and-fasten.ts';
import { taps } from './taps.ts';
import { wrap } from './wrap.ts';

const forms = [job, pieces, taps, blanks, wrap, sealAndFasten, allowances];

export const roundTrunk: Workbook = {
  id: 'round-trunk',
  title: 'Round trunk',
  kind: 'template',
  template: { name: 'Round trunk', revision: 2 },
  sheets: forms.map((one) => one.sheet),
  names: Object.assign({}, ...forms.map((one) => one.names)),
  examples,
};
