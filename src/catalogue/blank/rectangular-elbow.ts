import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import { elbowForms, type RectangularElbow, rectangularElbow } from '../../trade/blank/rectangular-elbow.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import type { Caution, Step } from '../working.ts';
import {
  askPattern,
  ductSide,
  flangeArgument,
  neckArgument,
  type Pattern,
  patternArguments,
  patternCautions,
  patternGives,
  patternSteps,
  patternUnit,
  pocketArgument,
} from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';

interface ElbowPattern extends Pattern {
  readonly made: RectangularElbow;
  readonly throatRadius: Inches;
}

/** Of the width: a city specification, and the usual value here. */
const usualThroat = 0.75;

export const blankRectangularElbow = defineFunction({
  name: 'BLANK.ELBOW',
  says: 'The cheek, the heel and the throat of a rectangular elbow of any angle, with a radius or mitered.',
  words: [
    'rectangular elbow',
    'radius elbow',
    'square elbow',
    'mitered elbow',
    'mitered',
    'cheek',
    'heel',
    'throat',
    'ell',
  ],
  gives: { label: 'Elbow', ...patternGives },
  unitOf: patternUnit,
  arguments: {
    width: ductSide('the width of the duct across the turn'),
    depth: ductSide('the depth of the duct, which throat and heel are wide'),
    angle: optional(
      quantity('deg', {
        says: 'the angle that the duct turns through',
        least: 1,
        most: 180,
        why: 'under 1° there is no turn, and past 180° the elbow runs into itself',
      }),
      90,
      'most elbows turn square',
    ),
    ...patternArguments(3, '1 is the cheek, 2 the heel and 3 the throat'),
    form: optional(
      choice(elbowForms, {
        says: '"radius" has arcs about one center, "mitered" has a square throat and heel',
      }),
      'radius',
      'air turns easier on a radius, and a mitered elbow needs vanes',
    ),
    throat_radius: optional<Inches | null>(
      quantity('in', {
        says: 'the radius of the throat; 0 for a sharp one with a round heel',
        least: 0,
        most: 240,
        why: 'a larger sweep is rolled as a length of duct',
      }),
      null,
      'left out, it is 3/4 of the width (city specification), and 0 for a mitered elbow',
    ),
    first_neck: neckArgument('first'),
    second_neck: neckArgument('second'),
    pocket: pocketArgument('what the pocket takes on each edge of heel and throat'),
    flange: flangeArgument('what the flange takes on the heel and throat edges of each cheek'),
    divisions: optional(
      quantity('count', {
        says: 'into how many steps each arc is divided for its points; lengths and areas are exact with any',
        least: 4,
        most: 96,
        whole: true,
        why: 'under 4 the arc is no curve, and over 96 the points lie closer than a scriber marks',
      }),
      24,
      'at 90° that is a point every 3 3/4°',
    ),
  },
  formula: [
    String.raw`\text{radius:}\quad \text{throat} = \theta r, \quad \text{heel} = \theta (r + \mathrm{width}), \quad r = \mathrm{throat\_radius}, \quad \theta = \frac{\pi}{180} \times \mathrm{angle}`,
    String.raw`\text{mitered:}\quad \text{throat} = 0, \quad \text{heel} = 2 \times \mathrm{width} \times \tan\frac{\theta}{2}`,
    String.raw`\text{cheek area} = \frac{\theta}{2} \left((r + \mathrm{width})^2 - r^2\right) + N \text{ (radius)}, \quad \mathrm{width}^2 \times \tan\frac{\theta}{2} + N \text{ (mitered)}`,
    String.raw`N = \mathrm{width} \times (\mathrm{first\_neck} + \mathrm{second\_neck}) \quad \text{(straight ends)}`,
    String.raw`\text{strip} = \mathrm{first\_neck} + \text{throat or heel} + \mathrm{second\_neck} \quad \text{by} \quad \mathrm{depth} + 2 \times \mathrm{pocket}`,
  ],
  work: (given): Outcome<ElbowPattern, CallFault> => {
    const { form, width, depth, angle, throat_radius, pocket, flange, divisions } = given;
    if (form === 'mitered' && throat_radius !== null && throat_radius > 0) {
      return failed({ code: 'trade', fault: { code: 'radius_on_miter', radius: throat_radius } });
    }
    const throatRadius = throat_radius ?? inches(form === 'mitered' ? 0 : usualThroat * width);
    const made = fromTrade(
      rectangularElbow({
        form,
        width,
        depth,
        angle,
        throatRadius,
        firstNeck: given.first_neck,
        secondNeck: given.second_neck,
        pocket,
        flange,
        divisions,
      }),
    );
    if (!made.ok) return made;
    const pattern = askPattern(made.value.pieces, given);
    return pattern.ok ? done({ ...pattern.value, made: made.value, throatRadius }) : pattern;
  },
  result: ({ asked }) => asked,
  steps: (pattern, { form, width, angle, throat_radius }) => [
    ...(form === 'radius' && throat_radius === null
      ? ([
          {
            label: 'Throat radius',
            sum: `${usualThroat} × ${figure(width, 4)}`,
            value: pattern.throatRadius,
            unit: 'in',
            source: 'city-duct-specification',
          },
        ] as const)
      : []),
    ...turnSteps(pattern.made, form, width, angle, pattern.throatRadius),
    ...patternSteps(pattern),
  ],
  drawing: ({ pieces, made, throatRadius }, { form, width, depth, angle }) =>
    patternDrawing(
      `${form === 'radius' ? 'Radius' : 'Mitered'} elbow, ${sayInches(width)} × ${sayInches(depth)}, ${figure(angle, 2)}°`,
      pieces,
      form === 'mitered'
        ? []
        : [`throat radius ${sayInches(throatRadius)}, heel radius ${sayInches(made.heelRadius)}`],
    ),
  cautions: (pattern, { form, width }) => [
    ...patternCautions(pattern),
    ...throatCautions(form === 'mitered' ? 0 : pattern.throatRadius, width),
  ],
  sources: ['geometry', 'city-duct-specification', 'pittsburgh-how-to', 'sheet-shop-practice'],
  examples: [
    {
      says: 'the heel of 12 × 8 in, throat radius 6 in, square turn, without straight ends: its length',
      given: { width: 12, depth: 8, part: 2, throat_radius: 6, first_neck: 0, second_neck: 0 },
      gives: 28.2743,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the area of one cheek of 20 × 10 in, throat radius 10 in, 45°, without straight ends',
      given: {
        width: 20,
        depth: 10,
        angle: 45,
        what: 'area',
        throat_radius: 10,
        first_neck: 0,
        second_neck: 0,
      },
      gives: 2.1817,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'how wide to shear the cheek of a mitered 14 × 8 in elbow with 1 in straight ends',
      given: { width: 14, depth: 8, form: 'mitered' },
      gives: 15.25,
      source: 'geometry',
    },
  ],
});

function turnSteps(
  made: RectangularElbow,
  form: 'radius' | 'mitered',
  width: Inches,
  angle: number,
  throatRadius: Inches,
): readonly Step[] {
  const [a, w, r] = [angle, width, throatRadius].map((one) => figure(one, 4));
  const step = (label: string, sum: string, value: Inches): Step => ({
    label,
    sum,
    value,
    unit: 'in',
    source: 'geometry',
  });
  if (form === 'mitered') {
    return [
      step('Heel in the turn', `2 × ${w} × tan(${a}° ÷ 2)`, made.heelLength),
      step('Centerline in the turn', `${w} × tan(${a}° ÷ 2)`, made.centerline),
    ];
  }
  return [
    step('Heel radius', `${r} + ${w}`, made.heelRadius),
    step('Throat in the turn', `${a}° × π ÷ 180 × ${r}`, made.throatLength),
    step('Heel in the turn', `${a}° × π ÷ 180 × ${figure(made.heelRadius, 4)}`, made.heelLength),
    step('Centerline in the turn', `${a}° × π ÷ 180 × (${r} + ${w} ÷ 2)`, made.centerline),
  ];
}

function throatCautions(throatRadius: number, width: number): readonly Caution[] {
  if (throatRadius >= width) return [];
  return [
    {
      level: 'look',
      sentence: `The throat radius is less than the width. Above 1000 ft/min the rules of one state ask for a radius of at least the width, or for vanes; single dwellings are exempt there.`,
      source: 'state-rule-1346-0603',
    },
  ];
}
