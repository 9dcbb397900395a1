import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches, type SquareFeet, squareFeet } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type Stepped, stepOf } from './divisions.ts';
import { edge, type Line, netArea, type Piece } from './piece.ts';
import { lineBetween, type SpacePoint, type Triangle, unfold } from './unfold.ts';

/** The sides of the rectangular end, seen with the round end towards the eye: round to the left from the one below. */
export const ends = ['front', 'right', 'back', 'left'] as const;
export type EndSide = (typeof ends)[number];

export interface SquareToRoundSizes {
  /** Left to right, and front to back. */
  readonly width: Inches;
  readonly depth: Inches;
  readonly diameter: Inches;
  /** Between the ends, square to them. */
  readonly height: Inches;
  /** From the middle of the rectangular end to that of the round one: to the right, and to the back. */
  readonly offsetAcross: Inches;
  readonly offsetBack: Inches;
  readonly divisions: number;
  readonly stepped: Stepped;
  /** In one piece, in halves or in quarters; seams lie on the middles of sides. */
  readonly pieces: 1 | 2 | 4;
  /** The side on which the first seam lies. */
  readonly seamOn: EndSide;
  /** What each lengthwise seam takes, both edges together. */
  readonly seam: Inches;
  /** Beyond the rectangular and the round end. */
  readonly squareEnd: Inches;
  readonly roundEnd: Inches;
}

export interface SquareToRound {
  /** True lengths from each corner to the marks of its quarter of the circle, in the order of the layout. */
  readonly corners: readonly {
    readonly name: string;
    readonly lines: readonly Inches[];
    readonly turn: number;
  }[];
  /** Of the flat triangle on each side, square to the side. */
  readonly flats: readonly { readonly side: EndSide; readonly height: Inches }[];
  /** One part of the circle on the flat. */
  readonly step: Inches;
  /** All pieces without seams. */
  readonly area: SquareFeet;
  readonly blanks: readonly Piece[];
}

/** Square or rectangle to round, centered or offset, the ends level: a flat triangle on each side and a cone on each corner,
 *  by triangles. In inches and degrees; the sheet as thin. Faults: `too_few_divisions`. Source: geometry. */
export function squareToRound(sizes: SquareToRoundSizes): Outcome<SquareToRound, TradeFault> {
  const step = stepOf(sizes.diameter / 2, sizes.divisions, sizes.stepped);
  const first = ends.indexOf(sizes.seamOn);
  const quarters = ends.map((_, index) => quarterOf(sizes, step, (first + index) % 4));
  const each = 4 / sizes.pieces;
  const blanks: Piece[] = [];
  for (let index = 0; index < sizes.pieces; index += 1) {
    const piece = blankOf(sizes, index + 1, quarters.slice(index * each, (index + 1) * each));
    if (piece === null) return failed({ code: 'too_few_divisions', got: sizes.divisions });
    blanks.push(piece);
  }
  return done({
    corners: quarters.map(({ name, lines, turn }) => ({ name, lines: lines.map(inches), turn })),
    flats: quarters.map(({ side, flatHeight }) => ({ side, height: inches(flatHeight) })),
    step: inches(step),
    area: squareFeet(blanks.reduce((sum, blank) => sum + netArea(blank), 0)),
    blanks,
  });
}

/** From the middle of one side to that of the next. */
interface Quarter {
  readonly name: string;
  readonly side: EndSide;
  readonly flatHeight: number;
  /** From the middle of the side to the mark that faces it. */
  readonly edge: number;
  readonly lines: readonly number[];
  /** Of the corner's fan, in degrees. */
  readonly turn: number;
  readonly triangles: readonly Triangle[];
}

/** Which way each side faces, and its corner towards the next side. */
const facing = [
  { x: 0, y: -1, corner: { x: 1, y: -1 } },
  { x: 1, y: 0, corner: { x: 1, y: 1 } },
  { x: 0, y: 1, corner: { x: -1, y: 1 } },
  { x: -1, y: 0, corner: { x: -1, y: -1 } },
] as const;

function quarterOf(sizes: SquareToRoundSizes, step: number, index: number): Quarter {
  const side = ends[index] ?? 'front';
  const next = ends[(index + 1) % 4] ?? 'right';
  const [face, after] = [facing[index] ?? facing[0], facing[(index + 1) % 4] ?? facing[0]];
  const [halfWidth, halfDepth, radius] = [sizes.width / 2, sizes.depth / 2, sizes.diameter / 2];
  const middleOf = ({ x, y }: { readonly x: number; readonly y: number }): SpacePoint => ({
    x: x * halfWidth,
    y: y * halfDepth,
    z: 0,
  });
  const [middle, corner, nextMiddle] = [middleOf(face), middleOf(face.corner), middleOf(after)];
  const each = sizes.divisions / 4;
  const marks = Array.from({ length: each + 1 }, (_, mark): SpacePoint => {
    const turn = (index - 1) * (Math.PI / 2) + (mark * 2 * Math.PI) / sizes.divisions;
    return {
      x: sizes.offsetAcross + radius * Math.cos(turn),
      y: sizes.offsetBack + radius * Math.sin(turn),
      z: sizes.height,
    };
  });
  const lines = marks.map((mark) => lineBetween(corner, mark));
  const [firstMark = corner, lastMark = corner] = [marks[0], marks.at(-1)];
  const inward = face.x * (middle.x - firstMark.x) + face.y * (middle.y - firstMark.y);
  return {
    name: `${side} ${next}`,
    side,
    flatHeight: Math.hypot(sizes.height, inward),
    edge: lineBetween(middle, firstMark),
    lines,
    turn: lines.slice(1).reduce((sum, line, place) => sum + cornerAngle(lines[place] ?? line, line, step), 0),
    triangles: [
      { on: 'first', step: lineBetween(middle, corner), across: lines[0] ?? 0 },
      ...lines.slice(1).map((across): Triangle => ({ on: 'second', step, across })),
      { on: 'first', step: lineBetween(corner, nextMiddle), across: lineBetween(nextMiddle, lastMark) },
    ],
  };
}

/** Between two sides of a triangle, in degrees. */
function cornerAngle(one: number, other: number, facingSide: number): number {
  const cosine = (one ** 2 + other ** 2 - facingSide ** 2) / (2 * one * other);
  return (Math.acos(Math.max(-1, Math.min(1, cosine))) * 180) / Math.PI;
}

function blankOf(sizes: SquareToRoundSizes, part: number, quarters: readonly Quarter[]): Piece | null {
  const flat = unfold(
    quarters[0]?.edge ?? 0,
    quarters.flatMap((quarter) => quarter.triangles),
  );
  const [left, right] = [flat?.lines[0], flat?.lines.at(-1)];
  if (!flat || !left || !right) return null;
  const half = { added: inches(sizes.seam / 2) };
  const perQuarter = sizes.divisions / 4 + 2;
  const lines = flat.lines.slice(1, -1).flatMap((line, index): readonly Line[] => {
    const place = (index + 1) % perQuarter;
    // The line on the middle of a side lies within a flat triangle, where nothing is bent.
    if (place === 0) return [];
    return [{ is: place === 1 || place === perQuarter - 1 ? 'bend' : 'mark', ...line }];
  });
  return {
    part,
    name: names[sizes.pieces],
    pieces: 1,
    sides: [
      { ...edge('rectangular end', ...flat.first), added: sizes.squareEnd },
      { ...edge('right seam', right.from, right.to), ...half },
      { ...edge('round end', ...[...flat.second].reverse()), added: sizes.roundEnd },
      { ...edge('left seam', left.to, left.from), ...half },
    ],
    lines,
  };
}

const names = { 1: 'whole', 2: 'half', 4: 'quarter' } as const;
