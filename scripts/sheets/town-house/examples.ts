import type { WorkedExample } from '../../../src/workbook/document.ts';

/** Every result below was worked by hand from the figures that its source names, never copied from the program. */
export const examples: readonly WorkedExample[] = [
  {
    name: 'Two systems, each with its own rate, and a kitchen and a bedroom that share the air of their own system',
    source:
      'Worked by hand from the contractors association’s duct sizing example for the system below: 0.50 − 0.10 − 0.15 − 0.03 − 0.03 = 0.19, and 0.19 × 100 ÷ (65 + 190) = 0.0745. By plain arithmetic: above, 0.19 × 100 ÷ (45 + 145) = 0.10; the kitchen gets 600 × 3,000 ÷ 12,960 = 138.89 cfm, two branches of 69.44 each; the owner’s bedroom gets 500 × 3,200 ÷ 10,800 = 148.15 cfm; 12,960 ÷ (1.08 × 20) = 600 and 10,800 ÷ 21.6 = 500 cfm.',
    given: {
      'Air!B4': 600,
      'Air!C4': 500,
      'Air!B5': 20,
      'Air!C5': 20,
      'Air!B8': 0.5,
      'Air!C8': 0.5,
      'Air!B15': 65,
      'Air!B16': 190,
      'Air!C15': 45,
      'Air!C16': 145,
      'House!B10': 'no',
      'House!B15': 1,
    },
    gives: {
      'Air!B6': { value: 600, tolerance: 0.001 },
      'Air!C6': { value: 500, tolerance: 0.001 },
      'Air!B18': { value: 0.0745, tolerance: 0.00005 },
      'Air!C18': { value: 0.1, tolerance: 1e-9 },
      'Air!B20': { value: 12960 },
      'Air!C20': { value: 10800 },
      'Rooms!F6': { value: 138.89, tolerance: 0.005 },
      'Rooms!I6': { value: 69.44, tolerance: 0.005 },
      'Rooms!F9': { value: 148.15, tolerance: 0.005 },
      'Rooms!F18': { value: 1100, tolerance: 1e-6 },
    },
  },
  {
    name: 'A trunk of 500 cfm at 0.10 by a published size table, and half of the bedrooms’ air further on',
    source:
      'Worked by hand from a trade parts catalogue of 2017, residential sizing guide at 0.10: 500 cfm takes 11 in. By plain arithmetic: 0.19 × 100 ÷ 190 = 0.10; of the 10,800 Btu/h above, the rooms on U2 and U3 have 1,620 + 2,000 + 2,000 + 560 = 6,180, so 500 × 6,180 ÷ 10,800 = 286.11 cfm go on. By geometry: π ÷ 4 × 11² ÷ 144 = 0.65995 sq ft, 500 ÷ 0.65995 = 757.6 fpm; ⌈126 ÷ 46⌉ = 3 lengths of 42 in, cut 43 1/2 with the crimp; π × 11.0217 + 1 = 35.6257 across.',
    given: {
      'Air!C4': 500,
      'Air!C15': 45,
      'Air!C16': 145,
      'House!B10': 'no',
      'House!B13': 'round',
      'House!B15': 1,
      'House!B19': 26,
    },
    gives: {
      'Air!C18': { value: 0.1, tolerance: 1e-9 },
      'Trunk!D4': { value: 500, tolerance: 1e-6 },
      'Trunk!D5': { value: 286.11, tolerance: 0.005 },
      'Trunk!E4': { value: 11 },
      'Trunk!H4': { value: 757.6, tolerance: 0.05 },
      'Blanks!L4': { value: 3 },
      'Blanks!C4': { value: 43.5, tolerance: 1e-9 },
      'Blanks!B4': { value: 35.6257, tolerance: 0.0001 },
    },
  },
];
