import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches, type SquareFeet, squareFeet } from '../../base/quantity.ts';
import type { Unit } from '../../base/unit.ts';
import {
  blankSize,
  netArea,
  netOutline,
  type Piece,
  type Spot,
  sideLength,
} from '../../trade/blank/piece.ts';
import { choice, optional, quantity } from '../argument.ts';
import type { CallFault } from '../fault.ts';
import { figure, sayInches, sayList } from '../say.ts';
import type { Caution, Step } from '../working.ts';
import { cutting, testBlank } from './cautions.ts';

/** What one cell can show of a flat pattern; the rest stands in the working. */
export const patternAnswers = ['width', 'length', 'area', 'side', 'across', 'up'] as const;
/** Beside those of one piece, the area of the whole fitting. */
export const fittingAnswers = [...patternAnswers, 'surface'] as const;
export type PatternAnswer = (typeof fittingAnswers)[number];

export interface PatternQuestion {
  readonly part: number;
  readonly what: PatternAnswer;
  readonly station: number;
}

/** A fitting in the flat, and the one figure that was asked for. */
export interface Pattern {
  readonly pieces: readonly Piece[];
  readonly chosen: Piece;
  readonly what: PatternAnswer;
  readonly station: number;
  readonly asked: number;
}

/** What every flat pattern gives: its usual unit, and the one of an area. */
export const patternGives = { unit: 'in', orUnits: ['sqft'] } as const;

export function patternUnit({ what }: { readonly what: PatternAnswer }): Unit {
  return what === 'area' || what === 'surface' ? 'sqft' : 'in';
}

/** The three arguments that choose one figure of a pattern. `says` tells the parts by number: `1 is the cheek, …`. */
export function patternArguments(most: number, says: string) {
  return {
    part: optional(
      quantity('count', {
        says: `which piece: ${says}`,
        least: 1,
        most: Math.max(2, most),
        whole: true,
        why: `there ${most === 1 ? 'is no other kind' : 'are no other kinds'} of piece in it`,
      }),
      1,
      'it is the piece that is laid out first',
    ),
    what: optional(
      choice(fittingAnswers, {
        says: 'the width or the length of the blank with its seams, its area without them, the surface of all pieces together, the length of one side, or how far across or up a point of the outline lies from the lower left corner of the blank',
      }),
      'width',
      'sheets are sheared to width first',
    ),
    station: optional(
      quantity('count', {
        says: 'which side or point, counted from the lower left round to the left (anticlockwise); the working lists them',
        least: 1,
        most: 400,
        whole: true,
        why: 'no pattern here has more than 400 points',
      }),
      1,
      'it is the first side and the first point',
    ),
  };
}

/** Half of a lengthwise seam, as an argument. */
export function seamArgument(says: string, usual: number, why: string) {
  return optional(
    quantity('in', {
      says,
      least: 0,
      most: 3,
      why: 'no half of a lengthwise seam takes more than 3 in of sheet',
    }),
    usual,
    why,
  );
}

export const pocketArgument = (says: string) =>
  seamArgument(
    says,
    1,
    'lock formers often take 1 in for 26 and 24 ga (common practice, no source); use your machine’s figure',
  );

export const flangeArgument = (says: string) =>
  seamArgument(says, 0.25, 'a Pittsburgh lock has a flange of 1/4 in (how-to on the joint)');

/** A straight end of a fitting, joint included. */
export const neckArgument = (which: string) =>
  optional(
    quantity('in', {
      says: `the straight end at the ${which} end, what its joint takes included`,
      least: 0,
      most: 24,
      why: 'a longer straight end is a piece of duct of its own',
    }),
    1,
    'a slip covers about 1 in of the duct (common practice, no source)',
  );

/** A side of a duct, as an argument. */
export const ductSide = (says: string) =>
  quantity('in', {
    says,
    least: 2,
    most: 120,
    why: 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
  });

/** Picks the figure that was asked for. Faults: `no_such_piece`, `no_such_station`. */
export function askPattern(
  pieces: readonly Piece[],
  { part, what, station }: PatternQuestion,
): Outcome<Pattern, CallFault> {
  const chosen = pieces.find((one) => one.part === part);
  if (!chosen) {
    const parts = pieces.map((one) => `${one.part} (${one.name})`);
    return failed({ code: 'trade', fault: { code: 'no_such_piece', part, parts } });
  }
  const answer = { pieces, chosen, what, station };
  const size = blankSize(chosen);
  switch (what) {
    case 'width':
      return done({ ...answer, asked: size.width });
    case 'length':
      return done({ ...answer, asked: size.length });
    case 'area':
      return done({ ...answer, asked: netArea(chosen) });
    case 'surface':
      return done({ ...answer, asked: surfaceOf(pieces) });
    case 'side': {
      const side = chosen.sides[station - 1];
      return side
        ? done({ ...answer, asked: sideLength(side) })
        : noStation(chosen, 'side', station, chosen.sides.length);
    }
    case 'across':
    case 'up': {
      const spots = spotsOf(chosen);
      const at = spots[station - 1];
      return at ? done({ ...answer, asked: at[what] }) : noStation(chosen, 'point', station, spots.length);
    }
  }
}

/** Every piece with its sides, points and sizes, ending in the figure that was asked for. */
export function patternSteps(pattern: Pattern): readonly Step[] {
  const { pieces, chosen, what } = pattern;
  const surface: Step = {
    label: 'All pieces together: area without seams',
    sum: pieces.map((piece) => `${piece.pieces} × ${figure(netArea(piece), 4)}`).join(' + '),
    value: surfaceOf(pieces),
    unit: 'sqft',
    source: 'geometry',
  };
  const others = [
    ...pieces.filter((piece) => piece !== chosen).flatMap((piece) => pieceSteps(piece)),
    ...pieceSteps(chosen),
  ];
  if (what === 'surface') return [...others, surface];
  return [
    ...others.filter((step) => step.label !== labelOf(chosen, answerLabels[what])),
    surface,
    {
      label: labelOf(chosen, askedLabel(pattern)),
      sum: askedSum(pattern),
      value: pattern.asked,
      unit: patternUnit(pattern),
      source: 'geometry',
    },
  ];
}

/** Sharp edges, a test blank, and pieces that no stock sheet holds. */
export function patternCautions({ pieces }: Pattern): readonly Caution[] {
  const large = pieces.filter((piece) => {
    const { width, length } = blankSize(piece);
    return Math.min(width, length) > stockSheet.width || Math.max(width, length) > stockSheet.length;
  });
  if (large.length === 0) return [...cutting, testBlank];
  const names = sayList(
    large.map((piece) => piece.name),
    'and',
  );
  return [
    ...cutting,
    testBlank,
    {
      level: 'look',
      sentence: `No 5 × 10 ft sheet holds this in one piece: ${names}. Divide it and add a seam.`,
      source: 'sheet-shop-practice',
    },
  ];
}

/** In inches: the largest usual sheet. */
const stockSheet = { width: 60, length: 120 };

const answerLabels: Readonly<Record<PatternAnswer, string>> = {
  width: 'blank width',
  length: 'blank length',
  area: 'area without seams',
  side: 'side',
  across: 'point, across',
  up: 'point, up',
  surface: 'area of all pieces',
};

function pieceSteps(piece: Piece): readonly Step[] {
  const { width, length, corner } = blankSize(piece);
  const onBlank = ({ across, up }: Spot): Spot => ({
    across: across - corner.across,
    up: up - corner.up,
  });
  const step = (what: string, sum: string, value: number | string, unit: Unit): Step => ({
    label: labelOf(piece, what),
    sum,
    value,
    unit,
    source: 'geometry',
  });
  const added = piece.sides.filter((side) => side.added > 0);
  return [
    step('how many', '', piece.pieces, 'count'),
    step(
      'sides',
      piece.sides.map((side, index) => `${index + 1} ${side.is}`).join(' | '),
      piece.sides.map((side) => sayInches(sideLength(side))).join(' | '),
      'count',
    ),
    step(
      'points from the lower left corner of the blank',
      'across × up, seams not in the outline',
      spotsOf(piece).map(saySpot).join(' | '),
      'count',
    ),
    ...(added.length === 0
      ? []
      : [
          step(
            'added beyond the sides',
            added.map((side) => side.is).join(' | '),
            added.map((side) => sayInches(side.added)).join(' | '),
            'count',
          ),
        ]),
    ...(piece.cutouts ?? []).map((cutout) => {
      const outline = cutout.outline.map(onBlank);
      const across = outline.map((at) => at.across);
      const up = outline.map((at) => at.up);
      return step(
        `opening ${cutout.is}, left × bottom to right × top`,
        'from the lower left corner of the blank',
        `${say(Math.min(...across))} × ${say(Math.min(...up))} to ${say(Math.max(...across))} × ${say(Math.max(...up))}`,
        'count',
      );
    }),
    ...lineKinds.flatMap(({ is, label }) => {
      const lines = piece.lines.filter((line) => line.is === is);
      if (lines.length === 0) return [];
      const said = lines.map(({ from, to }) => `${saySpot(onBlank(from))} to ${saySpot(onBlank(to))}`);
      return [step(label, 'across × up, from the lower left corner of the blank', said.join(' | '), 'count')];
    }),
    step(answerLabels.width, widthSum, width, 'in'),
    step(answerLabels.length, lengthSum, length, 'in'),
    step(answerLabels.area, 'within the outline, exact on arcs', netArea(piece), 'sqft'),
  ];
}

const lineKinds = [
  { is: 'bend', label: 'bend lines' },
  { is: 'mark', label: 'marks' },
] as const;

const widthSum = 'farthest left to farthest right, seams included';
const lengthSum = 'lowest to highest, seams included';

function surfaceOf(pieces: readonly Piece[]): SquareFeet {
  return squareFeet(pieces.reduce((sum, piece) => sum + piece.pieces * netArea(piece), 0));
}

function askedLabel({ what, station, chosen }: Pattern): string {
  if (what === 'side') return `side ${station}, ${chosen.sides[station - 1]?.is ?? ''}`;
  return what === 'across' || what === 'up' ? `point ${station}, ${what}` : answerLabels[what];
}

function askedSum({ what }: Pattern): string {
  if (what === 'width') return widthSum;
  if (what === 'length') return lengthSum;
  if (what === 'area') return 'within the outline, exact on arcs';
  return what === 'across' || what === 'up' ? 'from the lower left corner of the blank' : '';
}

function labelOf(piece: Piece, what: string): string {
  return `Part ${piece.part}, ${piece.name}: ${what}`;
}

/** The points of the outline, from the lower left corner of the blank. */
function spotsOf(piece: Piece): readonly Spot[] {
  const { corner } = blankSize(piece);
  return netOutline(piece).map((at) => ({ across: at.across - corner.across, up: at.up - corner.up }));
}

function saySpot({ across, up }: Spot): string {
  return `${say(across)} × ${say(up)}`;
}

function say(length: number): string {
  return sayInches(inches(Math.abs(length) < 1e-9 ? 0 : length));
}

function noStation(
  piece: Piece,
  what: 'side' | 'point',
  got: number,
  most: number,
): Outcome<never, CallFault> {
  return failed({ code: 'trade', fault: { code: 'no_such_station', piece: piece.name, what, got, most } });
}

/** A length with its name in a sum: `√(12² + 3²)`. */
export function slantSum(length: Inches, ...offsets: readonly number[]): string {
  return `√(${[length, ...offsets].map((one) => `${figure(Math.abs(one), 4)}²`).join(' + ')})`;
}
