import { done, type Outcome } from '../../base/outcome.ts';
import type { Sheet } from '../../trade/gauge/sheet.ts';
import { blankWeight, type SheetWeight } from '../../trade/weight/sheet.ts';
import { quantity } from '../argument.ts';
import { flatHeight, flatMarks } from '../blank/flat-drawing.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { askedSheet, saySheet, sheetArguments, sheetWeightFormula, weightSteps } from '../gauge/sheet.ts';
import { figure, sayInches } from '../say.ts';
import { lifting } from './cautions.ts';

interface WeightOfBlank extends SheetWeight {
  readonly sheet: Sheet;
}

const side = (says: string) =>
  quantity('in', { says, least: 0.25, most: 1200, why: 'no strip is narrower, and no coil is cut longer' });

export const weightBlank = defineFunction({
  name: 'WEIGHT.BLANK',
  says: 'What a flat blank or a whole sheet weighs.',
  words: ['weight of a sheet', 'pounds', 'how heavy', 'blank', 'stock sheet', 'load'],
  gives: { label: 'Weight', unit: 'lb' },
  arguments: {
    width: side('the width of the blank'),
    length: side('the length of the blank'),
    ...sheetArguments,
  },
  formula: [
    String.raw`\text{weight} = \frac{\mathrm{width} \times \mathrm{length}}{144} \times w`,
    sheetWeightFormula,
  ],
  work: (given): Outcome<WeightOfBlank, CallFault> => {
    const sheet = askedSheet(given);
    if (!sheet.ok) return sheet;
    return done({ sheet: sheet.value, ...blankWeight(given.width, given.length, sheet.value.weight) });
  },
  result: ({ weight }) => weight,
  steps: ({ sheet, area, weight }, { width, length }) => [
    ...weightSteps(sheet),
    {
      label: 'Area of the blank',
      sum: `${figure(width, 4)} × ${figure(length, 4)} ÷ 144`,
      value: area,
      unit: 'sqft',
      source: 'geometry',
    },
    {
      label: 'Weight',
      sum: `${figure(area, 4)} × ${figure(sheet.weight, 4)}`,
      value: weight,
      unit: 'lb',
      source: 'geometry',
    },
  ],
  drawing: ({ sheet, weight }, { width, length }) => ({
    title: `Blank of ${saySheet(sheet)}`,
    describes: `A flat blank ${sayInches(width)} by ${sayInches(length)} of ${saySheet(sheet)} weighs ${figure(
      weight,
      1,
    )} lb.`,
    height: flatHeight,
    marks: flatMarks(
      {
        strips: [{ is: 'panel', width, name: 'blank' }],
        across: sayInches(width),
        along: sayInches(length),
      },
      0,
    ),
  }),
  cautions: () => lifting,
  sources: ['geometry'],
  examples: [
    {
      says: 'the one-piece blank of a 20 × 8 in duct, 60 in long, 26 ga',
      given: { width: 57.25, length: 60, gauge: 26 },
      gives: 21.6119,
      tolerance: 0.005,
      source: 'galvanized-gauge-table',
    },
    {
      says: 'a 48 × 120 in sheet of 24 ga',
      given: { width: 48, length: 120, gauge: 24 },
      gives: 46.24,
      tolerance: 0.01,
      source: 'galvanized-gauge-table',
    },
  ],
});
