import type { WorkedExample } from '../../../src/workbook/document.ts';

/** What an apprentice with number 1 answers when all is right, sheet by sheet; worked by hand as the sources say. */
const right = {
  'Tape and girth': [21.375, 31.3125, 75.375, 21.9911, 38],
  Blanks: [22.9911, 20.25, 3, 5, 13],
  Gores: [15, 2.7848, 5.5696],
  Wrap: [33.4159, 38.9911, 7.044, 3, 2],
  Seal: [5, 113.097, 1, 3],
  Air: [148.15, 75, 660, 10.22, 0.0588],
  Price: [440.44, 1375, 0.1765],
} as const;

function answered(sheets: readonly (keyof typeof right)[]): Pick<WorkedExample, 'given' | 'gives'> {
  const places = sheets.flatMap((sheet) => right[sheet].map((value, at) => [sheet, at + 2, value] as const));
  return {
    given: Object.fromEntries(places.map(([sheet, row, value]) => [`${sheet}!C${row}`, value])),
    gives: Object.fromEntries(places.map(([sheet, row]) => [`${sheet}!D${row}`, { value: 'holds' }])),
  };
}

const metal = answered(['Tape and girth', 'Blanks', 'Gores']);
const rest = answered(['Wrap', 'Seal', 'Air', 'Price']);

/** Every result below was worked by hand from the figures that its source names, never copied from the program. */
export const examples: readonly WorkedExample[] = [
  {
    name: 'Number 1, tape, blanks and gores all right',
    source:
      'Worked by hand from plain arithmetic and geometry: 3 ÷ 8 = 0.375; 5/8 + 6/8 = 1 3/8; π × 7 = 21.9911, + 1 = 22.9911; 2 × (11 + 8) = 38; 11 + 8 + 1 + 1/4 = 20 1/4; ⌈102 ÷ 46⌉ = 3; of 21 × 46 in on 48 × 120 in, one way 2 × 2, the other 1 × 5; 11 + 2 = 13; 90 ÷ (2 × 3) = 15°; 14 × tan 11.25° = 2.7848 and 28 × tan 11.25° = 5.5696.',
    given: { 'Start!B3': 1, ...metal.given },
    gives: {
      ...metal.gives,
      'Start!B19': { value: 30 },
      'Start!C19': { value: 13 },
      'Start!D19': { value: 13 },
      'Start!E13': { value: 'holds' },
      'Start!E19': { value: 'look: 17 still to answer' },
      'Tape and girth!E5': { value: 21.9911, tolerance: 0.0001 },
    },
  },
  {
    name: 'Number 1, wrap, seal, air and price all right',
    source:
      'Worked by hand from the published stretch-out table (round, 3 in: + 17 in): 38.9911; by arithmetic and geometry: π × 10 + 2 = 33.4159; 10 × (1.75 ÷ 3)^0.65 = 7.044; ⌈109 ÷ 48⌉ = 3; 14 pieces from 900 in, 28 ÷ 14 = 2; 2 × 3 × π × 6 = 113.097; 158 × 1.1 ÷ 180, 1 roll; 3,200 ÷ 21.6 = 148.15; 2.1 ÷ 28 × 1,000 = 75; 360 ÷ 0.5454 = 660; 1.30 × 88^0.625 ÷ 19^0.25 = 10.22; 15 ÷ 255 = 0.0588; 11 × 28 × 1.43 = 440.44; 1,100 ÷ 0.8 = 1,375; 15 ÷ 85 = 17.65 %.',
    given: { 'Start!B3': 1, ...rest.given },
    gives: {
      ...rest.gives,
      'Start!D19': { value: 17 },
      'Wrap!E3': { value: 38.9911, tolerance: 0.0001 },
      'Air!E5': { value: 10.22, tolerance: 0.005 },
    },
  },
  {
    name: 'Number 1, the slips that are made most often',
    source:
      'Worked by hand from plain arithmetic and geometry: the girth π × 7 = 21.9911 in place of the blank; 3 × π × 6 = 56.549 for one seam of each of three taps; π × 7 + 2 = 23.9911 without the thickness of the wrap; 1,100 × 1.2 = 1,320 is a markup; 31.27 to the nearest sixteenth is 31 1/4. One of them answered right: 2 × (11 + 8) = 38.',
    given: {
      'Start!B3': 1,
      'Tape and girth!C3': 31.25,
      'Tape and girth!C6': 38,
      'Blanks!C2': 21.9911,
      'Wrap!C2': 23.9911,
      'Seal!C3': 56.549,
      'Price!C3': 1320,
    },
    gives: {
      'Tape and girth!D3': { value: 'look: that mark is nearest, but shorter; a cut is rounded up' },
      'Tape and girth!D6': { value: 'holds' },
      'Tape and girth!E3': { value: '' },
      'Blanks!D2': { value: 'look: that is the girth; the seam wants metal too' },
      'Wrap!D2': { value: 'look: the facing goes round the wrap, not round the metal' },
      'Seal!D3': { value: 'look: a tap has two seams: at the trunk, and at its first joint' },
      'Price!D3': { value: 'look: that is a markup of 20 %; a margin is 20 % of the price' },
      'Start!C19': { value: 6 },
      'Start!D19': { value: 1 },
      'Start!E12': { value: 'look: 1 to think over again' },
    },
  },
];
