import type { Workbook } from '../../../src/workbook/document.ts';
import { demoHead, demoOf, linesOf } from '../demo-job.ts';
import { fittings } from './template.ts';

/** The fittings of an invented house. */
export function fittingsDemo(): Workbook {
  const title = 'Larkspur Lane, fittings of lot 12';
  return demoOf(fittings, {
    id: 'demo-fittings',
    title,
    answers: {
      ...demoHead(title, '12 Larkspur Lane'),
      ...linesOf('Gored elbows', [
        { A: 'E1', B: 14, F: 1 },
        { A: 'E2', B: 8, C: 45, D: 3, E: 10, F: 2 },
      ]),
      ...linesOf('Reducers', [
        { A: 'R1', B: 'on center', C: 14, D: 12, E: 10 },
        { A: 'R2', B: 'off center', C: 12, D: 8, E: 12 },
      ]),
      ...linesOf('Elbows', [{ A: 'L1', B: 20, C: 10 }]),
      ...linesOf('Transitions', [
        { A: 'T1', B: 20, C: 10, D: 16, E: 10, F: 18, G: 'flush left', H: 'flush bottom' },
      ]),
      ...linesOf('Square to round', [{ A: 'Q1', B: 16, C: 10, D: 12, E: 14 }]),
      ...linesOf('Offsets', [{ A: 'O1', B: 16, C: 10, D: 6, E: 24 }]),
      ...linesOf('Taps', [
        { A: 'P1', B: 7, C: 14, F: 3 },
        { A: 'P2', B: 6, D: 45, F: 4 },
      ]),
      ...linesOf('Boots', [{ A: 'B1', B: 10, C: 4, D: 6, E: 5, F: 90, G: 8, H: 6 }]),
      ...linesOf('End caps', [
        { A: 'C1', B: 'rectangular', C: 16, D: 10 },
        { A: 'C2', B: 'round', C: 8 },
      ]),
    },
  });
}
