import type { WorkedExample } from '../../../src/workbook/document.ts';

/** Every result below was worked by hand from the figures that its source names, never copied from the program. */
export const examples: readonly WorkedExample[] = [
  {
    name: '20 ft of 12 in round in R-6 wrap, 55 °F air in an attic of 90 °F and 80 %',
    source:
      'Worked by hand from the published stretch-out table (round, 2.2 in: 12π + 13 = 50.6991, 3 in: + 17 = 54.6991), geometry (12π + 2π × 1.625 + 2 = 49.9093), the data sheet of 0.75 lb/cu ft wrap (7.4 × (1.7588 ÷ 2.2)^0.6923 = 6.338; 10 × (2.3954 ÷ 3)^0.6477 = 8.644), and a maker bulletin on condensation (film R 1.32; least R 5.27; 90 − 35 × 1.32 ÷ (6.338 + 1.32) = 83.97, dew point 82.99).',
    given: {
      'Job!B10': 12,
      'Job!B12': 240,
      'Job!B15': 6,
      'Job!B17': 'R-6 wrap',
      'Job!B20': 90,
      'Job!B21': 0.8,
      'Job!B22': 55,
    },
    gives: {
      'Compare!B4': { value: 50.6991, tolerance: 0.0001 },
      'Compare!C4': { value: 49.9093, tolerance: 0.0001 },
      'Compare!B5': { value: 54.6991, tolerance: 0.0001 },
      'Compare!B14': { value: 6.338, tolerance: 0.001 },
      'Compare!B15': { value: 8.644, tolerance: 0.001 },
      'Compare!B24': { value: 50.75 },
      'Compare!C24': { value: 5 },
      'Compare!D24': { value: 1 },
      'Compare!E24': { value: 79 },
      'Compare!G24': { value: 'suits' },
      'Compare!G22': { value: 'no: it is rated R 4.2 installed, and R 6 is needed' },
      'Compare!B34': { value: 83.97, tolerance: 0.01 },
      'Compare!C34': { value: 82.99, tolerance: 0.1 },
      'Compare!E34': { value: 5.27, tolerance: 0.03 },
      'Compare!F35': { value: 'suits' },
      'Job!C17': { value: 'look: it is near sweating; see Compare' },
      'Job!B28': { value: 1 },
    },
  },
  {
    name: '10 ft of 20 × 8 in in R-8 wrap: by geometry it keeps its R, by the published table it does not',
    source:
      'Worked by hand from the published stretch-out table (rectangular, 2 in: 56 + 8 = 64, 3 in: + 11 1/2 = 67 1/2), geometry (56 + 2π × 1 1/2 + 2 = 67.4248; 56 + 2π × 2 1/4 + 2 = 72.1372) and the data sheet of 0.75 lb/cu ft wrap: cut at 72 3/16, 14.1875 ÷ 2π = 2.2580 is left, and 10 × (2.2580 ÷ 3)^0.6477 = 8.319; cut at 67 1/2, 10 × (1.5120 ÷ 3)^0.6477 = 6.416; 2 in wrap at 64 keeps 0.955 in, less than half.',
    given: {
      'Job!B9': 'rectangular',
      'Job!B10': 20,
      'Job!B11': 8,
      'Job!B12': 120,
      'Job!B16': 'geometry',
    },
    gives: {
      'Compare!B3': { value: 64 },
      'Compare!C3': { value: 67.4248, tolerance: 0.0001 },
      'Compare!B5': { value: 67.5 },
      'Compare!C5': { value: 72.1372, tolerance: 0.0001 },
      'Compare!B15': { value: 6.416, tolerance: 0.001 },
      'Compare!C15': { value: 8.319, tolerance: 0.001 },
      'Compare!F13': { value: 'squeezed to less than half by: published' },
      'Compare!B25': { value: 72.1875 },
      'Compare!C25': { value: 3 },
      'Compare!G25': { value: 'suits' },
      'Job!C17': { value: 'holds' },
      'Job!B28': { value: 1 },
    },
  },
];
