import { done, type Outcome } from '../../base/outcome.ts';
import {
  type Opening,
  overlappingOpenings,
  plenum,
  plenumMakes,
  plenumWalls,
} from '../../trade/blank/plenum.ts';
import { choice, optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import { choiceColumn, numberColumn, optionalNumberColumn, type Table, table } from '../table.ts';
import type { Caution } from '../working.ts';
import {
  askPattern,
  ductSide,
  flangeArgument,
  type Pattern,
  patternArguments,
  patternCautions,
  patternGives,
  patternSteps,
  patternUnit,
  pocketArgument,
  seamArgument,
} from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';

interface PlenumPattern extends Pattern {
  readonly openings: readonly Opening[];
}

const size = (says: string, least: number) => ({ says, least, most: 120 });

const openingColumns = {
  wall: choiceColumn(plenumWalls, { says: 'the wall that it is cut into, as one walks round to the right' }),
  width: numberColumn('in', size('the width of the opening, or the diameter of a round one', 0.25)),
  across: numberColumn('in', size('from the left edge of the wall to the middle, seen from outside', 0)),
  up: numberColumn('in', size('from the bottom edge of the wall to the middle', 0)),
  depth: optionalNumberColumn('in', size('the depth of a rectangular opening; blank for a round one', 0.25)),
};

type Openings = Table<typeof openingColumns>;

export const blankPlenum = defineFunction({
  name: 'BLANK.PLENUM',
  says: 'The walls and the top of a plenum box in the flat, with its openings where they are cut.',
  words: ['plenum', 'box', 'supply plenum', 'return plenum', 'cutout', 'opening', 'lid', 'wrap'],
  gives: { label: 'Plenum', ...patternGives },
  unitOf: patternUnit,
  arguments: {
    width: ductSide('the width of the front and the back'),
    depth: ductSide('the depth, which the two other walls are wide'),
    height: ductSide('the height of the walls'),
    ...patternArguments(3, '1 is the walls, or their front half, 2 the back half, 3 the top'),
    made: optional(
      choice(plenumMakes, { says: 'the walls in one wrap, or in two halves of two walls each' }),
      'one piece',
      'three bends and one seam make the walls',
    ),
    top: optional(
      choice(['closed', 'open'], { says: 'with a top panel, or open at both ends' }),
      'closed',
      'a plenum mostly ends in a closed top',
    ),
    pocket: pocketArgument('what the pocket of each upright seam takes'),
    flange: flangeArgument('what the flange of each upright seam takes'),
    top_edge: seamArgument(
      'what stands above the walls for the top',
      0,
      'a top with its edge turned down over the walls needs nothing there (common practice, no source)',
    ),
    bottom_edge: seamArgument(
      'what stands below the walls, to be turned out on the unit',
      0,
      'units differ; look at the collar of yours',
    ),
    lid_edge: seamArgument(
      'what is turned down on each side of the top',
      1,
      'it takes a row of screws (common practice, no source)',
    ),
    openings: optional<Openings | null>(
      table(openingColumns, {
        says: 'a table of openings: a name, then wall, width, depth, across and up',
      }),
      null,
      'openings may also be cut where they are needed',
    ),
  },
  formula: [
    String.raw`\text{one piece:}\quad 2 (\mathrm{width} + \mathrm{depth}) + \mathrm{pocket} + \mathrm{flange} \quad \text{by} \quad \mathrm{height} + \mathrm{top\_edge} + \mathrm{bottom\_edge}`,
    String.raw`\text{each L half:}\quad \mathrm{width} + \mathrm{depth} + \mathrm{pocket} + \mathrm{flange} \quad \text{by the same}`,
    String.raw`\text{top:}\quad \mathrm{width} + 2 \times \mathrm{lid\_edge} \quad \text{by} \quad \mathrm{depth} + 2 \times \mathrm{lid\_edge}`,
  ],
  work: (given): Outcome<PlenumPattern, CallFault> => {
    const openings = openingsIn(given.openings);
    if (!openings.ok) return openings;
    const made = fromTrade(
      plenum({
        made: given.made,
        width: given.width,
        depth: given.depth,
        height: given.height,
        pocket: given.pocket,
        flange: given.flange,
        topEdge: given.top_edge,
        bottomEdge: given.bottom_edge,
        lidEdge: given.top === 'open' ? null : given.lid_edge,
        openings: openings.value,
      }),
    );
    if (!made.ok) return made;
    const pattern = askPattern(made.value, given);
    return pattern.ok ? done({ ...pattern.value, openings: openings.value }) : pattern;
  },
  result: ({ asked }) => asked,
  steps: (pattern, { made, width, depth, pocket, flange }) => {
    const [w, d, p, f] = [width, depth, pocket, flange].map((one) => figure(one, 4));
    const isOne = made === 'one piece';
    return [
      {
        label: isOne ? 'Across the walls' : 'Across each half',
        sum: `${isOne ? '2 × ' : ''}(${w} + ${d}) + ${p} + ${f}`,
        value: (isOne ? 2 : 1) * (width + depth) + pocket + flange,
        unit: 'in',
        source: 'geometry',
      },
      ...patternSteps(pattern),
    ];
  },
  drawing: ({ pieces }, { width, depth, height }) =>
    patternDrawing(`Plenum ${sayInches(width)} × ${sayInches(depth)}, ${sayInches(height)} high`, pieces),
  cautions: (pattern) => [...patternCautions(pattern), ...overlapCautions(pattern.openings)],
  sources: ['geometry', 'pittsburgh-how-to', 'sheet-shop-practice'],
  examples: [
    {
      says: 'how wide to shear the walls of a box 20 × 24 in, 36 in high',
      given: { width: 20, depth: 24, height: 36 },
      gives: 89.25,
      source: 'geometry',
    },
    {
      says: 'the area of its walls with a round opening of 8 in and one of 12 × 6 in',
      given: {
        width: 20,
        depth: 24,
        height: 36,
        what: 'area',
        openings: [
          ['Opening', 'Wall', 'Width', 'Depth', 'Across', 'Up'],
          ['run A', 'front', 8, null, 10, 28],
          ['trunk', 'right', 12, 6, 12, 20],
        ],
      },
      gives: 21.1509,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'how long to shear the top of a box 16 × 20 in, 30 in high, made in two halves',
      given: { width: 16, depth: 20, height: 30, part: 3, what: 'length', made: 'two L halves' },
      gives: 22,
      source: 'geometry',
    },
  ],
});

function openingsIn(openings: Openings | null): Outcome<readonly Opening[], CallFault> {
  const found: Opening[] = [];
  for (const name of openings?.keys ?? []) {
    const row = openings?.find(name);
    if (!row) continue;
    if (!row.ok) return row;
    const { wall, width, depth, across, up } = row.value;
    found.push({ name, wall, width, depth, across, up });
  }
  return done(found);
}

function overlapCautions(openings: readonly Opening[]): readonly Caution[] {
  return overlappingOpenings(openings).map(([one, other]) => ({
    level: 'look',
    sentence: `The openings “${one.name}” and “${other.name}” lie over each other on the same wall. Move or shrink one of them.`,
  }));
}
