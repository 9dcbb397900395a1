import type { Workbook } from '../../../src/workbook/document.ts';
import { demoHead, demoOf } from '../demo-job.ts';
import { insulation } from './template.ts';

/** The wraps of the invented shop on a trunk in an attic. */
export function insulationDemo(): Workbook {
  const title = 'Larkspur Lane, wrap of lot 12';
  return demoOf(insulation, {
    id: 'demo-insulation',
    title,
    answers: {
      ...demoHead(title, '12 Larkspur Lane'),
      'Job!B10': 14,
      'Job!B12': 412.5,
      'Job!B20': 95,
      'Job!B21': 0.7,
      'Job!B22': 55,
    },
  });
}
