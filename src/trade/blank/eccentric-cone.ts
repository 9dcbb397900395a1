import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type Stepped, stepOf, turnAt } from './divisions.ts';
import { edge, type Piece } from './piece.ts';
import { type FlatSkin, lineBetween, type SpacePoint, type Triangle, unfold } from './unfold.ts';

/** Where the seam lies: on the shortest line of the skin or on the longest. */
export const seamLines = ['short line', 'long line'] as const;
export type SeamLine = (typeof seamLines)[number];

export interface EccentricSizes {
  readonly firstDiameter: Inches;
  readonly secondDiameter: Inches;
  /** Between the ends, square to them. */
  readonly height: Inches;
  /** Sideways, from the middle of the first end to that of the second. */
  readonly offset: Inches;
  readonly divisions: number;
  readonly stepped: Stepped;
  /** One piece, or two alike of which one is turned over. */
  readonly pieces: 1 | 2;
  readonly seamOn: SeamLine;
  readonly seam: Inches;
  readonly firstEnd: Inches;
  readonly secondEnd: Inches;
}

export interface EccentricCone {
  /** True lengths by station, from the left edge; the first station is the seam. */
  readonly lines: readonly Inches[];
  /** One part of each end on the flat. */
  readonly firstStep: Inches;
  readonly secondStep: Inches;
  /** From the left edge to the right one, in degrees, for the pieces together. */
  readonly turn: number;
  /** Where all lines meet: above the first end, and sideways from its middle. Null where the ends are alike. */
  readonly apex: { readonly height: Inches; readonly offset: Inches } | null;
  readonly piece: Piece;
}

/** Reducer between two round ends that stand level but not on one center, by true lengths. In inches and degrees; the
 *  sheet as thin, diameters at its middle. Faults: `too_few_divisions`. Source: geometry. */
export function eccentricCone(sizes: EccentricSizes): Outcome<EccentricCone, TradeFault> {
  const { firstDiameter, secondDiameter, height, offset, divisions, pieces } = sizes;
  const [first, second] = [firstDiameter / 2, secondDiameter / 2];
  const steps = [first, second].map((radius) => stepOf(radius, divisions, sizes.stepped));
  const [firstStep = 0, secondStep = 0] = steps;
  const chords = [first, second].map((radius) => stepOf(radius, divisions, 'chords'));
  const [firstChord = 0, secondChord = 0] = chords;
  // The shortest line is on the side where the second end lies farther inward of the first one, or the least outward.
  const isShortAtZero = offset * (second - first) <= 0;
  const seamAtZero = isShortAtZero === (sizes.seamOn === 'short line');
  const at = (radius: number, middle: number, up: number, station: number): SpacePoint => {
    const turn = turnAt(station, divisions) + (seamAtZero ? 0 : Math.PI);
    return { x: middle + radius * Math.cos(turn), y: radius * Math.sin(turn), z: up };
  };
  const stations = Array.from({ length: divisions / pieces + 1 }, (_, index) => index + 1);
  const lines = stations.map((station) =>
    lineBetween(at(first, 0, 0, station), at(second, offset, height, station)),
  );
  const triangles = stations.slice(1).flatMap((station): readonly Triangle[] => {
    const diagonal = lineBetween(at(first, 0, 0, station), at(second, offset, height, station - 1));
    // The four-sided panel is flat and its ends run alike, so this keeps its true sides when arcs take the place of chords.
    const across = Math.sqrt(diagonal ** 2 + firstStep * secondStep - firstChord * secondChord);
    return [
      { on: 'first', step: firstStep, across },
      { on: 'second', step: secondStep, across: lines[station - 1] ?? 0 },
    ];
  });
  const flat = unfold(lines[0] ?? 0, triangles);
  if (flat === null) return failed({ code: 'too_few_divisions', got: divisions });
  return done({
    lines: lines.map(inches),
    firstStep: inches(firstStep),
    secondStep: inches(secondStep),
    turn: Math.abs(flat.turn) * pieces,
    apex: apexOf(sizes),
    piece: eccentricPiece(sizes, flat),
  });
}

function apexOf({ firstDiameter, secondDiameter, height, offset }: EccentricSizes): EccentricCone['apex'] {
  const taper = firstDiameter - secondDiameter;
  if (Math.abs(taper) < 1e-9) return null;
  const share = firstDiameter / taper;
  return { height: inches(height * share), offset: inches(offset * share) };
}

function eccentricPiece(sizes: EccentricSizes, flat: FlatSkin): Piece {
  const { pieces, seam, firstEnd, secondEnd } = sizes;
  const [left, right] = [flat.lines[0], flat.lines.at(-1)];
  const seamSide = (is: string, ...spots: Parameters<typeof edge>[1][]) => ({
    ...edge(is, ...spots),
    added: inches(seam / 2),
  });
  return {
    part: 1,
    name: pieces === 1 ? 'eccentric cone' : 'half, one of the two turned over',
    pieces,
    sides: [
      { ...edge('first end', ...flat.first), added: firstEnd },
      ...(right ? [seamSide('right seam', right.from, right.to)] : []),
      { ...edge('second end', ...[...flat.second].reverse()), added: secondEnd },
      ...(left ? [seamSide('left seam', left.to, left.from)] : []),
    ],
    // Every other line is a diagonal, which the trade does not mark.
    lines: flat.lines
      .slice(1, -1)
      .flatMap((line, index) => (index % 2 === 1 ? [{ is: 'mark', ...line }] : [])),
  };
}
