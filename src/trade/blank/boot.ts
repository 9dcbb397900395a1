import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type Stepped, stepOf, turnAt } from './divisions.ts';
import { crossesItself, cutOutline, edge, type Line, type Piece } from './piece.ts';
import { lineBetween, type SpacePoint, type Triangle, unfold } from './unfold.ts';

/** Halves meet in the middle of the front and of the back. */
export const bootMakes = ['one piece', 'two halves'] as const;
export type BootMake = (typeof bootMakes)[number];

export interface BootSizes {
  readonly made: BootMake;
  /** Of the rectangle: left to right, and front to back. */
  readonly width: Inches;
  readonly depth: Inches;
  readonly diameter: Inches;
  /** The middle of the round end over the plane of the rectangle. */
  readonly height: Inches;
  /** From the middle of the rectangle to that of the round end: to the front, and to the right. */
  readonly reach: Inches;
  readonly shift: Inches;
  /** Degrees that the round end is turned to the front: 0 faces straight up, 90 is a right-angle boot. */
  readonly turn: number;
  readonly divisions: number;
  readonly stepped: Stepped;
  /** Beyond the rectangular end and the round end. */
  readonly squareEnd: Inches;
  readonly roundEnd: Inches;
  /** On both edges of each seam together. */
  readonly seam: Inches;
}

/** The corners in the order of the pattern, seen from outside from the middle of the front to the right. */
export const bootCorners = ['front right', 'back right', 'back left', 'front left'] as const;
export type BootCorner = (typeof bootCorners)[number];

export interface Boot {
  readonly pieces: readonly Piece[];
  /** True lengths from each corner to the marks of its quarter of the round end. */
  readonly corners: readonly { readonly name: BootCorner; readonly lines: readonly Inches[] }[];
  /** One part of the round end on the flat. */
  readonly step: Inches;
}

/** A point of the round end; `turned` is in radians, 0 to the right, a quarter turn to the back. The middle of the
 *  rectangle is the origin: x to the right, y to the back, z up. */
export function bootMouth(sizes: BootSizes, turned: number): SpacePoint {
  const tilt = (sizes.turn * Math.PI) / 180;
  const radius = sizes.diameter / 2;
  return {
    x: sizes.shift + radius * Math.cos(turned),
    y: -sizes.reach + radius * Math.sin(turned) * Math.cos(tilt),
    z: sizes.height + radius * Math.sin(turned) * Math.sin(tilt),
  };
}

/** Where a corner of the rectangle stands. */
export function bootCorner({ width, depth }: BootSizes, corner: BootCorner): SpacePoint {
  return {
    x: (corner.endsWith('right') ? width : -width) / 2,
    y: (corner.startsWith('back') ? depth : -depth) / 2,
    z: 0,
  };
}

/** A boot from a rectangle to a round end, straight or turned to the front: a flat triangle on each side of the rectangle
 *  and a fan at each corner, by true lengths, seen from outside. In inches and degrees; the sheet as thin. Faults:
 *  `boot_too_low`, `too_few_divisions`, `pattern_over_itself`. Source: geometry. */
export function boot(sizes: BootSizes): Outcome<Boot, TradeFault> {
  const { made, diameter, height, turn, divisions } = sizes;
  const least = (diameter / 2) * Math.sin((turn * Math.PI) / 180);
  if (height <= least) return failed({ code: 'boot_too_low', height, least: inches(least) });
  const step = stepOf(diameter / 2, divisions, sizes.stepped);
  const quarters = bootCorners.map((_, index) => quarterOf(sizes, step, index));
  const [right, left] = [quarters.slice(0, 2), quarters.slice(2)];
  const pieces =
    made === 'one piece'
      ? [pieceOf(sizes, 1, 'boot', quarters)]
      : [pieceOf(sizes, 1, 'right half', right), pieceOf(sizes, 2, 'left half', left)];
  const whole = pieces.filter((piece) => piece !== null);
  if (whole.length < pieces.length) return failed({ code: 'too_few_divisions', got: divisions });
  const overlapping = whole.find((piece) => crossesItself(cutOutline(piece)));
  if (overlapping) return failed({ code: 'pattern_over_itself', piece: overlapping.name });
  return done({
    pieces: whole,
    corners: quarters.map(({ name, lines }) => ({ name, lines: lines.map(inches) })),
    step: inches(step),
  });
}

/** From the middle of one side to that of the next, by way of a corner. */
interface Quarter {
  readonly name: BootCorner;
  readonly start: number;
  readonly lines: readonly number[];
  readonly triangles: readonly Triangle[];
}

function quarterOf(sizes: BootSizes, step: number, index: number): Quarter {
  const name = bootCorners[index] ?? 'front right';
  const each = sizes.divisions / 4;
  const marks = Array.from({ length: each + 1 }, (_, mark) =>
    bootMouth(sizes, turnAt(1 + (index - 1) * each + mark, sizes.divisions)),
  );
  const corner = bootCorner(sizes, name);
  // The front and the back are left and entered at x = 0, the two other sides at y = 0.
  const [from, to] =
    index % 2 === 0
      ? [
          { ...corner, x: 0 },
          { ...corner, y: 0 },
        ]
      : [
          { ...corner, y: 0 },
          { ...corner, x: 0 },
        ];
  const [first = corner, last = corner] = [marks[0], marks.at(-1)];
  const lines = marks.map((mark) => lineBetween(corner, mark));
  return {
    name,
    start: lineBetween(from, first),
    lines,
    triangles: [
      { on: 'first', step: lineBetween(from, corner), across: lines[0] ?? 0 },
      ...lines.slice(1).map((across): Triangle => ({ on: 'second', step, across })),
      { on: 'first', step: lineBetween(corner, to), across: lineBetween(to, last) },
    ],
  };
}

function pieceOf(sizes: BootSizes, part: number, name: string, quarters: readonly Quarter[]): Piece | null {
  const flat = unfold(
    quarters[0]?.start ?? 0,
    quarters.flatMap((quarter) => quarter.triangles),
  );
  const [left, right] = [flat?.lines[0], flat?.lines.at(-1)];
  if (!flat || !left || !right) return null;
  const half = { added: inches(sizes.seam / 2) };
  const perQuarter = sizes.divisions / 4 + 2;
  return {
    part,
    name,
    pieces: 1,
    sides: [
      { ...edge('rectangular end', ...flat.first), added: sizes.squareEnd },
      { ...edge('right seam', right.from, right.to), ...half },
      { ...edge('round end', ...[...flat.second].reverse()), added: sizes.roundEnd },
      { ...edge('left seam', left.to, left.from), ...half },
    ],
    lines: flat.lines.slice(1, -1).flatMap((line, index): readonly Line[] => {
      const place = (index + 1) % perQuarter;
      // The line on the middle of a side lies within a flat triangle, where nothing is bent.
      if (place === 0) return [];
      return [{ is: place === 1 || place === perQuarter - 1 ? 'bend' : 'mark', ...line }];
    }),
  };
}
