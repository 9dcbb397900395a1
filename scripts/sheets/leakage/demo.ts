import type { Workbook } from '../../../src/workbook/document.ts';
import { demoHead, demoOf, linesOf } from '../demo-job.ts';
import { leakage } from './template.ts';

/** The ducts of an invented house, sealed and tested. */
export function leakageDemo(): Workbook {
  const title = 'Larkspur Lane, check of lot 12';
  return demoOf(leakage, {
    id: 'demo-leakage',
    title,
    answers: {
      ...demoHead(title, '12 Larkspur Lane'),
      'Job!B16': 1150,
      'Job!B18': 'B',
      'Job!B27': 18,
      'Job!B28': 1850,
      ...linesOf('Runs', [
        { A: 'T1', B: 'rectangular', C: 20, D: 10, E: 142.5, F: 'attic', G: 'supply', H: 8.3, I: 24 },
        { A: 'T2', B: 'rectangular', C: 16, D: 10, E: 118, F: 'attic', G: 'supply', H: 8.3, I: 26 },
        { A: 'S1', B: 'round', C: 8, E: 164, F: 'attic', G: 'supply', H: 8.3, I: 28 },
        { A: 'S2', B: 'round', C: 6, E: 210.5, F: 'inside', G: 'supply', I: 30 },
        { A: 'R1', B: 'rectangular', C: 20, D: 14, E: 88, F: 'garage', G: 'return', H: 6, I: 24 },
      ]),
    },
  });
}
