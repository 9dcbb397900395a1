import { done, type Outcome } from '../../base/outcome.ts';
import { type DuctArea, ductArea } from '../../trade/area/duct.ts';
import type { DuctSection } from '../../trade/section.ts';
import { quantity } from '../argument.ts';
import { flatHeight, flatMarks } from '../blank/flat-drawing.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { figure, sayFeet, sayInches } from '../say.ts';
import { perimeterFormula, perimeterStep, saySection, sectionArguments, sectionOf } from '../section.ts';

interface AreaOfDuct extends DuctArea {
  readonly section: DuctSection;
}

export const areaDuct = defineFunction({
  name: 'AREA.DUCT',
  says: 'How many square feet of metal a straight duct shows: its bare outside, for a take-off.',
  words: ['takeoff', 'square feet', 'surface', 'footage', 'metal area', 'insulation area', 'estimate'],
  gives: { label: 'Bare area', unit: 'sqft' },
  arguments: {
    ...sectionArguments,
    length: quantity('in', {
      says: 'the length of the duct',
      least: 1,
      most: 12000,
      why: 'a straight run under 1 in or over 1000 ft is most likely a slip of the unit',
    }),
  },
  formula: [perimeterFormula, String.raw`\text{area} = \frac{P \times \mathrm{length}}{144}`],
  work: (given): Outcome<AreaOfDuct, CallFault> => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    return done({ section: section.value, ...ductArea(section.value, given.length) });
  },
  result: ({ area }) => area,
  steps: ({ section, perimeter, length, area }) => [
    perimeterStep(section),
    {
      label: 'Bare area',
      sum: `${figure(perimeter, 4)} × ${figure(length, 4)} ÷ 144`,
      value: area,
      unit: 'sqft',
      source: 'geometry',
    },
  ],
  drawing: ({ section, perimeter, length, area }) => ({
    title: `Area of a ${saySection(section)} duct, unrolled`,
    describes: `Unrolled, the duct is ${sayInches(perimeter)} by ${sayFeet(length)}: ${figure(area, 1)} sq ft.`,
    height: flatHeight,
    marks: flatMarks(
      {
        strips: [{ is: 'panel', width: perimeter, name: 'girth' }],
        across: `around ${sayInches(perimeter)}`,
        along: sayFeet(length),
      },
      0,
    ),
  }),
  cautions: () => [
    {
      level: 'look',
      sentence:
        'Bare area only: seams, joints, cleats, hangers and drop are not in it. Add them before you order metal.',
      source: 'sheet-shop-practice',
    },
  ],
  sources: ['geometry'],
  examples: [
    {
      says: 'one foot of 6 in round pipe',
      given: { shape: 'round', width: 6, length: 12 },
      gives: 1.5708,
      tolerance: 0.0005,
      source: 'geometry',
    },
    {
      says: 'one foot of 20 × 8 in duct',
      given: { shape: 'rectangular', width: 20, depth: 8, length: 12 },
      gives: 4.6667,
      tolerance: 0.0005,
      source: 'geometry',
    },
  ],
});
