import type { Workbook, WorkedExample } from '../../src/workbook/document.ts';
import { demoHead, demoOf, linesOf } from './demo-job.ts';
import { demoPrices } from './demo-prices.ts';
import { roundTrunk } from './round-trunk/template.ts';

/** An invented job in an invented shop: five round pieces, and a return whose wrap is worth a look. */
const pieces: readonly WorkedExample['given'][] = [
  { A: 'S1', B: 'round', C: 16, E: 174.5 },
  { A: 'S2', B: 'round', C: 14, E: 96 },
  { A: 'S3', B: 'round', C: 12, E: 118.25 },
  { A: 'S4', B: 'round', C: 10, E: 78.75 },
  { A: 'S5', B: 'round', C: 8, E: 64, G: 1 },
  { A: 'R1', B: 'rectangular', C: 20, D: 8, E: 110.25, F: 24 },
];

/** A trunk with two sizes of branch has two lines. */
const taps: readonly WorkedExample['given'][] = [
  { A: 'S1', B: 6, C: 1 },
  { A: 'S1', B: 8, C: 1 },
  { A: 'S2', B: 7, C: 2 },
  { A: 'S3', B: 6, C: 2 },
  { A: 'S4', B: 6, C: 1 },
  { A: 'S5', B: 5, C: 1 },
];

export function demoJob(): Workbook {
  return demoOf(roundTrunk, {
    id: 'demo-larkspur-lane',
    title: 'Larkspur Lane, lot 7',
    answers: {
      ...demoHead('Larkspur Lane, lot 7', '7 Larkspur Lane'),
      ...linesOf('Pieces', pieces),
      ...linesOf('Taps', taps),
      ...demoPrices(roundTrunk),
    },
  });
}
