import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { curveDivisions, drawnStations, turnAt } from './divisions.ts';
import { edge, type Line, type Piece, spot } from './piece.ts';

/** Where the seam of the branch lies: on the side to which it leans, or on the other one. */
export const tapSeams = ['throat', 'heel'] as const;
export type TapSeam = (typeof tapSeams)[number];

export interface RoundTapSizes {
  readonly branch: Inches;
  /** Diameter of a round trunk; null for the flat wall of a rectangular one. */
  readonly trunk: Inches | null;
  /** Between the two ducts, in degrees, up to 90. */
  readonly angle: number;
  /** How far the branch stands off the middle of the trunk, sideways. */
  readonly offset: Inches;
  readonly divisions: number;
}

/** One mark round the branch. */
export interface TapStation {
  /** From the middle of a round trunk, or from the flat wall, along the branch to where it ends. */
  readonly reach: Inches;
  /** On the unrolled trunk, from where the two middle lines meet: along it, towards the throat; and round it, from its top. */
  readonly along: Inches;
  readonly around: Inches;
}

export interface RoundTap {
  /** By mark; the first and the last are in the throat. */
  readonly stations: readonly TapStation[];
  /** The same in finer steps, for the outlines. */
  readonly curve: readonly TapStation[];
  /** The farthest and the nearest that any line of the branch ends, between the marks too. */
  readonly farthest: Inches;
  readonly nearest: Inches;
  /** The longest line of the branch less the shortest. */
  readonly saddle: Inches;
  readonly hole: Piece;
}

/** Where a round branch meets its trunk: the hole, and how far each line of the branch reaches. In inches and degrees; the
 *  branch by its outside, the trunk by the skin that is cut. Faults: `tap_past_the_trunk`. Source: geometry. */
export function roundTap(sizes: RoundTapSizes): Outcome<RoundTap, TradeFault> {
  const { branch, trunk, offset, divisions } = sizes;
  const reach = Math.abs(offset) + branch / 2;
  if (trunk !== null && reach > (trunk / 2) * (1 + 1e-12)) {
    return failed({ code: 'tap_past_the_trunk', reach: inches(reach), trunkRadius: inches(trunk / 2) });
  }
  const stationsIn = (parts: number): readonly TapStation[] =>
    Array.from({ length: parts + 1 }, (_, index) => stationAt(sizes, turnAt(index + 1, parts)));
  const curve = stationsIn(curveDivisions);
  const farthest = mostOf((turn) => stationAt(sizes, turn).reach);
  const nearest = -mostOf((turn) => -stationAt(sizes, turn).reach);
  return done({
    stations: stationsIn(divisions),
    curve,
    farthest: inches(farthest),
    nearest: inches(nearest),
    saddle: inches(farthest - nearest),
    hole: holeOf(curve),
  });
}

/** With the lines from throat to heel and from side to side. */
function holeOf(curve: readonly TapStation[]): Piece {
  const spots = curve.map((at) => spot(at.around, at.along));
  const line = (from: number, to: number): readonly Line[] => {
    const [start, end] = [spots[from], spots[to]];
    return start && end ? [{ is: 'mark', from: start, to: end }] : [];
  };
  const quarter = curveDivisions / 4;
  return {
    part: 1,
    name: 'hole',
    pieces: 1,
    sides: [edge('edge of the hole', ...[...spots].reverse())],
    lines: [...line(0, 2 * quarter), ...line(quarter, 3 * quarter)],
  };
}

function stationAt({ branch, trunk, angle, offset }: RoundTapSizes, turn: number): TapStation {
  const [lean, radius] = [(angle * Math.PI) / 180, branch / 2];
  const sideways = offset + radius * Math.sin(turn);
  const height = trunk === null ? 0 : Math.sqrt(Math.max(0, (trunk / 2) ** 2 - sideways ** 2));
  const reach = (height + radius * Math.cos(turn) * Math.cos(lean)) / Math.sin(lean);
  const share = trunk === null ? 0 : Math.max(-1, Math.min(1, sideways / (trunk / 2)));
  return {
    reach: inches(reach),
    along: inches(reach * Math.cos(lean) + radius * Math.cos(turn) * Math.sin(lean)),
    around: inches(trunk === null ? sideways : (trunk / 2) * Math.asin(share)),
  };
}

/** The most that a figure comes to in a whole turn: the best of 720 marks, closed in on between its neighbours. */
function mostOf(figureAt: (turn: number) => number): number {
  const step = Math.PI / 360;
  const figures = Array.from({ length: 720 }, (_, index) => figureAt(index * step));
  const best = figures.indexOf(Math.max(...figures));
  let [from, to] = [(best - 1) * step, (best + 1) * step];
  for (let round = 0; round < 60; round += 1) {
    const third = (to - from) / 3;
    if (figureAt(from + third) < figureAt(to - third)) from += third;
    else to -= third;
  }
  return Math.max(figures[best] ?? 0, figureAt((from + to) / 2));
}

export interface TapEndSizes {
  /** The shortest line of the branch, from its square end to the trunk. */
  readonly shortest: Inches;
  readonly seamAt: TapSeam;
  /** What the lengthwise seam takes, both edges together. */
  readonly seam: Inches;
  /** Beyond the curve, to turn out or to cut into tabs. */
  readonly tabs: Inches;
  /** Beyond the square end, for its joint. */
  readonly end: Inches;
}

export interface TapEnd {
  /** Lengths of the branch by mark, from the left edge, which is the seam. */
  readonly ordinates: readonly Inches[];
  /** From the middle of a round trunk, or from the flat wall, along the middle of the branch to its square end. */
  readonly axis: Inches;
  readonly girth: Inches;
  readonly piece: Piece;
}

/** Blank of a branch with its square end below and the curve that meets the trunk above. In inches. Source: geometry. */
export function tapEnd(branch: Inches, tap: RoundTap, sizes: TapEndSizes): TapEnd {
  const axis = tap.farthest + sizes.shortest;
  const fromSeam = (stations: readonly TapStation[]): readonly Inches[] => {
    const turn = stations.slice(0, -1);
    const start = sizes.seamAt === 'throat' ? 0 : turn.length / 2;
    return [...turn.slice(start), ...turn.slice(0, start), ...turn.slice(start, start + 1)].map((station) =>
      inches(axis - station.reach),
    );
  };
  const girth = Math.PI * branch;
  const curve = fromSeam(tap.curve).map((ordinate, index) =>
    spot((girth * index) / curveDivisions, ordinate),
  );
  const [first = spot(0, 0), last = spot(0, 0)] = [curve[0], curve.at(-1)];
  const half = { added: inches(sizes.seam / 2) };
  const ordinates = fromSeam(tap.stations);
  const parts = ordinates.length - 1;
  return {
    ordinates,
    axis: inches(axis),
    girth: inches(girth),
    piece: {
      part: 1,
      name: 'branch',
      pieces: 1,
      sides: [
        { ...edge('square end', spot(0, 0), spot(girth, 0)), added: sizes.end },
        { ...edge('right seam', spot(girth, 0), last), ...half },
        { ...edge('at the trunk', ...[...curve].reverse()), added: sizes.tabs },
        { ...edge('left seam', first, spot(0, 0)), ...half },
      ],
      lines: drawnStations(parts).map((station): Line => {
        const across = (girth * station) / parts;
        return { is: 'mark', from: spot(across, 0), to: spot(across, ordinates[station] ?? 0) };
      }),
    },
  };
}
