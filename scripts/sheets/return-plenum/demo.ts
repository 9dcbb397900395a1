import type { Workbook } from '../../../src/workbook/document.ts';
import { demoHead, demoOf, linesOf } from '../demo-job.ts';
import { returnPlenum } from './template.ts';

/** An invented return: two grilles by flex and a drop to the unit. */
export function returnPlenumDemo(): Workbook {
  const title = 'Larkspur Lane, return of lot 12';
  return demoOf(returnPlenum, {
    id: 'demo-return-plenum',
    title,
    answers: {
      ...demoHead(title, '12 Larkspur Lane'),
      'Air!B2': 1150,
      'Air!B5': 20,
      'Air!B6': 30,
      'Air!B8': 0.08,
      'Air!B13': 20,
      'Air!B14': 14,
      'Air!B15': 54,
      'Plenum!B2': 20,
      'Plenum!B3': 20,
      'Plenum!B4': 30,
      'Plenum!B6': 24,
      ...linesOf('Returns', [
        { A: 'R1', B: 550, C: 20, D: 14, E: 14, F: 126, G: 'right' },
        { A: 'R2', B: 350, C: 14, D: 14, E: 10, F: 174.5, G: 'left' },
        { A: 'R3', B: 250, C: 14, D: 10, E: 9, F: 88, G: 'left' },
      ]),
    },
  });
}
