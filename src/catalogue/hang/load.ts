import { done, failed, type Outcome } from '../../base/outcome.ts';
import { pounds } from '../../base/quantity.ts';
import type { Sheet } from '../../trade/gauge/sheet.ts';
import { usualMake } from '../../trade/hang/length.ts';
import { type HangerLoad, hangerLoad } from '../../trade/hang/load.ts';
import { type DuctSection, perimeter } from '../../trade/section.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { askedSheet, saySheet, sheetArguments, sheetWeightFormula, weightSteps } from '../gauge/sheet.ts';
import { figure, sayFeet } from '../say.ts';
import { perimeterFormula, perimeterStep, saySection, sectionArguments, sectionOf } from '../section.ts';
import type { Step } from '../working.ts';
import { spacingArgument } from './arguments.ts';
import { attachment, codeDecides, overhead } from './cautions.ts';
import { hangerDrawing } from './hanger-drawing.ts';

interface Hung extends HangerLoad {
  readonly section: DuctSection;
  readonly sheet: Sheet;
}

const wrapThickness = quantity('in', {
  says: 'the thickness of the wrap out of the package',
  least: 0,
  most: 12,
  why: 'no wrap for duct is thicker than a foot',
});

/** What hangs on one hanger, or on each of its straps. Pounds. Source: geometry. */
export const hangLoad = defineFunction({
  name: 'HANG.LOAD',
  says: 'What one hanger carries: the duct and its wrap over one spacing, and what else hangs there.',
  words: ['load per hanger', 'weight on a hanger', 'hanger load', 'pounds per hanger', 'weight on the strap'],
  gives: { label: 'Load', unit: 'lb' },
  arguments: {
    ...sectionArguments,
    spacing: spacingArgument,
    ...sheetArguments,
    extra: optional(
      quantity('percent', {
        says: 'the share to add for seams, joints and cleats: 10 % is 0.1',
        least: 0,
        most: 1,
        why: 'more joints than duct is a slip of the percent sign',
      }),
      0.1,
      'a consulting office and a textbook of 1921 add 10 %',
    ),
    wrap_cut: optional(
      quantity('in', {
        says: 'the cut length of the wrap, once round; 0 for bare duct; WRAP.STRETCHOUT gives it',
        least: 0,
        most: 800,
        why: 'no shop duct is that far round',
      }),
      0,
      'bare duct has no wrap',
    ),
    wrap_thickness: optional(wrapThickness, 0, 'bare duct has no wrap; wrapped duct needs both figures'),
    wrap_density: optional(
      quantity('lbPerCuFt', {
        says: 'the density of the wrap out of the package',
        least: 0.25,
        most: 12,
        why: 'wrap and board for duct weigh between a quarter and 12 lb/cu ft',
      }),
      0.75,
      'the lighter of the two usual wraps; dense wrap has 1',
    ),
    other: optional(
      quantity('lb', {
        says: 'what else this hanger carries: a damper, a box, a length of branch',
        least: 0,
        most: 10_000,
        why: 'nothing on a duct hanger weighs five tons',
      }),
      0,
      'a straight run carries nothing else',
    ),
    legs: optional(
      quantity('count', {
        says: 'over how many straps or rods of the hanger the load is shared evenly',
        least: 1,
        most: 4,
        whole: true,
        why: 'a hanger has one to four straps or rods',
      }),
      1,
      'the whole load of the hanger is shown',
    ),
  },
  formula: [
    String.raw`\text{metal} = \frac{P \times \text{spacing}}{144} \times w \times (1 + \text{extra})`,
    perimeterFormula,
    sheetWeightFormula,
    String.raw`\text{wrap} = \frac{\text{wrap\_cut} \times \text{spacing} \times \text{wrap\_thickness}}{1728} \times \text{wrap\_density}`,
    String.raw`\text{load} = \frac{\text{metal} + \text{wrap} + \text{other}}{\text{legs}}`,
  ],
  work: (given): Outcome<Hung, CallFault> => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const sheet = askedSheet(given);
    if (!sheet.ok) return sheet;
    const { wrap_cut: cut, wrap_thickness: thickness, wrap_density: density } = given;
    if (cut > 0 && thickness === 0) {
      return failed({ code: 'missing', argument: 'wrap_thickness', says: wrapThickness.says });
    }
    if (cut === 0 && thickness > 0) {
      return failed({
        code: 'missing',
        argument: 'wrap_cut',
        says: 'the cut length of the wrap, once round',
      });
    }
    const load = hangerLoad(
      section.value,
      given.spacing,
      sheet.value.weight,
      given.extra,
      { cut, thickness, density },
      pounds(given.other),
      given.legs,
    );
    return done({ section: section.value, sheet: sheet.value, ...load });
  },
  result: ({ leg }) => leg,
  steps: ({ section, sheet, metal, wrap, hanger, leg }, given): readonly Step[] => [
    perimeterStep(section),
    ...weightSteps(sheet),
    {
      label: 'Metal over one spacing',
      sum: `${figure(perimeter(section), 4)} × ${figure(given.spacing, 4)} ÷ 144 × ${figure(sheet.weight, 4)} × (1 + ${figure(given.extra, 4)})`,
      value: metal,
      unit: 'lb',
      source: 'geometry',
    },
    ...(wrap === 0
      ? []
      : [
          {
            label: 'Wrap on it',
            sum: `${figure(given.wrap_cut, 4)} × ${figure(given.spacing, 4)} × ${figure(given.wrap_thickness, 4)} ÷ 1728 × ${figure(given.wrap_density, 4)}`,
            value: wrap,
            unit: 'lb',
            source: 'geometry',
          } as const,
        ]),
    {
      label: 'On the hanger',
      sum: `${figure(metal, 4)} + ${figure(wrap, 4)} + ${figure(given.other, 4)}`,
      value: hanger,
      unit: 'lb',
    },
    { label: 'Load', sum: `${figure(hanger, 4)} ÷ ${figure(given.legs)}`, value: leg, unit: 'lb' },
  ],
  drawing: ({ section, sheet, hanger, leg }, { spacing, legs, wrap_cut }) =>
    hangerDrawing({
      title: `Load of a ${saySection(section)} duct on one hanger`,
      describes: `A ${saySection(section)} duct of ${saySheet(sheet)}, hung every ${sayFeet(spacing)}, puts ${figure(hanger, 1)} lb on a hanger.`,
      section,
      make: usualMake(section),
      isWrapped: wrap_cut > 0,
      notes: [
        `${figure(hanger, 1)} lb`,
        `every ${sayFeet(spacing)}`,
        ...(legs > 1 ? [`${figure(leg, 1)} lb on each`, `of ${figure(legs)} straps`] : []),
      ],
    }),
  cautions: () => [
    codeDecides,
    overhead,
    attachment,
    {
      level: 'care',
      sentence:
        'This is the still weight with even spacing. Snow, earthquakes, a person leaning on the duct, water in wet wrap and the end hangers of a run are for licensed practice to allow for.',
    },
  ],
  sources: ['geometry'],
  examples: [
    {
      says: 'bare 20 × 8 in duct of 26 ga hung every 10 ft, with 10 % for joints',
      given: { shape: 'rectangular', width: 20, depth: 8, spacing: 120, gauge: 26 },
      gives: 46.508,
      tolerance: 0.005,
      source: 'galvanized-gauge-table',
    },
    {
      says: 'the same in 2 in wrap cut 67 1/4 in, on each of two straps',
      given: {
        shape: 'rectangular',
        width: 20,
        depth: 8,
        spacing: 120,
        gauge: 26,
        wrap_cut: 67.25,
        wrap_thickness: 2,
        legs: 2,
      },
      gives: 26.7566,
      tolerance: 0.005,
      source: 'galvanized-gauge-table',
    },
  ],
});
