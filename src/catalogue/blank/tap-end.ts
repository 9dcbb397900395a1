import { done } from '../../base/outcome.ts';
import { inches } from '../../base/quantity.ts';
import { roundTap, tapEnd, tapSeams } from '../../trade/blank/round-tap.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import { patternCautions } from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';
import {
  askFitting,
  curveAnswers,
  curveSays,
  endArgument,
  fittingGives,
  fittingSteps,
  fittingUnit,
  seamInAll,
  stationArgument,
} from './round-pattern.ts';
import { markFromTheBranch, sayTrunk, tapArguments, tapDivisions, tapFormulas } from './round-tap.ts';

export const blankTapEnd = defineFunction({
  name: 'BLANK.TAPEND',
  says: 'The flat blank of a round branch, cut to sit on its trunk at any angle, on center or off.',
  words: ['tap', 'branch', 'saddle', 'takeoff', 'collar', 'tee', 'lateral', 'wye', 'fish mouth', 'ordinates'],
  gives: { label: 'Branch', ...fittingGives },
  unitOf: fittingUnit,
  arguments: {
    ...tapArguments,
    what: optional(
      choice(['ordinate', 'saddle', 'axis', 'girth', ...curveAnswers], {
        says: `the ordinate (length of the branch at a station), the saddle (longest less shortest), the axis (from the middle of the trunk, or from the flat wall, to the square end), the girth, or the ${curveSays}`,
      }),
      'width',
      'sheets are sheared to width first',
    ),
    station: stationArgument('stations count from the left seam, sides from the lower one round to the left'),
    divisions: tapDivisions,
    shortest: optional(
      quantity('in', {
        says: 'the shortest line of the branch, from its square end to the trunk, joint left out',
        least: 0.5,
        most: 120,
        why: 'a shorter branch leaves nothing to hold, and over 10 ft it is duct of its own',
      }),
      3,
      'a starting collar has 2 to 3 in of body (common practice, no source)',
    ),
    seam_at: optional(
      choice(tapSeams, {
        says: 'where the lengthwise seam lies: in the throat, the side to which the branch leans, or at the heel',
      }),
      'throat',
      'the line in the throat is the shortest, so the seam is short (common practice, no source)',
    ),
    seam: seamInAll,
    tabs: endArgument(
      'what is left beyond the curve, to turn out or to cut into tabs',
      0.5,
      'tabs of 3/8 to 1/2 in are cut (common practice, no source)',
    ),
    end: endArgument(
      'what the joint takes beyond the square end',
      1.5,
      'a crimp is about 1 1/2 in long (common practice, no source)',
    ),
  },
  formula: [
    ...tapFormulas,
    String.raw`\text{axis} = \max a + \mathrm{shortest}, \quad \text{ordinate} = \text{axis} - a(p), \quad \text{saddle} = \max a - \min a, \quad \text{girth} = \pi \times \mathrm{branch}`,
  ],
  work: (given) => {
    const tap = fromTrade(roundTap(given));
    if (!tap.ok) return tap;
    const made = tapEnd(given.branch, tap.value, {
      shortest: given.shortest,
      seamAt: given.seam_at,
      seam: given.seam,
      tabs: given.tabs,
      end: given.end,
    });
    const [most, least] = [tap.value.farthest, tap.value.nearest].map((one) => figure(one, 4));
    const asked = askFitting(
      {
        pieces: [made.piece],
        isCurve: true,
        figures: [
          {
            is: 'girth',
            label: 'Girth',
            sum: `π × ${figure(given.branch, 4)}`,
            value: made.girth,
            unit: 'in',
          },
          {
            is: 'saddle',
            label: 'Saddle, longest line less shortest',
            sum: `${most} − ${least}`,
            value: tap.value.saddle,
            unit: 'in',
          },
          {
            is: 'axis',
            label:
              given.trunk === null
                ? 'From the wall along the branch to its square end'
                : 'From the middle of the trunk along the branch to its square end',
            sum: `${most} + ${figure(given.shortest, 4)}`,
            value: made.axis,
            unit: 'in',
          },
        ],
        tables: [
          {
            is: 'ordinate',
            label: 'Ordinate, length of the branch',
            sum: `${figure(made.axis, 4)} − a; the first mark is the seam, ${given.seam_at === 'throat' ? 'in the throat' : 'at the heel'}`,
            values: made.ordinates,
          },
        ],
      },
      given,
    );
    return asked.ok ? done(asked.value) : asked;
  },
  result: ({ asked }) => asked,
  steps: (answer) => fittingSteps(answer),
  drawing: ({ pieces }, { branch, trunk, angle }) =>
    patternDrawing(
      `Branch of ${sayInches(branch)} at ${figure(angle, 2)}° on ${sayTrunk(trunk, (size) => sayInches(inches(size)))}`,
      pieces,
    ),
  cautions: ({ pattern }) => [...patternCautions(pattern), markFromTheBranch],
  sources: ['geometry', 'sheet-shop-practice'],
  examples: [
    {
      says: 'the saddle of an 8 in branch square on a 12 in trunk',
      given: { branch: 8, trunk: 12, what: 'saddle' },
      gives: 1.5279,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'its longest ordinate, 3 in more than the saddle, at station 4 of 12 spaces',
      given: { branch: 8, trunk: 12, what: 'ordinate', station: 4, divisions: 12 },
      gives: 4.5279,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the heel of a 6 in branch at 45° on a 10 in trunk, 2 in long in the throat',
      given: { branch: 6, trunk: 10, angle: 45, what: 'ordinate', shortest: 2, seam_at: 'heel' },
      gives: 8,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'how wide to shear an 8 in branch at 45° on an 8 in trunk, seam of 1 in included',
      given: { branch: 8, trunk: 8, angle: 45 },
      gives: 26.1327,
      tolerance: 0.0001,
      source: 'geometry',
    },
  ],
});
