import type { WorkedExample } from '../../../src/workbook/document.ts';

const piece = {
  'Pieces!A2': 'S1',
  'Pieces!B2': 'round',
  'Pieces!C2': 16,
  'Pieces!E2': 174.5,
  'Job!B9': 26,
  'Job!B10': 'R-8 wrap',
  'Job!B11': 8,
} as const;

/** Every result below was worked by hand from the figures that its source names, never copied from the program. */
export const examples: readonly WorkedExample[] = [
  {
    name: 'A 16 in round piece, 14 ft 6 1/2 in long, in 3 in wrap by the published table',
    source:
      'Worked by hand from the published stretch-out table (round, 3 in: perimeter + 17 in, 2 in lap included), the data sheet of 0.75 lb/cu ft wrap (R 10 at 3 in, 8.3 at 2 1/4 in), 26 ga galvanized of 0.0217 in, and geometry: π × 16 + 17 = 67.2655; (67 5/16 − 50.2655 − 2) ÷ 2π = 2.3948; 10 × (2.3948 ÷ 3)^0.6477 = 8.642.',
    given: { ...piece, 'Job!B12': 'published' },
    gives: {
      'Wrap!C2': { value: 67.2655, tolerance: 0.0001 },
      'Wrap!D2': { value: 67.3125 },
      'Wrap!E2': { value: 4 },
      'Wrap!H2': { value: 2.3948, tolerance: 0.0001 },
      'Wrap!G2': { value: 8.642, tolerance: 0.001 },
      'Wrap!F2': { value: 'holds' },
      'Wrap!B27': { value: 1 },
      'Blanks!B2': { value: 51.3337, tolerance: 0.0001 },
      'Blanks!C2': { value: 4 },
      'Blanks!E2': { value: 45.125, tolerance: 0.0001 },
      'Seal and fasten!D2': { value: 201.0619, tolerance: 0.0001 },
      'Seal and fasten!G2': { value: 432.1106, tolerance: 0.001 },
      'Seal and fasten!H2': { value: 20 },
      'Seal and fasten!I2': { value: 30 },
    },
  },
  {
    name: 'The same piece by geometry at the installed thickness',
    source:
      'Worked by hand from geometry: π × (16 + 2 × 2 1/4) + 2 = 66.4026; up to the next sixteenth 66 7/16; (66.4375 − 50.2655 − 2) ÷ 2π = 2.2556, a little over the rated 2 1/4 in; 10 × (2.2556 ÷ 3)^0.6477 = 8.313.',
    given: { ...piece, 'Job!B12': 'geometry' },
    gives: {
      'Wrap!C2': { value: 66.4026, tolerance: 0.0001 },
      'Wrap!D2': { value: 66.4375 },
      'Wrap!H2': { value: 2.2556, tolerance: 0.0001 },
      'Wrap!G2': { value: 8.313, tolerance: 0.001 },
      'Wrap!F2': { value: 'holds' },
    },
  },
];
