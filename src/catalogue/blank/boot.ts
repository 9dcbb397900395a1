import { done, type Outcome } from '../../base/outcome.ts';
import { type Boot, boot, bootMakes } from '../../trade/blank/boot.ts';
import { divisionsOfCircle, stepped } from '../../trade/blank/divisions.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import type { Caution, Step } from '../working.ts';
import {
  askPattern,
  ductSide,
  type Pattern,
  patternArguments,
  patternCautions,
  patternGives,
  patternSteps,
  patternUnit,
  seamArgument,
} from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';

interface BootPattern extends Pattern {
  readonly made: Boot;
}

const slitCorners: Caution = {
  level: 'look',
  sentence: 'Slit the flange of the rectangular end at each corner before it is turned.',
  source: 'sheet-shop-practice',
};

const away = (says: string) =>
  optional(
    quantity('in', {
      says,
      least: -120,
      most: 120,
      why: 'a boot that reaches farther than 10 ft is a run of duct',
    }),
    0,
    'the round end stands over the middle of the rectangle',
  );

export const blankBoot = defineFunction({
  name: 'BLANK.BOOT',
  says: 'The flat pattern of a register boot from a rectangle to a round end, straight or turned to one side.',
  words: [
    'boot',
    'register boot',
    'floor boot',
    'right angle boot',
    'end boot',
    'triangulation',
    'stack head',
  ],
  gives: { label: 'Boot', ...patternGives },
  unitOf: patternUnit,
  arguments: {
    width: ductSide('the width of the rectangle, along the side that the round end is turned to'),
    depth: ductSide('the depth of the rectangle, front to back'),
    diameter: ductSide('the diameter of the round end'),
    height: quantity('in', {
      says: 'how high the middle of the round end stands over the plane of the rectangle',
      least: 1,
      most: 120,
      why: 'under 1 in there is no room for the sheet, and over 10 ft it is a run of duct',
    }),
    turn: optional(
      quantity('deg', {
        says: 'the angle that the round end is turned to the front: 0 faces straight up, 90 is a right-angle boot',
        least: 0,
        most: 90,
        why: 'past 90° the pipe would point back into the rectangle',
      }),
      0,
      'a straight boot',
    ),
    reach: away('how far the middle of the round end lies to the front of that of the rectangle'),
    shift: away('how far the middle of the round end lies to the right of that of the rectangle'),
    ...patternArguments(2, '1 is the right half, or the whole boot, 2 the left half'),
    made: optional(
      choice(bootMakes, { says: 'in one piece with its seam in the middle of the front, or in halves' }),
      'two halves',
      'a half can be formed in the brake, a whole boot often cannot (common practice, no source)',
    ),
    divisions: optional(
      choice(divisionsOfCircle, { says: 'into how many parts the round end is divided' }),
      24,
      'the chords of 24 parts lose 0.3 % of the girth, less than a seam may be off',
    ),
    stepped: optional(
      choice(stepped, { says: 'whether the parts of the round end are stepped off as arcs or as chords' }),
      'arcs',
      'the round end then comes out at its full girth',
    ),
    seam: seamArgument(
      'what each lengthwise seam takes, both edges together',
      1,
      'a lap of 1 in is common (common practice, no source); use your own figure',
    ),
    square_end: seamArgument(
      'what stands beyond the rectangular end, to be turned out or nailed',
      0.5,
      'a narrow flange to fasten it by (common practice, no source)',
    ),
    round_end: seamArgument(
      'what stands beyond the round end for its collar',
      0.25,
      'a turned flange takes 1/8 to 1/4 in (workshop textbook)',
    ),
  },
  formula: [
    String.raw`\text{line} = \sqrt{(x - x_c)^2 + (y - y_c)^2 + z^2}, \quad x_c = \pm \frac{\mathrm{width}}{2}, \quad y_c = \pm \frac{\mathrm{depth}}{2} \quad \text{(corner)}`,
    String.raw`x = \mathrm{shift} + r \cos p, \quad y = r \sin p \cos \mathrm{turn} - \mathrm{reach}, \quad z = \mathrm{height} + r \sin p \sin \mathrm{turn}, \quad r = \frac{\mathrm{diameter}}{2} \quad \text{(mark at } p \text{)}`,
    String.raw`\text{step} = \frac{2 \pi r}{\mathrm{divisions}} \text{ (arcs)}, \quad 2 r \sin\frac{\pi}{\mathrm{divisions}} \text{ (chords)}`,
  ],
  work: (given): Outcome<BootPattern, CallFault> => {
    const made = fromTrade(
      boot({
        made: given.made,
        width: given.width,
        depth: given.depth,
        diameter: given.diameter,
        height: given.height,
        reach: given.reach,
        shift: given.shift,
        turn: given.turn,
        divisions: given.divisions,
        stepped: given.stepped,
        squareEnd: given.square_end,
        roundEnd: given.round_end,
        seam: given.seam,
      }),
    );
    if (!made.ok) return made;
    const pattern = askPattern(made.value.pieces, given);
    return pattern.ok ? done({ ...pattern.value, made: made.value }) : pattern;
  },
  result: ({ asked }) => asked,
  steps: (pattern, { diameter, divisions, stepped: by }) => [
    {
      label: by === 'arcs' ? 'Each arc of the round end' : 'Each chord of the round end',
      sum:
        by === 'arcs'
          ? `π × ${figure(diameter, 4)} ÷ ${divisions}`
          : `${figure(diameter, 4)} × sin(180° ÷ ${divisions})`,
      value: pattern.made.step,
      unit: 'in',
      source: 'geometry',
    },
    ...pattern.made.corners.map(
      ({ name, lines }): Step => ({
        label: `Lines from the corner at the ${name}`,
        sum: '√(across² + back² + up²), in the order of the pattern',
        value: lines.map(sayInches).join(' | '),
        unit: 'count',
        source: 'geometry',
      }),
    ),
    ...patternSteps(pattern),
  ],
  drawing: ({ pieces }, { width, depth, diameter, turn }) =>
    patternDrawing(
      `Boot ${sayInches(width)} × ${sayInches(depth)} to ${sayInches(diameter)} round, ${
        turn === 0 ? 'straight' : `turned ${figure(turn, 1)}°`
      }`,
      pieces,
    ),
  cautions: (pattern, { square_end }) => [
    ...patternCautions(pattern),
    ...(square_end > 0 ? [slitCorners] : []),
  ],
  sources: ['geometry', 'sheet-shop-practice'],
  examples: [
    {
      says: 'a right-angle boot, 10 × 4 in to 6 in round: the round end of its right half, half of π × 6',
      given: { width: 10, depth: 4, diameter: 6, height: 5, turn: 90, reach: 8, what: 'side', station: 3 },
      gives: 9.4248,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the rectangular end of a straight boot in one piece, once round 10 × 4 in',
      given: {
        width: 10,
        depth: 4,
        diameter: 6,
        height: 6,
        what: 'side',
        made: 'one piece',
      },
      gives: 28,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the area of a straight boot, 12 × 12 in to 8 in round, 8 in high, by 12 chords',
      given: {
        width: 12,
        depth: 12,
        diameter: 8,
        height: 8,
        what: 'area',
        made: 'one piece',
        divisions: 12,
        stepped: 'chords',
      },
      gives: 2.1419,
      tolerance: 0.0001,
      source: 'geometry',
    },
  ],
});
