import { done } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import { eccentricCone, seamLines } from '../../trade/blank/eccentric-cone.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import { patternAnswers, patternCautions } from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';
import {
  askFitting,
  divisionsArgument,
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
  steppedArgument,
  thicknessArguments,
} from './round-pattern.ts';

export const blankEccentricCone = defineFunction({
  name: 'BLANK.ECCENTRIC',
  says: 'The flat pattern of a round reducer off center, or of a slanted pipe, by true lengths.',
  words: [
    'eccentric reducer',
    'offset reducer',
    'oblique cone',
    'flat on one side',
    'true length',
    'radial line',
    'triangulation',
  ],
  gives: { label: 'Eccentric cone', ...fittingGives },
  unitOf: fittingUnit,
  arguments: {
    first_diameter: roundDiameter('the diameter of the first end'),
    second_diameter: roundDiameter('the diameter of the second end'),
    height: heightArgument,
    offset: optional<Inches | null>(
      quantity('in', {
        says: 'how far the middle of the second end lies to the side of that of the first',
        least: 0,
        most: 120,
        why: 'an offset of more than 10 ft is a run of duct, not a fitting',
      }),
      null,
      'half the difference of the diameters, which makes one side straight',
    ),
    what: optional(
      choice([...patternAnswers, 'true length', 'angle'], {
        says: `the true length of the line at a station, the angle between the edges of the whole pattern, or the ${patternSays}`,
      }),
      'width',
      'sheets are sheared to width first',
    ),
    station: stationArgument(
      'stations count from the left seam, points and sides from the lower left round to the left',
    ),
    divisions: divisionsArgument,
    stepped: steppedArgument,
    pieces: optional(
      choice([1, 2], { says: 'one piece, or two halves alike of which one is turned over' }),
      1,
      'most reducers fit on one sheet',
    ),
    seam_on: optional(
      choice(seamLines, { says: 'on which line of one piece the seam lies' }),
      'short line',
      'the shortest seam is the least work (common practice, no source)',
    ),
    seam: seamInAll,
    first_end: endArgument(
      'what the joint takes beyond the curve of the first end',
      0,
      'the bare cone; most are joined to a straight collar (common practice, no source)',
    ),
    second_end: endArgument(
      'what the joint takes beyond the curve of the second end',
      0,
      'the bare cone; most are joined to a straight collar (common practice, no source)',
    ),
    ...thicknessArguments,
  },
  formula: [
    String.raw`r_1, r_2 = \frac{D + c \times \mathrm{thickness}}{2}, \quad D = \mathrm{first\_diameter},\ \mathrm{second\_diameter}, \quad c = 1 \text{ (inside)},\ -1 \text{ (outside)},\ 0 \text{ (ignored)}`,
    String.raw`\text{line}(p) = \sqrt{(\mathrm{offset} + (r_2 - r_1) \cos p)^2 + ((r_2 - r_1) \sin p)^2 + \mathrm{height}^2}`,
    String.raw`\text{step} = \frac{2 \pi r}{\mathrm{divisions}} \text{ (arcs)}, \quad 2 r \sin\frac{\pi}{\mathrm{divisions}} \text{ (chords)}`,
  ],
  work: (given) => {
    const [first, second] = [middleOf(given.first_diameter, given), middleOf(given.second_diameter, given)];
    const offset = given.offset ?? inches(Math.abs(first - second) / 2);
    const made = fromTrade(
      eccentricCone({
        firstDiameter: first,
        secondDiameter: second,
        height: given.height,
        offset,
        divisions: given.divisions,
        stepped: given.stepped,
        pieces: given.pieces,
        seamOn: given.seam_on,
        seam: given.seam,
        firstEnd: given.first_end,
        secondEnd: given.second_end,
      }),
    );
    if (!made.ok) return made;
    const { lines, firstStep, secondStep, turn, piece } = made.value;
    const taper = figure((second - first) / 2, 4);
    const stepSum = (diameter: number) =>
      given.stepped === 'arcs'
        ? `π × ${figure(diameter, 4)} ÷ ${given.divisions}`
        : `${figure(diameter, 4)} × sin(180° ÷ ${given.divisions})`;
    const asked = askFitting(
      {
        pieces: [piece],
        figures: [
          ...middleFigures([given.first_diameter, given.second_diameter], given),
          {
            is: '',
            label: 'Offset',
            sum:
              given.offset === null
                ? `(${figure(Math.max(first, second), 4)} − ${figure(Math.min(first, second), 4)}) ÷ 2`
                : '',
            value: offset,
            unit: 'in',
          },
          {
            is: '',
            label: `One of ${given.divisions} parts of the first end`,
            sum: stepSum(first),
            value: firstStep,
            unit: 'in',
          },
          {
            is: '',
            label: `One of ${given.divisions} parts of the second end`,
            sum: stepSum(second),
            value: secondStep,
            unit: 'in',
          },
          {
            is: 'angle',
            label: 'Angle between the edges of the whole pattern',
            sum: 'the angles of all triangles together',
            value: turn,
            unit: 'deg',
          },
        ],
        tables: [
          {
            is: 'true length',
            label: 'True length',
            sum: `√((${figure(offset, 4)} + ${taper} cos p)² + (${taper} sin p)² + ${figure(given.height, 4)}²)`,
            values: lines,
          },
        ],
      },
      given,
    );
    return asked.ok ? done({ ...asked.value, offset }) : asked;
  },
  result: ({ asked }) => asked,
  steps: (answer) => fittingSteps(answer),
  drawing: ({ pieces, offset }, given) =>
    patternDrawing(
      `Reducer ${sayInches(given.first_diameter)} to ${sayInches(given.second_diameter)}, ${sayInches(offset)} off center`,
      pieces,
    ),
  cautions: ({ pattern }) => patternCautions(pattern),
  sources: ['geometry', 'drafting-textbook-1921', 'round-elbow-course', 'sheet-shop-practice'],
  examples: [
    {
      says: 'the true length on the middle line of a reducer 12 to 8 in, 12 in long, flat on one side',
      given: {
        first_diameter: 12,
        second_diameter: 8,
        height: 12,
        what: 'true length',
        station: 4,
        divisions: 12,
      },
      gives: 12.3288,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the angle of the same pattern, 24 chords',
      given: {
        first_diameter: 12,
        second_diameter: 8,
        height: 12,
        offset: 2,
        what: 'angle',
        divisions: 24,
        stepped: 'chords',
      },
      gives: 57.882,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'once round the second end of the same, in two halves: one of them',
      given: {
        first_diameter: 12,
        second_diameter: 8,
        height: 12,
        what: 'side',
        station: 3,
        pieces: 2,
      },
      gives: 12.5664,
      tolerance: 0.0001,
      source: 'geometry',
    },
  ],
});
