import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { turnedPanel } from './end-cap.ts';
import { type Cutout, edge, type Line, type Piece, type Side, type Spot, spot } from './piece.ts';

/** The walls in one wrap, or in two halves of two walls each. */
export const plenumMakes = ['one piece', 'two L halves'] as const;
export type PlenumMake = (typeof plenumMakes)[number];

/** The walls as one walks round the plenum to the right, then the top. */
export const plenumWalls = ['front', 'right', 'back', 'left', 'top'] as const;
export type PlenumWall = (typeof plenumWalls)[number];

export interface Opening {
  readonly name: string;
  readonly wall: PlenumWall;
  readonly width: Inches;
  /** Without a depth the opening is round, and its width the diameter. */
  readonly depth: Inches | null;
  /** Its middle, from the left edge and from the bottom edge of its wall, seen from outside. */
  readonly across: Inches;
  readonly up: Inches;
}

export interface PlenumSizes {
  readonly made: PlenumMake;
  /** Front and back. */
  readonly width: Inches;
  /** The two other walls. */
  readonly depth: Inches;
  readonly height: Inches;
  readonly pocket: Inches;
  readonly flange: Inches;
  /** On the walls, for the top and at the bottom. */
  readonly topEdge: Inches;
  readonly bottomEdge: Inches;
  /** Turned down on each side of the top panel; without a top, null. */
  readonly lidEdge: Inches | null;
  readonly openings: readonly Opening[];
}

/** Points of a round opening. */
const roundPoints = 48;

/** The walls and the top of a plenum box, seen from outside, openings where they are cut. In inches; the sheet as thin,
 *  bends sharp. Parts: 1 the walls, or the front half, 2 the back half, 3 the top. Faults: `opening_past_wall`. Source:
 *  geometry. */
export function plenum(sizes: PlenumSizes): Outcome<readonly Piece[], TradeFault> {
  const { made, width, depth, height, lidEdge, openings } = sizes;
  const wallSize = (wall: PlenumWall): readonly [number, number] =>
    wall === 'top' ? [width, depth] : [isWide(wall) ? width : depth, height];
  for (const opening of openings) {
    const [wide, high] = wallSize(opening.wall);
    const [halfWidth, halfDepth] = [opening.width / 2, (opening.depth ?? opening.width) / 2];
    const fits =
      opening.across >= halfWidth &&
      opening.across + halfWidth <= wide &&
      opening.up >= halfDepth &&
      opening.up + halfDepth <= high;
    if (!fits || (opening.wall === 'top' && lidEdge === null)) {
      return failed({
        code: 'opening_past_wall',
        opening: opening.name,
        wall: opening.wall,
        width: inches(wide),
        height: inches(high),
      });
    }
  }
  const walls: readonly (readonly PlenumWall[])[] =
    made === 'one piece'
      ? [['front', 'right', 'back', 'left']]
      : [
          ['front', 'right'],
          ['back', 'left'],
        ];
  const wraps = walls.map((of, index) =>
    wallsPiece(
      index + 1,
      made === 'one piece' ? 'walls' : index === 0 ? 'front half' : 'back half',
      of,
      sizes,
    ),
  );
  if (lidEdge === null) return done(wraps);
  const corners = [spot(0, 0), spot(width, 0), spot(width, depth), spot(0, depth)];
  const top = turnedPanel(3, 'top', corners, ['front edge', 'right edge', 'back edge', 'left edge'], lidEdge);
  const cutouts = openings.filter(({ wall }) => wall === 'top').map((one) => cutoutOf(one, 0));
  return done([...wraps, { ...top, cutouts }]);
}

function wallsPiece(part: number, name: string, walls: readonly PlenumWall[], sizes: PlenumSizes): Piece {
  const { width, depth, height, pocket, flange, topEdge, bottomEdge, openings } = sizes;
  const widths = walls.map((wall) => (isWide(wall) ? width : depth));
  const starts = widths.map((_, index) => widths.slice(0, index).reduce<number>((sum, one) => sum + one, 0));
  const total = widths.reduce<number>((sum, one) => sum + one, 0);
  const wallEdges = (is: string, up: number, added: Inches): readonly Side[] =>
    walls.map((wall, index) => {
      const from = starts[index] ?? 0;
      const to = from + (widths[index] ?? 0);
      return { is: `${wall} ${is}`, spots: [spot(from, up), spot(to, up)], added };
    });
  const tops = wallEdges('top', height, topEdge).map((side) => ({
    ...side,
    spots: [...side.spots].reverse(),
  }));
  return {
    part,
    name,
    pieces: 1,
    sides: [
      ...wallEdges('bottom', 0, bottomEdge),
      { ...edge('flange seam', spot(total, 0), spot(total, height)), added: flange },
      ...[...tops].reverse(),
      { ...edge('pocket seam', spot(0, height), spot(0, 0)), added: pocket },
    ],
    lines: [
      ...starts.slice(1).map((at) => bend(spot(at, -bottomEdge), spot(at, height + topEdge))),
      ...(topEdge > 0 ? [bend(spot(0, height), spot(total, height))] : []),
      ...(bottomEdge > 0 ? [bend(spot(0, 0), spot(total, 0))] : []),
    ],
    cutouts: openings
      .filter(({ wall }) => walls.includes(wall))
      .map((one) => cutoutOf(one, starts[walls.indexOf(one.wall)] ?? 0)),
  };
}

function isWide(wall: PlenumWall): boolean {
  return wall === 'front' || wall === 'back';
}

function bend(from: Spot, to: Spot): Line {
  return { is: 'bend', from, to };
}

function cutoutOf({ name, width, depth, across, up }: Opening, start: number): Cutout {
  const middle = spot(start + across, up);
  if (depth === null) {
    const outline = Array.from({ length: roundPoints }, (_, index) => {
      const turn = (2 * Math.PI * index) / roundPoints;
      return spot(middle.across + (width / 2) * Math.cos(turn), middle.up + (width / 2) * Math.sin(turn));
    });
    return { is: name, outline, area: (Math.PI * width ** 2) / 4 };
  }
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  return {
    is: name,
    outline: corners.map(([right, high]) =>
      spot(middle.across + (right * width) / 2, middle.up + (high * depth) / 2),
    ),
    area: width * depth,
  };
}

/** Pairs of openings on one wall whose rectangles lie over each other. */
export function overlappingOpenings(openings: readonly Opening[]): readonly (readonly [Opening, Opening])[] {
  return openings.flatMap((one, index) =>
    openings
      .slice(index + 1)
      .filter((other) => {
        const reach = (one.width + other.width) / 2;
        const high = ((one.depth ?? one.width) + (other.depth ?? other.width)) / 2;
        return (
          one.wall === other.wall &&
          Math.abs(one.across - other.across) < reach &&
          Math.abs(one.up - other.up) < high
        );
      })
      .map((other) => [one, other] as const),
  );
}
