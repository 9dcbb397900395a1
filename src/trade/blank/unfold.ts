import { distance, type Spot, spot } from './piece.ts';

/** A point of a fitting as it stands, in inches. */
export interface SpacePoint {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The next triangle of a skin: along which border it goes on, by how much, and how long its new line across is. */
export interface Triangle {
  readonly on: 'first' | 'second';
  readonly step: number;
  readonly across: number;
}

/** A skin between two borders, laid flat: the points of each border from the left to the right. */
export interface FlatSkin {
  readonly first: readonly Spot[];
  readonly second: readonly Spot[];
  /** The lines across, the left edge first, from the first border to the second. */
  readonly lines: readonly { readonly from: Spot; readonly to: Spot }[];
  /** By how much the right edge is turned against the left one, in degrees; more than 0 where the first border is the
   *  longer. */
  readonly turn: number;
}

export function lineBetween(one: SpacePoint, other: SpacePoint): number {
  return Math.hypot(other.x - one.x, other.y - one.y, other.z - one.z);
}

/** Lays triangles flat one beside another, the first border below and its two ends level. Null where three lengths close
 *  no triangle. Source: geometry. */
export function unfold(leftEdge: number, triangles: readonly Triangle[]): FlatSkin | null {
  let [low, high] = [spot(0, 0), spot(0, leftEdge)];
  const first = [low];
  const second = [high];
  const lines = [{ from: low, to: high }];
  let turn = 0;
  for (const { on, step, across } of triangles) {
    const at = on === 'first' ? apex(low, high, step, across) : apex(low, high, across, step);
    if (at === null) return null;
    const before = { from: low, to: high };
    if (on === 'first') {
      low = at;
      first.push(at);
    } else {
      high = at;
      second.push(at);
    }
    lines.push({ from: low, to: high });
    turn += turned(before, { from: low, to: high });
  }
  return levelled({ first, second, lines, turn: (turn * 180) / Math.PI });
}

/** To the right of a line, so far from its start and so far from its end. */
function apex(from: Spot, to: Spot, fromStart: number, fromEnd: number): Spot | null {
  const line = distance(from, to);
  const along = (fromStart ** 2 - fromEnd ** 2 + line ** 2) / (2 * line);
  const square = fromStart ** 2 - along ** 2;
  if (!(square > -1e-9 * line ** 2)) return null;
  const aside = Math.sqrt(Math.max(0, square));
  const [across, up] = [(to.across - from.across) / line, (to.up - from.up) / line];
  return spot(from.across + along * across + aside * up, from.up + along * up - aside * across);
}

interface Edge {
  readonly from: Spot;
  readonly to: Spot;
}

function turned(one: Edge, other: Edge): number {
  const [a, b] = [one.to.across - one.from.across, one.to.up - one.from.up];
  const [c, d] = [other.to.across - other.from.across, other.to.up - other.from.up];
  return Math.atan2(a * d - b * c, a * c + b * d);
}

function levelled(skin: FlatSkin): FlatSkin {
  const [start, end] = [skin.first[0], skin.first.at(-1)];
  const chord = start && end ? distance(start, end) : 0;
  if (!start || !end || chord < 1e-6) return skin;
  const [cos, sin] = [(end.across - start.across) / chord, (end.up - start.up) / chord];
  const place = ({ across, up }: Spot): Spot => spot(across * cos + up * sin, up * cos - across * sin);
  return {
    first: skin.first.map(place),
    second: skin.second.map(place),
    lines: skin.lines.map(({ from, to }) => ({ from: place(from), to: place(to) })),
    turn: skin.turn,
  };
}
