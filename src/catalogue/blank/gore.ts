import { done } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import { goredElbow, goreSeams } from '../../trade/blank/gore.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import type { Caution } from '../working.ts';
import { neckArgument, patternCautions } from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';
import {
  askFitting,
  curveAnswers,
  curveSays,
  divisionsArgument,
  fittingGives,
  fittingSteps,
  fittingUnit,
  middleFigures,
  middleOf,
  roundDiameter,
  seamInAll,
  stationArgument,
  thicknessArguments,
} from './round-pattern.ts';

const answers = [
  ...curveAnswers,
  'ordinate',
  'throat',
  'heel',
  'rise',
  'girth',
  'miter',
  'centerline',
  'surface',
] as const;

const jointEdge = (says: string, usual: number, why: string) =>
  optional(
    quantity('in', {
      says,
      least: 0,
      most: 2,
      why: 'no joint between gores takes more than 2 in of one of them',
    }),
    usual,
    why,
  );

export const blankGore = defineFunction({
  name: 'BLANK.GORE',
  says: 'The flat gores of a round elbow of any number of pieces and any angle.',
  words: [
    'gored elbow',
    'round elbow',
    'segmented elbow',
    'lobster back',
    'miter',
    'ordinates',
    'throat',
    'heel',
    'rise',
    'backset',
    'sweep',
  ],
  gives: { label: 'Gore', ...fittingGives },
  unitOf: fittingUnit,
  arguments: {
    diameter: roundDiameter('the diameter of the elbow'),
    angle: optional(
      quantity('deg', {
        says: 'what the elbow turns through',
        least: 5,
        most: 180,
        why: 'under 5° a pipe is simply pulled round, and past 180° it comes back on itself',
      }),
      90,
      'most elbows turn square',
    ),
    pieces: optional(
      quantity('count', {
        says: 'of how many pieces it is made, the two ends included',
        least: 2,
        most: 20,
        whole: true,
        why: 'one piece makes no joint, and more than 20 are not worth their seams',
      }),
      5,
      'a square elbow of five pieces is the sample of the drafting textbook of 1921',
    ),
    radius: optional<Inches | null>(
      quantity('in', {
        says: 'the radius to the middle of the duct',
        least: 1,
        most: 360,
        why: 'a wider sweep is made as straight pipe with single miters',
      }),
      null,
      '1 1/2 times the diameter (common practice, no source); some shops take 1 time',
    ),
    what: optional(
      choice(answers, {
        says: `the ordinate (half width of a gore at a station), the throat, heel and rise of a gore, the girth, the miter angle of a joint, the center line as made, the surface of the whole elbow, or the ${curveSays}`,
      }),
      'width',
      'sheets are sheared to width first',
    ),
    station: stationArgument('stations count from the left seam, sides from the lower one round to the left'),
    part: optional(
      quantity('count', {
        says: 'which piece: 1 is the first end, 2 the last end and 3 a middle gore',
        least: 1,
        most: 3,
        whole: true,
        why: 'there are no other kinds of piece in it',
      }),
      1,
      'it is the piece that is laid out first',
    ),
    divisions: divisionsArgument,
    seam_at: optional(
      choice(goreSeams, { says: 'where the lengthwise seam lies' }),
      'throat',
      'the throat is the shortest seam; turn every other gore end for end where seams must not meet (common practice, no source)',
    ),
    seam: seamInAll,
    single_edge: jointEdge(
      'what the joint takes of the gore that goes inside: the single edge',
      0.25,
      '1/4 to 3/8 in are turned (common practice, no source)',
    ),
    double_edge: jointEdge(
      'what the joint takes of its mate: the double edge',
      0.5,
      'twice the single edge (common practice, no source)',
    ),
    first_collar: neckArgument('first'),
    last_collar: neckArgument('last'),
    ...thicknessArguments,
  },
  formula: [
    String.raw`\alpha = \frac{\mathrm{angle}}{2 (\mathrm{pieces} - 1)} \quad \text{(miter)}`,
    String.raw`y(p) = \left(\mathrm{radius} \mp \frac{D}{2} \cos p\right) \tan\alpha \quad \text{half width: } - \text{ from a seam in the throat, } + \text{ from the heel}`,
    String.raw`\text{rise} = D \tan\alpha, \quad \text{girth} = \pi D, \quad D = \mathrm{diameter} + c \times \mathrm{thickness}, \quad c = 1 \text{ (inside)},\ -1 \text{ (outside)},\ 0 \text{ (ignored)}`,
  ],
  work: (given) => {
    const diameter = middleOf(given.diameter, given);
    const radius = given.radius ?? inches(1.5 * given.diameter);
    const made = fromTrade(
      goredElbow({
        diameter,
        radius,
        angle: given.angle,
        pieces: given.pieces,
        divisions: given.divisions,
        seamAt: given.seam_at,
        seam: given.seam,
        singleEdge: given.single_edge,
        doubleEdge: given.double_edge,
        firstCollar: given.first_collar,
        lastCollar: given.last_collar,
      }),
    );
    if (!made.ok) return made;
    const { miter, joints, throat, middle, heel, rise, girth, centerline, surface, ordinates, gores } =
      made.value;
    const [d, r, a] = [diameter, radius, miter].map((one) => figure(one, 4));
    const sign = given.seam_at === 'throat' ? '−' : '+';
    const asked = askFitting(
      {
        pieces: gores,
        isCurve: true,
        figures: [
          ...middleFigures([given.diameter], given),
          {
            is: 'miter',
            label: 'Miter angle',
            sum: `${figure(given.angle, 4)} ÷ (2 × (${given.pieces} − 1)); joints at ${joints.map((one) => `${figure(one, 2)}°`).join(', ')}`,
            value: miter,
            unit: 'deg',
          },
          { is: 'girth', label: 'Girth', sum: `π × ${d}`, value: girth, unit: 'in' },
          { is: 'rise', label: 'Rise', sum: `${d} × tan ${a}°`, value: rise, unit: 'in' },
          {
            is: 'throat',
            label: 'Half of a gore in the throat',
            sum: `(${r} − ${d} ÷ 2) × tan ${a}°`,
            value: throat,
            unit: 'in',
          },
          {
            is: '',
            label: 'Half of a gore at the middle',
            sum: `${r} × tan ${a}°`,
            value: middle,
            unit: 'in',
          },
          {
            is: 'heel',
            label: 'Half of a gore at the heel',
            sum: `(${r} + ${d} ÷ 2) × tan ${a}°`,
            value: heel,
            unit: 'in',
          },
          {
            is: 'centerline',
            label: 'Along the center line as made, collars left out',
            sum: `2 × (${given.pieces} − 1) × ${r} × tan ${a}°`,
            value: centerline,
            unit: 'in',
          },
          {
            is: 'surface',
            label: 'Surface of the elbow, without seams and collars',
            sum: `π × ${d} × ${figure(centerline, 4)} ÷ 144`,
            value: surface,
            unit: 'sqft',
          },
        ],
        tables: [
          {
            is: 'ordinate',
            label: 'Ordinate, half width of a gore',
            sum: `(${r} ${sign} ${d} ÷ 2 × cos p) × tan ${a}°`,
            values: ordinates,
          },
        ],
      },
      given,
    );
    return asked.ok ? done({ ...asked.value, step: girth / given.divisions }) : asked;
  },
  result: ({ asked }) => asked,
  steps: (answer) => fittingSteps(answer),
  drawing: ({ pieces }, given) =>
    patternDrawing(
      `Round elbow of ${sayInches(given.diameter)}, ${figure(given.angle, 2)}° in ${given.pieces} pieces`,
      pieces,
    ),
  cautions: ({ pattern, step }) => [
    ...patternCautions(pattern),
    ...(step > widestStep ? [coarse(step)] : []),
  ],
  sources: ['geometry', 'drafting-textbook-1921', 'round-elbow-course', 'sheet-shop-practice'],
  examples: [
    {
      says: 'the rise of an 8 in elbow of five pieces, 90°',
      given: { diameter: 8, what: 'rise' },
      gives: 1.5913,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'its ordinate at station 4 of 12 spaces, on the middle line',
      given: { diameter: 8, what: 'ordinate', station: 4, divisions: 12 },
      gives: 2.3869,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the miter angle of each joint of a five-piece elbow, as the textbook steps it off',
      given: { diameter: 8, angle: 90, pieces: 5, what: 'miter' },
      gives: 11.25,
      tolerance: 0.000001,
      source: 'drafting-textbook-1921',
    },
    {
      says: 'the surface of a 10 in elbow of three pieces, 45°, radius 10 in',
      given: { diameter: 10, angle: 45, pieces: 3, radius: 10, what: 'surface' },
      gives: 1.7358,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'how long to cut the blank of a middle gore of the 8 in elbow, its edges included',
      given: { diameter: 8, part: 3, what: 'length', single_edge: 0, double_edge: 0 },
      gives: 6.3652,
      tolerance: 0.0001,
      source: 'geometry',
    },
  ],
});

/** In inches: marks farther apart draw a curve with corners. */
const widestStep = 2;

function coarse(step: number): Caution {
  return {
    level: 'look',
    sentence: `The marks are ${sayInches(inches(step))} apart. An open course keeps them near 2 in on a large elbow: choose more divisions.`,
    source: 'round-elbow-course',
  };
}
