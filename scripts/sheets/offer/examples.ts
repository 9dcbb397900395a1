import type { WorkedExample } from '../../../src/workbook/document.ts';

/** Every result below was worked by hand from the figures that its source names, never copied from the program. */
export const examples: readonly WorkedExample[] = [
  {
    name: 'A cost of $80,000 with a margin of 20 %, and what the same number as a markup would ask for',
    source:
      'Worked by hand from an accounting firm’s article on markup and margin (January 2026): a cost of 80,000 is sold for 100,000 at a margin of 20 % and for 96,000 at a markup of 20 %; the margin is a markup of 20 ÷ 80 = 25 %. The second choice by plain arithmetic: 40,000 ÷ 0.8 = 50,000, which is 50,000 less.',
    given: {
      'Things!A2': 'Whole job',
      'Things!B2': 1,
      'Things!A3': 'Smaller job',
      'Things!C3': 1,
      'Things!F3': 40000,
      'Things!F2': 80000,
      'Allowances!B7': 0.2,
      'Allowances!B6': 0,
      'Allowances!B9': 0,
    },
    gives: {
      'Price!B6': { value: 80000 },
      'Price!B9': { value: 100000 },
      'Price!B8': { value: 20000 },
      'Price!B11': { value: 100000 },
      'Price!B12': { value: 0.25 },
      'Price!B13': { value: 96000 },
      'Price!C11': { value: 50000 },
      'Price!D11': { value: -50000 },
    },
  },
  {
    name: 'Material with waste and tax, 23.5 hours, overhead and a margin of 10 %',
    source:
      'Worked by hand from plain arithmetic: 1,200 × 1.12 = 1,344 of material; 23.5 h × 30 × 1.5 = 1,057.50 of labor; tax on buying 1,344 × 0.07 = 94.08; direct cost 1,344 + 94.08 + 1,057.50 = 2,495.58; with 15 % overhead 2,869.917; ÷ 0.9 = 3,188.80; left 318.88. 470 sq ft of wrap at 0.05 h make 23.5 h.',
    given: {
      'Things!A2': 'Metal',
      'Things!B2': 100,
      'Things!F2': 12,
      'Work!A2': 'Wrap duct',
      'Work!B2': 470,
      'Allowances!B14': 0.05,
      'Allowances!B2': 30,
      'Allowances!B3': 0.5,
      'Allowances!B4': 1,
      'Allowances!B5': 0.12,
      'Allowances!B6': 0.15,
      'Allowances!B7': 0.1,
      'Allowances!B9': 0.07,
      'Allowances!B10': 'purchase',
    },
    gives: {
      'Price!B3': { value: 1344, tolerance: 1e-9 },
      'Price!B4': { value: 23.5, tolerance: 1e-9 },
      'Price!B5': { value: 1057.5, tolerance: 1e-9 },
      'Price!B7': { value: 2869.92, tolerance: 0.005 },
      'Price!B8': { value: 318.88, tolerance: 0.005 },
      'Price!B11': { value: 3188.8, tolerance: 0.005 },
    },
  },
];
