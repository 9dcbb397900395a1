import { type Inches, inches, type SquareFeet, squareFeetFromSquareInches } from '../../base/quantity.ts';

/** A point of a flat pattern as it lies on the bench: inches to the right and inches up. */
export interface Spot {
  readonly across: number;
  readonly up: number;
}

/** Part of a circle along a side, for the exact length, area and size. Angles in degrees, from the right, turning left. */
export interface Arc {
  readonly center: Spot;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
}

/** One side of a flat piece, from the end of the side before it. */
export interface Side {
  /** What it is or joins: `throat`, `first end`. */
  readonly is: string;
  readonly spots: readonly Spot[];
  /** Metal beyond the side: half of a seam, or a flange. */
  readonly added: Inches;
  readonly arcs?: readonly Arc[];
}

export interface Line {
  readonly is: 'bend' | 'mark';
  readonly from: Spot;
  readonly to: Spot;
}

/** An opening cut into a piece. */
export interface Cutout {
  readonly is: string;
  readonly outline: readonly Spot[];
  /** In square inches, exact where the outline is drawn by points. */
  readonly area: number;
}

/** A kind of flat piece: its sides go round to the left, without seams. */
export interface Piece {
  readonly part: number;
  readonly name: string;
  readonly pieces: number;
  readonly sides: readonly Side[];
  readonly lines: readonly Line[];
  readonly cutouts?: readonly Cutout[];
}

export const spot = (across: number, up: number): Spot => ({ across, up });

/** A side with nothing beyond it. */
export const edge = (is: string, ...spots: readonly Spot[]): Side => ({ is, spots, added: inches(0) });

/** Points along a circle, both ends included. */
export function arcSpots({ center, radius, from, to }: Arc, divisions: number): readonly Spot[] {
  return Array.from({ length: divisions + 1 }, (_, index) =>
    onArc(center, radius, from + ((to - from) * index) / divisions),
  );
}

/** The outline without seams; no point stands twice. */
export function netOutline(piece: Piece): readonly Spot[] {
  return tidy(piece.sides.flatMap((side) => side.spots));
}

/** The line to cut: each side moved out by what is added to it. Where two sides meet in an outward corner their strips
 *  end square, which leaves a notch; in an inward or a flat one they meet. */
export function cutOutline(piece: Piece): readonly Spot[] {
  const strips = stripsOf(piece);
  return tidy(
    strips.flatMap(({ outer, side }, index) => {
      const next = strips[(index + 1) % strips.length];
      const end = side.spots.at(-1);
      return next?.isNotched && end && side.added + next.side.added > 0 ? [...outer, end] : outer;
    }),
  );
}

export interface SeamStrip {
  readonly side: Side;
  /** The net side, moved out. */
  readonly outer: readonly Spot[];
  /** Its strip ends square where it begins. */
  readonly isNotched: boolean;
}

/** The sides of a piece that have any length, each with the far edge of its strip. */
export function stripsOf(piece: Piece): readonly SeamStrip[] {
  const sides = piece.sides
    .map((side) => ({ ...side, spots: tidyLine(side.spots) }))
    .filter((side) => side.spots.length > 1);
  return sides.map((side, index) => {
    const before = sides[(index + sides.length - 1) % sides.length] ?? side;
    const after = sides[(index + 1) % sides.length] ?? side;
    const atStart = cornerOf(before, side);
    const atEnd = cornerOf(side, after);
    const outer = side.spots.map((at, place) => {
      const [from, to] = [side.spots[place - 1], side.spots[place + 1]];
      if (from === undefined && !atStart.isNotch) return atStart.meet;
      if (to === undefined && !atEnd.isNotch) return atEnd.meet;
      const besideArc = movedOffArc(at, side);
      if (besideArc) return besideArc;
      if (from === undefined) return moved(at, normal(at, to ?? at), side.added);
      if (to === undefined) return moved(at, normal(from, at), side.added);
      const meet = meetOf(at, normal(from, at), side.added, normal(at, to), side.added);
      return isHollow(from, at, to) && overshoots(from, at, to, meet) ? at : meet;
    });
    return { side, outer, isNotched: atStart.isNotch };
  });
}

/** Along a side: exact on its arcs, straight between other points. */
export function sideLength(side: Side): Inches {
  const straight = side.spots.reduce((sum, at, index) => sum + distance(side.spots[index - 1] ?? at, at), 0);
  return inches(
    (side.arcs ?? []).reduce((sum, arc) => sum + arcLength(arc) - chordsLength(arc, side), straight),
  );
}

/** Area without seams and openings, exact on arcs. */
export function netArea(piece: Piece): SquareFeet {
  const polygon = areaWithin(piece.sides.flatMap((side) => side.spots));
  const bulges = piece.sides.flatMap((side) => (side.arcs ?? []).map((arc) => bulge(arc, side)));
  const added = bulges.reduce((sum, one) => sum + one, 0);
  const removed = (piece.cutouts ?? []).reduce((sum, one) => sum + one.area, 0);
  return squareFeetFromSquareInches(polygon + added - removed);
}

/** The rectangle of sheet that the blank is cut from, seams included, as the piece lies. */
export function blankSize(piece: Piece): {
  readonly width: Inches;
  readonly length: Inches;
  readonly corner: Spot;
} {
  const spots = [...cutOutline(piece), ...piece.sides.flatMap(turningSpots)];
  const across = spots.map((at) => at.across);
  const up = spots.map((at) => at.up);
  const corner = spot(Math.min(...across), Math.min(...up));
  return {
    width: inches(Math.max(...across) - corner.across),
    length: inches(Math.max(...up) - corner.up),
    corner,
  };
}

/** The area within a closed line, in square inches; to the left is positive. */
export function areaWithin(spots: readonly Spot[]): number {
  return spots.reduce((sum, at, index) => {
    const next = spots[(index + 1) % spots.length] ?? at;
    return sum + (at.across * next.up - next.across * at.up) / 2;
  }, 0);
}

/** Whether two lines of a closed outline cross: such a pattern runs over itself on the sheet. */
export function crossesItself(outline: readonly Spot[]): boolean {
  const lines = outline.map((from, index) => ({ from, to: outline[(index + 1) % outline.length] ?? from }));
  return lines.some((one, index) =>
    lines.slice(index + 2).some((other) => isParted(one, other) && isParted(other, one)),
  );
}

export function distance(one: Spot, other: Spot): number {
  return Math.hypot(other.across - one.across, other.up - one.up);
}

/** Under this turn, in radians, the strips of two sides run on into each other. */
const flatTurn = 0.35;

function cornerOf(before: Side, after: Side): { readonly isNotch: boolean; readonly meet: Spot } {
  const at = after.spots[0] ?? spot(0, 0);
  const first = normal(before.spots.at(-2) ?? at, at);
  const second = normal(at, after.spots[1] ?? at);
  const turn = Math.atan2(
    first.across * second.up - first.up * second.across,
    first.across * second.across + first.up * second.up,
  );
  const isStep = Math.abs(before.added - after.added) > 1e-9 && turn > -flatTurn;
  return { isNotch: turn > flatTurn || isStep, meet: meetOf(at, first, before.added, second, after.added) };
}

/** Where two lines meet that run beside a corner, each at its own distance. */
function meetOf(at: Spot, first: Spot, by: number, second: Spot, bySecond: number): Spot {
  const turn = first.across * second.up - first.up * second.across;
  if (Math.abs(turn) < 1e-9) return moved(at, second, (by + bySecond) / 2);
  return spot(
    at.across + (by * second.up - bySecond * first.up) / turn,
    at.up + (bySecond * first.across - by * second.across) / turn,
  );
}

/** The ends of the other line lie on either side of this one. */
function isParted(line: Pick<Line, 'from' | 'to'>, other: Pick<Line, 'from' | 'to'>): boolean {
  return areaWithin([line.from, line.to, other.from]) * areaWithin([line.from, line.to, other.to]) < -1e-9;
}

function isHollow(from: Spot, at: Spot, to: Spot): boolean {
  return areaWithin([from, at, to]) < 0;
}

/** In an inward corner: the strips of two short edges would meet past their ends, so both taper to the corner. */
function overshoots(from: Spot, at: Spot, to: Spot, meet: Spot): boolean {
  const along = (end: Spot) =>
    ((meet.across - at.across) * (end.across - at.across) + (meet.up - at.up) * (end.up - at.up)) /
    (distance(at, end) || 1);
  return along(from) > distance(at, from) || along(to) > distance(at, to);
}

function moved(at: Spot, direction: Spot, by: number): Spot {
  return spot(at.across + direction.across * by, at.up + direction.up * by);
}

/** Outward of a line on the way round to the left. */
function normal(from: Spot, to: Spot): Spot {
  const length = distance(from, to) || 1;
  return spot((to.up - from.up) / length, -(to.across - from.across) / length);
}

/** A point that lies on an arc of its side, moved along the radius. A hollow arc that is tighter than its strip is wide
 *  leaves room for the strip up to the center only. */
function movedOffArc(at: Spot, side: Side): Spot | null {
  const arc = side.arcs?.find(
    ({ center, radius }) => Math.abs(distance(center, at) - radius) < 1e-9 * Math.max(1, radius),
  );
  if (!arc) return null;
  const { center, radius } = arc;
  const share = arc.to > arc.from ? side.added / radius : -Math.min(side.added / radius, 1);
  return spot(at.across + share * (at.across - center.across), at.up + share * (at.up - center.up));
}

function onArc(center: Spot, radius: number, angle: number): Spot {
  const turn = (angle * Math.PI) / 180;
  return spot(center.across + radius * Math.cos(turn), center.up + radius * Math.sin(turn));
}

function arcLength({ radius, from, to }: Arc): number {
  return (radius * Math.abs(to - from) * Math.PI) / 180;
}

/** How many chords of the side lie on the arc. */
function chordsOf({ center, radius, from, to }: Arc, side: Side): number {
  const [start, end] = [onArc(center, radius, from), onArc(center, radius, to)];
  const spots = tidyLine(side.spots);
  const first = spots.findIndex((at) => distance(at, start) < 1e-9);
  const last = spots.findLastIndex((at) => distance(at, end) < 1e-9);
  return Math.max(1, last - first);
}

function chordsLength(arc: Arc, side: Side): number {
  const chords = chordsOf(arc, side);
  return 2 * chords * arc.radius * Math.sin((Math.abs(arc.to - arc.from) * Math.PI) / 360 / chords);
}

/** Between the arc and its chords; taken off where the arc turns to the right. */
function bulge(arc: Arc, side: Side): number {
  const chords = chordsOf(arc, side);
  const turn = ((arc.to - arc.from) * Math.PI) / 180 / chords;
  return (chords * arc.radius ** 2 * (turn - Math.sin(turn))) / 2;
}

/** Where an arc reaches farthest to the right, up, to the left or down, with what is added there. */
function turningSpots(side: Side): readonly Spot[] {
  return (side.arcs ?? []).flatMap((arc) => {
    const [least, most] = [Math.min(arc.from, arc.to), Math.max(arc.from, arc.to)];
    const outward = arc.to > arc.from ? side.added : -side.added;
    return [-360, -270, -180, -90, 0, 90, 180, 270, 360]
      .filter((angle) => angle > least && angle < most)
      .map((angle) => onArc(arc.center, Math.max(0, arc.radius + outward), angle));
  });
}

function tidy(spots: readonly Spot[]): readonly Spot[] {
  const line = tidyLine(spots);
  const [first, last] = [line[0], line.at(-1)];
  return line.length > 1 && first && last && distance(first, last) < 1e-9 ? line.slice(0, -1) : line;
}

function tidyLine(spots: readonly Spot[]): readonly Spot[] {
  return spots.filter((at, index) => {
    const before = spots[index - 1];
    return before === undefined || distance(before, at) >= 1e-9;
  });
}
