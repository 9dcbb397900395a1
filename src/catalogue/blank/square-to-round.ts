import { done } from '../../base/outcome.ts';
import { type EndSide, ends, type SquareToRound, squareToRound } from '../../trade/blank/square-to-round.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import { ductSide, patternAnswers, patternCautions } from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';
import {
  askFitting,
  divisionsArgument,
  endArgument,
  type FittingFigure,
  type FittingTable,
  fittingGives,
  fittingSteps,
  fittingUnit,
  heightArgument,
  patternSays,
  roundDiameter,
  seamInAll,
  stationArgument,
  steppedArgument,
} from './round-pattern.ts';

const answers = [...patternAnswers, 'corner line', 'flat height', 'step', 'surface'] as const;

const offsetArgument = (says: string) =>
  optional(
    quantity('in', {
      says,
      least: -120,
      most: 120,
      why: 'an offset of more than 10 ft is a run of duct, not a fitting',
    }),
    0,
    'most are made on center (common practice, no source)',
  );

export const blankSquareToRound = defineFunction({
  name: 'BLANK.SQUARETOROUND',
  says: 'The flat pattern of a square or rectangle to round, on center or off, by true lengths.',
  words: [
    'square to round',
    'rectangle to round',
    'transition',
    'straight boot',
    'takeoff',
    'triangulation',
    'true length',
    'bend lines',
  ],
  gives: { label: 'Square to round', ...fittingGives },
  unitOf: fittingUnit,
  arguments: {
    width: ductSide('the rectangular end from left to right'),
    depth: ductSide('the rectangular end from front to back'),
    diameter: roundDiameter('the diameter of the round end'),
    height: heightArgument,
    what: optional(
      choice(answers, {
        says: `the true length of a corner line or the height of a flat triangle at a station, one part (step) of the circle, the surface of the whole fitting, or the ${patternSays}`,
      }),
      'width',
      'sheets are sheared to width first',
    ),
    station: stationArgument(
      'corner lines and flat triangles count from the first seam round to the left as one looks into the round end, points and sides from the lower left round to the left',
    ),
    part: optional(
      quantity('count', {
        says: 'which half or quarter, counted from the first seam',
        least: 1,
        most: 4,
        whole: true,
        why: 'it is made in at most four pieces',
      }),
      1,
      'it is the piece that is laid out first',
    ),
    divisions: divisionsArgument,
    stepped: steppedArgument,
    offset_across: offsetArgument(
      'how far the middle of the round end lies to the right of that of the other',
    ),
    offset_back: offsetArgument('how far the middle of the round end lies to the back of that of the other'),
    pieces: optional(
      choice([1, 2, 4], {
        says: 'in one piece, in halves or in quarters; seams lie on the middles of sides',
      }),
      1,
      'small ones are bent from one piece; larger ones do not go into the brake (common practice, no source)',
    ),
    seam_on: optional(
      choice(ends, { says: 'on the middle of which side the first seam lies' }),
      'front',
      'a seam on a flat triangle is not rolled (common practice, no source)',
    ),
    seam: seamInAll,
    square_end: endArgument(
      'what the joint takes beyond the rectangular end',
      1,
      'a slip covers about 1 in of the duct (common practice, no source)',
    ),
    round_end: endArgument(
      'what the joint takes beyond the round end',
      0.5,
      'a collar is fastened to tabs of 3/8 to 1/2 in (common practice, no source)',
    ),
  },
  formula: [
    String.raw`\text{line}(p) = \sqrt{(\mathrm{offset\_across} + r \cos p - x)^2 + (\mathrm{offset\_back} + r \sin p - y)^2 + \mathrm{height}^2}`,
    String.raw`r = \frac{\mathrm{diameter}}{2}, \quad x = \pm \frac{\mathrm{width}}{2}, \quad y = \pm \frac{\mathrm{depth}}{2} \quad \text{(corner)}`,
    String.raw`\text{height of a flat triangle} = \sqrt{d^2 + \mathrm{height}^2}, \quad d = \text{level distance from its side to the mark that faces it}`,
    String.raw`\text{step} = \frac{2 \pi r}{\mathrm{divisions}} \text{ (arcs)}, \quad 2 r \sin\frac{\pi}{\mathrm{divisions}} \text{ (chords)}`,
  ],
  work: (given) => {
    const made = fromTrade(
      squareToRound({
        width: given.width,
        depth: given.depth,
        diameter: given.diameter,
        height: given.height,
        offsetAcross: given.offset_across,
        offsetBack: given.offset_back,
        divisions: given.divisions,
        stepped: given.stepped,
        pieces: given.pieces,
        seamOn: given.seam_on,
        seam: given.seam,
        squareEnd: given.square_end,
        roundEnd: given.round_end,
      }),
    );
    if (!made.ok) return made;
    const asked = askFitting(
      {
        pieces: made.value.blanks,
        figures: figuresOf(made.value, given),
        tables: tablesOf(made.value, given.height),
      },
      given,
    );
    return asked.ok ? done(asked.value) : asked;
  },
  result: ({ asked }) => asked,
  steps: (answer) => fittingSteps(answer),
  drawing: ({ pieces }, given) => {
    const isCentered = given.offset_across === 0 && given.offset_back === 0;
    return patternDrawing(
      `${sayInches(given.width)} × ${sayInches(given.depth)} to ${sayInches(given.diameter)} round, ${isCentered ? 'on center' : 'off center'}`,
      pieces,
    );
  },
  cautions: ({ pattern }) => patternCautions(pattern),
  sources: ['geometry', 'round-elbow-course', 'sheet-shop-practice'],
  examples: [
    {
      says: 'the second corner line of 12 × 12 to 8 in round, 8 in long, 12 divisions',
      given: {
        width: 12,
        depth: 12,
        diameter: 8,
        height: 8,
        what: 'corner line',
        station: 2,
        divisions: 12,
      },
      gives: 9.2968,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'its surface by 12 chords',
      given: {
        width: 12,
        depth: 12,
        diameter: 8,
        height: 8,
        what: 'surface',
        divisions: 12,
        stepped: 'chords',
      },
      gives: 308.4395 / 144,
      tolerance: 0.00001,
      source: 'geometry',
    },
    {
      says: 'the flat triangle on the far side of 16 × 10 to 10 in round, 12 in long, 3 in to the right',
      given: {
        width: 16,
        depth: 10,
        diameter: 10,
        height: 12,
        what: 'flat height',
        station: 4,
        offset_across: 3,
        pieces: 2,
      },
      gives: 13.4164,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the round side of each quarter of a 24 × 24 to 20 in round',
      given: {
        width: 24,
        depth: 24,
        diameter: 20,
        height: 18,
        what: 'side',
        station: 3,
        pieces: 4,
      },
      gives: 15.708,
      tolerance: 0.0001,
      source: 'geometry',
    },
  ],
});

interface StepGiven {
  readonly diameter: number;
  readonly divisions: number;
  readonly stepped: 'arcs' | 'chords';
}

function figuresOf({ step, area }: SquareToRound, given: StepGiven): readonly FittingFigure[] {
  return [
    {
      is: 'step',
      label: `One of ${given.divisions} parts of the round end`,
      sum:
        given.stepped === 'arcs'
          ? `π × ${figure(given.diameter, 4)} ÷ ${given.divisions}`
          : `${figure(given.diameter, 4)} × sin(180° ÷ ${given.divisions})`,
      value: step,
      unit: 'in',
    },
    {
      is: 'surface',
      label: 'Surface of the whole, without seams and joints',
      sum: 'all triangles together',
      value: area,
      unit: 'sqft',
    },
  ];
}

function tablesOf({ corners, flats }: SquareToRound, height: number): readonly FittingTable[] {
  const names = corners.map(({ name }) => sayCorner(name)).join(', ');
  const sides: readonly EndSide[] = flats.map(({ side }) => side);
  return [
    {
      is: 'flat height',
      label: 'Height of the flat triangles',
      sum: `√(d² + ${figure(height, 4)}²); ${sides.join(', ')}`,
      values: flats.map((flat) => flat.height),
    },
    {
      is: 'corner line',
      label: 'Corner lines',
      sum: `√(across² + back² + ${figure(height, 4)}²), ${corners[0]?.lines.length ?? 0} to each corner: ${names}`,
      values: corners.flatMap((corner) => corner.lines),
    },
  ];
}

function sayCorner(name: string): string {
  return name.replace(' ', ' to ');
}
