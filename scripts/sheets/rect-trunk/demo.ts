import type { Workbook } from '../../../src/workbook/document.ts';
import { demoHead, demoOf, linesOf } from '../demo-job.ts';
import { demoPrices } from '../demo-prices.ts';
import { rectTrunk } from './template.ts';

/** An invented trunk in three sizes, with a return that is made its own way. */
export function rectTrunkDemo(): Workbook {
  const title = 'Larkspur Lane, lot 12';
  return demoOf(rectTrunk, {
    id: 'demo-rect-trunk',
    title,
    answers: {
      ...demoHead(title, '12 Larkspur Lane'),
      'Job!B9': 24,
      'Job!B12': 'geometry',
      ...linesOf('Pieces', [
        { A: 'T1', C: 20, D: 10, E: 142.5 },
        { A: 'T2', C: 16, D: 10, E: 118, F: 26 },
        { A: 'T3', C: 12, D: 8, E: 96.25, F: 26, G: 1 },
        { A: 'R1', B: 'four pieces', C: 20, D: 14, E: 88 },
      ]),
      ...linesOf('Taps', [
        { A: 'T1', B: 'round', C: 7, E: 2, F: 'narrow side' },
        { A: 'T1', B: 'rectangular', C: 10, D: 8, E: 1 },
        { A: 'T2', B: 'round', C: 6, E: 3, F: 'narrow side' },
        { A: 'T3', B: 'round', C: 6, E: 2 },
      ]),
      ...demoPrices(rectTrunk),
    },
  });
}
