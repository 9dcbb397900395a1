import { done, type Outcome } from '../../base/outcome.ts';
import {
  type Make,
  makes,
  partNumbered,
  type RectangularPart,
  type RectangularSizes,
  rectangularParts,
} from '../../trade/blank/rectangular.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Drawing, Mark } from '../drawing.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayCount, sayCut, sayInches } from '../say.ts';
import type { Caution, Step } from '../working.ts';
import { cutting, testBlank } from './cautions.ts';
import { flatHeight, flatMarks } from './flat-drawing.ts';

interface RectangularBlank {
  readonly parts: readonly RectangularPart[];
  readonly chosen: RectangularPart;
}

const side = (says: string) =>
  quantity('in', {
    says,
    least: 2,
    most: 120,
    why: 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
  });

const seamHalf = (says: string) =>
  quantity('in', {
    says,
    least: 0,
    most: 3,
    why: 'no half of a lengthwise seam takes more than 3 in of sheet',
  });

/** In inches: 4 × 10 ft and 5 × 10 ft are the largest usual sheets. */
const longestSheet = 120;

const outsideSizes: Caution = {
  level: 'look',
  sentence: 'With a bend deduction, width and depth are taken as outside sizes of the metal.',
};

const widerThanSheet: Caution = {
  level: 'look',
  sentence:
    'This blank is wider than a 10 ft sheet is long. Divide the duct into more pieces, or cut it from coil.',
  source: 'sheet-shop-practice',
};

/** The number of pieces stands for its make; three pieces is not a usual one. */
const byCount: Readonly<Record<1 | 2 | 4, Make>> = { 1: 'one piece', 2: 'two L halves', 4: 'four pieces' };

export const blankRectangular = defineFunction({
  name: 'BLANK.RECT',
  says: 'How wide to cut each flat blank of a straight rectangular duct, and where its bend lines go.',
  words: [
    'rectangular',
    'square duct',
    'trunk',
    'plenum',
    'wrap-around',
    'l half',
    'half section',
    'pittsburgh',
    'pocket',
    'brake',
    'layout',
  ],
  gives: { label: 'Blank width', unit: 'in' },
  arguments: {
    width: side('the width of the duct'),
    depth: side('the depth of the duct'),
    made: optional(
      choice([...makes, 1, 2, 4], { says: 'into how many pieces the duct is divided' }),
      'two L halves',
      'halves fit on stock sheets where a one-piece wrap often does not (common practice, no source)',
    ),
    part: optional(
      quantity('count', {
        says: 'which blank: 1 is the wrap, the half, the U or the wide side; 2 is the flat or the narrow side',
        least: 1,
        most: 2,
        whole: true,
        why: 'a straight duct has at most two kinds of blank',
      }),
      1,
      'it is the larger blank of most ducts',
    ),
    pocket: optional(
      seamHalf('what the pocket, the female half of each lengthwise seam, takes'),
      1,
      'lock formers often take 1 in for 26 and 24 ga (common practice, no source); use your machine’s figure',
    ),
    flange: optional(
      seamHalf('what the flange, the male half of each lengthwise seam, takes'),
      0.25,
      'a Pittsburgh lock has a flange of 1/4 in (how-to on the joint)',
    ),
    bend_deduction: optional(
      quantity('in', {
        says: 'what to take off for each bend; width and depth are outside sizes then',
        least: 0,
        most: 1,
        why: 'sheet for duct loses far less than 1 in at a bend',
      }),
      0,
      'below 20 ga most shops take bends as sharp (common practice, no source)',
    ),
  },
  formula: [
    String.raw`\text{one piece:}\quad 2 (\mathrm{width} + \mathrm{depth}) + \mathrm{pocket} + \mathrm{flange} - 3 \times \mathrm{bend\_deduction}`,
    String.raw`\text{two L halves:}\quad \mathrm{width} + \mathrm{depth} + \mathrm{pocket} + \mathrm{flange} - \mathrm{bend\_deduction}`,
    String.raw`\text{U and flat:}\quad \mathrm{width} + 2 \times \mathrm{depth} + 2 \times \mathrm{flange} - 2 \times \mathrm{bend\_deduction} \text{ (part 1)}, \quad \mathrm{width} + 2 \times \mathrm{pocket} \text{ (part 2)}`,
    String.raw`\text{four pieces:}\quad \mathrm{width} + 2 \times \mathrm{pocket} \text{ (part 1)}, \quad \mathrm{depth} + 2 \times \mathrm{flange} \text{ (part 2)}`,
  ],
  work: (given): Outcome<RectangularBlank, CallFault> => {
    const make = makeOf(given.made);
    const parts = rectangularParts(make, sizesOf(given));
    const chosen = fromTrade(partNumbered(parts, make, given.part));
    return chosen.ok ? done({ parts, chosen: chosen.value }) : chosen;
  },
  result: ({ chosen }) => chosen.width,
  steps: ({ parts, chosen }, { bend_deduction }) => [
    ...parts.filter((part) => part !== chosen).flatMap((part) => partSteps(part, bend_deduction)),
    ...partSteps(chosen, bend_deduction),
  ],
  drawing: ({ parts }, { made }) => blankDrawing(parts, makeOf(made)),
  cautions: ({ chosen }, { bend_deduction }) => [
    ...cutting,
    testBlank,
    ...(bend_deduction > 0 ? [outsideSizes] : []),
    ...(chosen.width > longestSheet ? [widerThanSheet] : []),
  ],
  sources: ['geometry', 'pittsburgh-how-to', 'sheet-shop-practice'],
  examples: [
    {
      says: 'a 20 × 8 in duct in one piece, pocket 1 in and flange 1/4 in',
      given: { width: 20, depth: 8, made: 'one piece' },
      gives: 57.25,
      source: 'geometry',
    },
    {
      says: 'each L half of the same duct',
      given: { width: 20, depth: 8, made: 'two L halves' },
      gives: 29.25,
      source: 'geometry',
    },
    {
      says: 'the flat that closes a U of the same duct',
      given: { width: 20, depth: 8, made: 'U and flat', part: 2 },
      gives: 22,
      source: 'geometry',
    },
    {
      says: 'the narrow sides of the same duct in four pieces',
      given: { width: 20, depth: 8, made: 4, part: 2 },
      gives: 8.5,
      source: 'geometry',
    },
    {
      says: 'a wrap by outside sizes in 24 ga, 0.0527 in off for each of three bends',
      given: { width: 20, depth: 8, made: 1, part: 1, pocket: 1, flange: 0.25, bend_deduction: 0.0527 },
      gives: 57.0918,
      tolerance: 0.001,
      source: 'geometry',
    },
  ],
});

function makeOf(made: Make | 1 | 2 | 4): Make {
  return typeof made === 'number' ? byCount[made] : made;
}

function sizesOf(
  given: Omit<RectangularSizes, 'bendDeduction'> & {
    readonly bend_deduction: RectangularSizes['bendDeduction'];
  },
): RectangularSizes {
  const { width, depth, pocket, flange, bend_deduction } = given;
  return { width, depth, pocket, flange, bendDeduction: bend_deduction };
}

function partSteps(part: RectangularPart, deduction: number): readonly Step[] {
  const sides = part.strips.map((strip) => figure(strip.size, 4)).join(' + ');
  const off = part.bends > 0 && deduction > 0 ? ` − ${part.bends} × ${figure(deduction, 4)}` : '';
  const name = `Part ${part.part}, ${part.name}`;
  return [
    { label: `${name}: how many`, sum: '', value: part.pieces, unit: 'count' },
    {
      label: `${name}: lines from the left edge`,
      sum: part.strips.map((strip) => strip.is).join(' | '),
      value: part.lines.length > 0 ? part.lines.map(sayInches).join(', ') : 'none',
      unit: 'count',
      source: 'geometry',
    },
    {
      label: `${name}: blank width`,
      sum: `${sides}${off}`,
      value: part.width,
      unit: 'in',
      source: 'geometry',
    },
  ];
}

function blankDrawing(parts: readonly RectangularPart[], make: Make): Drawing {
  const blanks = parts.map(
    (part) => `${sayCount(part.pieces, 'blank')} ${sayCut(part.width)} wide (${part.name})`,
  );
  return {
    title: `Flat blanks, made as ${make}`,
    describes: `${blanks.join(' and ')}. Dashed lines are bends; the strips at the edges are for the seams.`,
    height: parts.length * flatHeight,
    marks: parts.flatMap((part, index) => partMarks(part, index * flatHeight)),
  };
}

function partMarks(part: RectangularPart, top: number): readonly Mark[] {
  const strips = part.strips.map(({ is, flat }) =>
    is === 'width' || is === 'depth'
      ? ({ is: 'panel', width: flat, name: is } as const)
      : ({ is: 'seam', width: flat, name: is } as const),
  );
  const across = `${part.pieces} × ${part.name}, ${sayCut(part.width)} wide`;
  return flatMarks({ strips, across }, top);
}
