import { done, type Outcome } from '../../base/outcome.ts';
import type { Sheet } from '../../trade/gauge/sheet.ts';
import type { DuctSection } from '../../trade/section.ts';
import { type DuctWeight, ductWeight } from '../../trade/weight/duct.ts';
import { optional, quantity } from '../argument.ts';
import { flatHeight, flatMarks } from '../blank/flat-drawing.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { askedSheet, saySheet, sheetArguments, sheetWeightFormula, weightSteps } from '../gauge/sheet.ts';
import { figure, sayFeet, sayInches } from '../say.ts';
import { perimeterFormula, perimeterStep, saySection, sectionArguments, sectionOf } from '../section.ts';
import { hanging, lifting } from './cautions.ts';

interface WeightOfDuct extends DuctWeight {
  readonly section: DuctSection;
  readonly sheet: Sheet;
}

export const weightDuct = defineFunction({
  name: 'WEIGHT.DUCT',
  says: 'What the metal of a straight duct weighs, with seams and waste if you give them.',
  words: ['pounds', 'takeoff', 'metal weight', 'how heavy', 'estimate', 'load on hangers'],
  gives: { label: 'Weight', unit: 'lb' },
  arguments: {
    ...sectionArguments,
    length: quantity('in', {
      says: 'the length of the duct',
      least: 1,
      most: 12000,
      why: 'a straight run under 1 in or over 1000 ft is most likely a slip of the unit',
    }),
    ...sheetArguments,
    seam: optional(
      quantity('in', {
        says: 'what all lengthwise seams together add to the girth',
        least: 0,
        most: 12,
        why: 'four seams take no more than that',
      }),
      0,
      'the net weight leaves the seams out',
    ),
    waste: optional(
      quantity('percent', {
        says: 'the share to add for joints, cleats and drop: 10 % is 0.1',
        least: 0,
        most: 1,
        why: 'more waste than metal is a slip of the percent sign',
      }),
      0,
      'the net weight leaves waste out; a textbook of 1921 adds 10 %',
    ),
  },
  formula: [
    perimeterFormula,
    String.raw`\text{weight} = \frac{(P + \mathrm{seam}) \times \mathrm{length}}{144} \times w \times (1 + \mathrm{waste})`,
    sheetWeightFormula,
  ],
  work: (given): Outcome<WeightOfDuct, CallFault> => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const sheet = askedSheet(given);
    if (!sheet.ok) return sheet;
    const figures = ductWeight(section.value, given.length, sheet.value.weight, given.seam, given.waste);
    return done({ section: section.value, sheet: sheet.value, ...figures });
  },
  result: ({ weight }) => weight,
  steps: ({ section, sheet, perimeter, seam, around, area, metal, weight }, { length, waste }) => [
    perimeterStep(section),
    {
      label: 'Around, with the seams',
      sum: `${figure(perimeter, 4)} + ${figure(seam, 4)}`,
      value: around,
      unit: 'in',
      source: 'geometry',
    },
    {
      label: 'Area',
      sum: `${figure(around, 4)} × ${figure(length, 4)} ÷ 144`,
      value: area,
      unit: 'sqft',
      source: 'geometry',
    },
    ...weightSteps(sheet),
    {
      label: 'Metal',
      sum: `${figure(area, 4)} × ${figure(sheet.weight, 4)}`,
      value: metal,
      unit: 'lb',
      source: 'geometry',
    },
    {
      label: 'Weight, with waste',
      sum: `${figure(metal, 4)} × (1 + ${figure(waste, 4)})`,
      value: weight,
      unit: 'lb',
      source: 'geometry',
    },
  ],
  drawing: ({ section, sheet, around, weight }, { length }) => ({
    title: `${saySection(section)} duct of ${saySheet(sheet)}, unrolled`,
    describes: `Unrolled, the metal is ${sayInches(around)} by ${sayFeet(length)}. It weighs ${figure(
      weight,
      1,
    )} lb, waste included if given.`,
    height: flatHeight,
    marks: flatMarks(
      {
        strips: [{ is: 'panel', width: around, name: 'girth' }],
        across: `around ${sayInches(around)}`,
        along: sayFeet(length),
      },
      0,
    ),
  }),
  cautions: () => [...lifting, hanging],
  sources: ['geometry', 'drafting-textbook-1921'],
  examples: [
    {
      says: 'one foot of 20 × 8 in duct in 26 ga, net',
      given: { shape: 'rectangular', width: 20, depth: 8, length: 12, gauge: 26 },
      gives: 4.228,
      tolerance: 0.001,
      source: 'galvanized-gauge-table',
    },
    {
      says: 'one foot of 6 in pipe in 26 ga with a 1 in seam',
      given: { shape: 'round', width: 6, length: 12, gauge: 26, seam: 1 },
      gives: 1.4986,
      tolerance: 0.001,
      source: 'galvanized-gauge-table',
    },
    {
      says: 'one foot of 20 × 8 in duct in 26 ga, 10 % for waste',
      given: { shape: 'rectangular', width: 20, depth: 8, length: 12, gauge: 26, waste: 0.1 },
      gives: 4.6508,
      tolerance: 0.001,
      source: 'galvanized-gauge-table',
    },
  ],
});
