import { fill } from '../../src/templates/fill.ts';
import { instantiate } from '../../src/templates/instantiate.ts';
import type { Workbook, WorkedExample } from '../../src/workbook/document.ts';
import { roundTrunk } from './round-trunk/template.ts';

/** An invented job in an invented shop: five round pieces, and a return whose wrap is worth a look. */
const pieces: readonly WorkedExample['given'][] = [
  { A: 'S1', B: 'round', C: 16, E: 174.5, G: 2, H: 6 },
  { A: 'S2', B: 'round', C: 14, E: 96, G: 2, H: 7 },
  { A: 'S3', B: 'round', C: 12, E: 118.25, G: 2, H: 6 },
  { A: 'S4', B: 'round', C: 10, E: 78.75, G: 1, H: 6 },
  { A: 'S5', B: 'round', C: 8, E: 64, G: 1, H: 5 },
  { A: 'R1', B: 'rectangular', C: 20, D: 8, E: 110.25, F: 24 },
];

export function demoJob(): Workbook {
  const job = instantiate(roundTrunk, { id: 'demo-larkspur-lane', title: 'Larkspur Lane, lot 7' });
  const filled = fill(job, {
    'Job!B2': 'Larkspur Lane, lot 7',
    'Job!B3': '7 Larkspur Lane',
    'Job!B4': 'Tinker’s Yard Duct Shop',
    'Job!B5': '12 May',
    'Job!B6': 'Wren',
    ...Object.fromEntries(
      pieces.flatMap((piece, index) =>
        Object.entries(piece).map(([column, value]) => [`Pieces!${column}${index + 2}`, value]),
      ),
    ),
  });
  if (!filled.ok) throw new Error(`The template has no given at ${filled.fault.place}.`);
  return filled.value;
}
