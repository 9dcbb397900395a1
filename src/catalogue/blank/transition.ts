import { done, type Outcome } from '../../base/outcome.ts';
import type { Inches } from '../../base/quantity.ts';
import {
  sideways,
  type Transition,
  type TransitionPanel,
  transition,
  upright,
} from '../../trade/blank/transition.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
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
  slantSum,
} from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';

interface TransitionPattern extends Pattern {
  readonly made: Transition;
}

const shift = (says: string) =>
  optional(
    quantity('in', {
      says,
      least: -120,
      most: 120,
      why: 'an offset of more than 10 ft is a run of duct, not a fitting',
    }),
    0,
    'the two ends stand as the words say',
  );

export const blankTransition = defineFunction({
  name: 'BLANK.TRANSITION',
  says: 'The four flat panels of a rectangular transition, straight or offset, by true lengths.',
  words: ['transition', 'reducer', 'taper', 'offset transition', 'true length', 'flat on one side', 'slant'],
  gives: { label: 'Panel', ...patternGives },
  unitOf: patternUnit,
  arguments: {
    first_width: ductSide('the width of the first end'),
    first_depth: ductSide('the depth of the first end'),
    second_width: ductSide('the width of the second end'),
    second_depth: ductSide('the depth of the second end'),
    length: quantity('in', {
      says: 'the length between the ends, square to them, without the straight ends',
      least: 1,
      most: 120,
      why: 'under 1 in there is nothing to bend, and over 10 ft no sheet is long enough',
    }),
    ...patternArguments(4, '1 is the top, 2 the bottom, 3 the left and 4 the right side'),
    sideways: optional(
      choice(sideways, { says: 'how the second end stands to the first, seen from above with the flow' }),
      'centered',
      'most transitions are made on center (common practice, no source)',
    ),
    upright: optional(
      choice(upright, { says: 'how the second end stands to the first, seen from the side' }),
      'centered',
      'most transitions are made on center (common practice, no source)',
    ),
    shift_across: shift('how much farther to the right the second end stands (to the left: less than 0)'),
    shift_up: shift('how much higher the second end stands (lower: less than 0)'),
    first_neck: neckArgument('first'),
    second_neck: neckArgument('second'),
    pocket: pocketArgument('what the pocket takes on each edge of the top and the bottom'),
    flange: flangeArgument('what the flange takes on each edge of the sides'),
  },
  formula: [
    String.raw`\text{left, right} = \tfrac{1}{2} (\mathrm{first\_width} - \mathrm{second\_width}) \pm a \quad \text{(inward at the second end)}`,
    String.raw`\text{bottom, top} = \tfrac{1}{2} (\mathrm{first\_depth} - \mathrm{second\_depth}) \pm u`,
    String.raw`a = \tfrac{j}{2} (\mathrm{first\_width} - \mathrm{second\_width}) + \mathrm{shift\_across}, \quad j = 0 \text{ (centered)},\ -1 \text{ (flush left)},\ 1 \text{ (flush right)}`,
    String.raw`u = \tfrac{k}{2} (\mathrm{first\_depth} - \mathrm{second\_depth}) + \mathrm{shift\_up}, \quad k = 0 \text{ (centered)},\ -1 \text{ (flush bottom)},\ 1 \text{ (flush top)}`,
    String.raw`\text{slant of a panel} = \sqrt{\mathrm{length}^2 + d^2}, \quad d = \text{the one of left, right, bottom, top that it is}`,
    String.raw`\text{corner line} = \sqrt{\mathrm{length}^2 + d_1^2 + d_2^2}, \quad d_1, d_2 = \text{those of the two panels that meet there}`,
  ],
  work: (given): Outcome<TransitionPattern, CallFault> => {
    const made = transition({
      firstWidth: given.first_width,
      firstDepth: given.first_depth,
      secondWidth: given.second_width,
      secondDepth: given.second_depth,
      length: given.length,
      sideways: given.sideways,
      upright: given.upright,
      shiftAcross: given.shift_across,
      shiftUp: given.shift_up,
      firstNeck: given.first_neck,
      secondNeck: given.second_neck,
      pocket: given.pocket,
      flange: given.flange,
    });
    const pattern = askPattern(
      made.panels.map((panel) => panel.piece),
      given,
    );
    return pattern.ok ? done({ ...pattern.value, made }) : pattern;
  },
  result: ({ asked }) => asked,
  steps: (pattern, { length }) => [...trueLengths(pattern.made, length), ...patternSteps(pattern)],
  drawing: ({ pieces, made }, given) => {
    const first = `${sayInches(given.first_width)} × ${sayInches(given.first_depth)}`;
    const second = `${sayInches(given.second_width)} × ${sayInches(given.second_depth)}`;
    const kind = made.offset.across === 0 && made.offset.up === 0 ? 'on center' : 'offset';
    return patternDrawing(`Transition ${first} to ${second}, ${kind}`, pieces);
  },
  cautions: (pattern) => [...patternCautions(pattern), ...slopeCautions(pattern.made.panels)],
  sources: ['geometry', 'pittsburgh-how-to', 'sheet-shop-practice'],
  examples: [
    {
      says: 'the area of the top of 20 × 12 to 14 × 8 in, 12 in long, on center, without straight ends',
      given: {
        first_width: 20,
        first_depth: 12,
        second_width: 14,
        second_depth: 8,
        length: 12,
        what: 'area',
        first_neck: 0,
        second_neck: 0,
      },
      gives: 1.4362,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the left side of 24 × 10 to 16 × 8 in, 18 in long, flush right and flush bottom: its blank length',
      given: {
        first_width: 24,
        first_depth: 10,
        second_width: 16,
        second_depth: 8,
        length: 18,
        part: 3,
        what: 'length',
        sideways: 'flush right',
        upright: 'flush bottom',
        first_neck: 0,
        second_neck: 0,
        flange: 0,
      },
      gives: 19.6977,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'how wide to shear the top of the same, with 1 in straight ends and 1 in pockets',
      given: {
        first_width: 24,
        first_depth: 10,
        second_width: 16,
        second_depth: 8,
        length: 18,
        sideways: 'flush right',
        upright: 'flush bottom',
      },
      gives: 26,
      tolerance: 0.0001,
      source: 'geometry',
    },
  ],
});

function trueLengths(made: Transition, length: Inches): readonly Step[] {
  /** How far a panel leans. */
  const lean = (name: TransitionPanel['name']): number => {
    const slant = made.panels.find((panel) => panel.name === name)?.slant ?? length;
    return Math.sqrt(Math.max(0, slant ** 2 - length ** 2));
  };
  const { leftBottom, leftTop, rightBottom, rightTop } = made.corners;
  const corners = [
    ['left', 'bottom', leftBottom],
    ['left', 'top', leftTop],
    ['right', 'bottom', rightBottom],
    ['right', 'top', rightTop],
  ] as const;
  return [
    ...made.panels.map(
      ({ name, slant }): Step => ({
        label: `True length across the ${name}`,
        sum: slantSum(length, lean(name)),
        value: slant,
        unit: 'in',
        source: 'geometry',
      }),
    ),
    ...corners.map(
      ([sideways, upward, value]): Step => ({
        label: `Corner line, ${sideways} ${upward}`,
        sum: slantSum(length, lean(sideways), lean(upward)),
        value,
        unit: 'in',
        source: 'geometry',
      }),
    ),
  ];
}

/** Past these slopes the air leaves the wall. */
function slopeCautions(panels: readonly TransitionPanel[]): readonly Caution[] {
  const steepest = panels.reduce((most, panel) => Math.max(most, panel.slope), 0);
  if (steepest <= 20) return [];
  const slope = figure(steepest, 1);
  return steepest > 45
    ? [
        {
          level: 'look',
          sentence: `The steepest side slopes ${slope}°. The rules of one state allow at most 45°: make it longer.`,
          source: 'state-rule-1346-0603',
        },
      ]
    : [
        {
          level: 'look',
          sentence: `The steepest side slopes ${slope}°. A city specification allows 20° in a run, and at equipment 30° entering and 45° leaving.`,
          source: 'city-duct-specification',
        },
      ];
}
