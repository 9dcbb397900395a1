import { fill } from '../../src/templates/fill.ts';
import { instantiate } from '../../src/templates/instantiate.ts';
import type { Workbook, WorkedExample } from '../../src/workbook/document.ts';
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
  const job = instantiate(roundTrunk, { id: 'demo-larkspur-lane', title: 'Larkspur Lane, lot 7' });
  const filled = fill(job, {
    'Job!B2': 'Larkspur Lane, lot 7',
    'Job!B3': '7 Larkspur Lane',
    'Job!B4': 'Tinker’s Yard Duct Shop',
    'Job!B5': '12 May',
    'Job!B6': 'Wren',
    ...linesOf('Pieces', pieces),
    ...linesOf('Taps', taps),
  });
  if (!filled.ok) throw new Error(`The template has no given at ${filled.fault.place}.`);
  return filled.value;
}

/** The lines of a table that begins under its heading in row 1. */
function linesOf(sheet: string, lines: readonly WorkedExample['given'][]): WorkedExample['given'] {
  return Object.fromEntries(
    lines.flatMap((one, index) =>
      Object.entries(one).map(([column, value]) => [`${sheet}!${column}${index + 2}`, value]),
    ),
  );
}
