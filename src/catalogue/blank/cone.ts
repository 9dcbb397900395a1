import { done } from '../../base/outcome.ts';
import { inches } from '../../base/quantity.ts';
import { cone } from '../../trade/blank/cone.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import type { Caution } from '../working.ts';
import { patternAnswers, patternCautions } from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';
import {
  askFitting,
  endArgument,
  fittingGives,
  fittingSteps,
  fittingUnit,
  heightArgument,
  middleFigures,
  middleOf,
  patternSays,
  roundDiameter,
  seamInAll,
  stationArgument,
  thicknessArguments,
} from './round-pattern.ts';

const answers = [
  ...patternAnswers,
  'outer radius',
  'inner radius',
  'angle',
  'chord',
  'slant',
  'surface',
] as const;

export const blankCone = defineFunction({
  name: 'BLANK.CONE',
  says: 'The flat sector of a round reducer on center, or of a pointed cone.',
  words: ['cone', 'reducer', 'increaser', 'taper', 'frustum', 'sector', 'concentric reducer', 'weather cap'],
  gives: { label: 'Cone', ...fittingGives },
  unitOf: fittingUnit,
  arguments: {
    first_diameter: roundDiameter('the diameter of one end'),
    second_diameter: quantity('in', {
      says: 'the diameter of the other end; 0 makes a point',
      least: 0,
      most: 120,
      why: 'pipe over 10 ft is not shop duct, so it is most likely a slip of the unit',
    }),
    height: heightArgument,
    what: optional(
      choice(answers, {
        says: `the radii, the angle, the chord or the slant of the sector, the surface of the whole cone, or the ${patternSays}`,
      }),
      'width',
      'sheets are sheared to width first',
    ),
    station: stationArgument('counted from the left end of the small curve, round to the left'),
    pieces: optional(
      quantity('count', {
        says: 'into how many equal pieces the cone is divided',
        least: 1,
        most: 12,
        whole: true,
        why: 'more seams than 12 leave no cone between them',
      }),
      1,
      'most reducers fit on one sheet',
    ),
    seam: seamInAll,
    large_end: endArgument(
      'what the joint takes beyond the curve of the large end',
      0,
      'the bare cone; most are joined to a straight collar (common practice, no source)',
    ),
    small_end: endArgument(
      'what the joint takes beyond the curve of the small end',
      0,
      'the bare cone; most are joined to a straight collar (common practice, no source)',
    ),
    ...thicknessArguments,
  },
  formula: [
    String.raw`D_1, D_2 = \text{the larger and the smaller of } \mathrm{first\_diameter} + c \times \mathrm{thickness},\ \mathrm{second\_diameter} + c \times \mathrm{thickness}`,
    String.raw`c = 1 \text{ (inside)},\ -1 \text{ (outside)},\ 0 \text{ (ignored)}`,
    String.raw`s = \sqrt{\mathrm{height}^2 + \left(\frac{D_1 - D_2}{2}\right)^2} \quad \text{(slant)}`,
    String.raw`R_1 = \frac{D_1 s}{D_1 - D_2}, \quad R_2 = R_1 - s \quad \text{(outer and inner radius)}`,
    String.raw`\text{angle of a piece} = \frac{180 \times (D_1 - D_2)}{s \times \mathrm{pieces}}`,
  ],
  work: (given) => {
    const diameters = [given.first_diameter, given.second_diameter];
    // An end no wider than the sheet is thick is a point.
    const [first, second] = diameters.map((one) =>
      one <= given.thickness ? inches(0) : middleOf(one, given),
    );
    const made = fromTrade(
      cone({
        firstDiameter: first ?? given.first_diameter,
        secondDiameter: second ?? given.second_diameter,
        height: given.height,
        pieces: given.pieces,
        seam: given.seam,
        largeEnd: given.large_end,
        smallEnd: given.small_end,
      }),
    );
    if (!made.ok) return made;
    const { large, small, slant, outerRadius, innerRadius, angle, chord, area, piece } = made.value;
    const [l, s, t] = [large, small, slant].map((one) => figure(one, 4));
    const shared = given.pieces === 1 ? '' : ` ÷ ${given.pieces}`;
    const asked = askFitting(
      {
        pieces: [piece],
        figures: [
          ...middleFigures(
            diameters.filter((one) => one > given.thickness),
            given,
          ),
          {
            is: 'slant',
            label: 'Slant',
            sum: `√(${figure(given.height, 4)}² + ((${l} − ${s}) ÷ 2)²)`,
            value: slant,
            unit: 'in',
          },
          {
            is: 'outer radius',
            label: 'Outer radius',
            sum: `${l} × ${t} ÷ (${l} − ${s})`,
            value: outerRadius,
            unit: 'in',
          },
          {
            is: 'inner radius',
            label: 'Inner radius',
            sum: `${s} × ${t} ÷ (${l} − ${s})`,
            value: innerRadius,
            unit: 'in',
          },
          {
            is: 'angle',
            label: 'Angle of the sector',
            sum: `180 × (${l} − ${s}) ÷ ${t}${shared}`,
            value: angle,
            unit: 'deg',
          },
          {
            is: 'chord',
            label: 'Straight across the outer curve',
            sum: `2 × ${figure(outerRadius, 4)} × sin(${figure(angle, 4)}° ÷ 2)`,
            value: chord,
            unit: 'in',
          },
          {
            is: 'surface',
            label: 'Surface of the cone, without seams',
            sum: `π × (${l} + ${s}) × ${t} ÷ 2 ÷ 144`,
            value: area,
            unit: 'sqft',
          },
        ],
        tables: [],
      },
      given,
    );
    return asked.ok ? done({ ...asked.value, made: made.value }) : asked;
  },
  result: ({ asked }) => asked,
  steps: (answer) => fittingSteps(answer),
  drawing: ({ pieces, made }) =>
    patternDrawing(
      made.small === 0
        ? `Cone of ${sayInches(made.large)}`
        : `Reducer ${sayInches(made.large)} to ${sayInches(made.small)}, on center`,
      pieces,
    ),
  cautions: ({ pattern, made }) => [
    ...patternCautions(pattern),
    ...(made.outerRadius > longestTrammel ? [longTaper] : []),
  ],
  sources: ['geometry', 'drafting-textbook-1921', 'sheet-shop-practice'],
  examples: [
    {
      says: 'the outer radius for a reducer 10 to 8 in, 6 in long',
      given: { first_diameter: 10, second_diameter: 8, height: 6, what: 'outer radius' },
      gives: 30.4138,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the angle of the same sector',
      given: { first_diameter: 10, second_diameter: 8, height: 6, what: 'angle' },
      gives: 59.1836,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'how wide to shear the bare sector of 14 to 10 in, 12 in long',
      given: { first_diameter: 14, second_diameter: 10, height: 12, seam: 0 },
      gives: 42.0529,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the surface of a cone 5 in at its base and 12 in on the slant, from a textbook',
      given: {
        first_diameter: 5,
        second_diameter: 0,
        height: Math.sqrt(12 ** 2 - 2.5 ** 2),
        what: 'surface',
      },
      gives: 94.248 / 144,
      tolerance: 0.00001,
      source: 'drafting-textbook-1921',
    },
  ],
});

/** In inches: what can be swung on a 10 ft bench. */
const longestTrammel = 120;

const longTaper: Caution = {
  level: 'look',
  sentence:
    'The outer radius is over 10 ft, past most benches. Lay the curve out by its points, or by true lengths with BLANK.ECCENTRIC at an offset of 0.',
  source: 'sheet-shop-practice',
};
