import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type Arc, arcSpots, edge, type Line, type Piece, type Spot, spot } from './piece.ts';

/** Ogee: two equal arcs. Angled: two mitered elbows of one angle. Slant: straight between the ends, narrower across. */
export const offsetForms = ['ogee', 'angled', 'slant'] as const;
export type OffsetForm = (typeof offsetForms)[number];

export interface OffsetSizes {
  readonly form: OffsetForm;
  /** In the plane of the offset. */
  readonly width: Inches;
  readonly depth: Inches;
  /** How far the duct moves over. */
  readonly shift: Inches;
  /** Along the duct, between the two bends on the centerline, or over the whole sweep of an ogee. */
  readonly length: Inches | null;
  /** Of each of the two elbows, in degrees, in place of the length; for the angled form only. */
  readonly angle: number | null;
  /** Straight ends; of the angled form counted from the inner corners. */
  readonly firstNeck: Inches;
  readonly secondNeck: Inches;
  readonly pocket: Inches;
  readonly flange: Inches;
  readonly divisions: number;
}

export interface Offset {
  /** Along the duct between the bends. */
  readonly run: Inches;
  /** Centerline between the bends: the sweep of an ogee, the leg of the others. */
  readonly travel: Inches;
  /** Turned at each bend, in degrees. */
  readonly turn: number;
  /** Of the centerline of an ogee. */
  readonly radius: Inches | null;
  /** Square across the sloping part, as a share of the width. */
  readonly throughShare: number;
  /** Part 1 the cheek, 2 the side that the duct moves towards, 3 the other. */
  readonly pieces: readonly Piece[];
}

/** Cheeks and sides of a rectangular offset with parallel ends. In inches and degrees; the sheet as thin, bends sharp.
 *  Faults: `offset_needs`, `offset_has_angle`, `offset_has_both`, `offset_too_tight`. Source: geometry. */
export function offset(sizes: OffsetSizes): Outcome<Offset, TradeFault> {
  const { form, length, angle, shift } = sizes;
  if (form !== 'angled' && angle !== null) return failed({ code: 'offset_has_angle', form });
  if (length !== null && angle !== null) return failed({ code: 'offset_has_both', length, angle });
  const run = length ?? (angle === null ? null : inches(shift / Math.tan((angle * Math.PI) / 180)));
  if (run === null) return failed({ code: 'offset_needs', form });
  switch (form) {
    case 'ogee':
      return ogee(sizes, run);
    case 'angled':
      return done(angled(sizes, run));
    case 'slant':
      return done(slant(sizes, run));
  }
}

function ogee(sizes: OffsetSizes, run: Inches): Outcome<Offset, TradeFault> {
  const { width, shift, firstNeck, secondNeck, flange, divisions } = sizes;
  const radius = (run ** 2 + shift ** 2) / (4 * shift);
  const [inner, outer] = [radius - width / 2, radius + width / 2];
  if (inner < 0) {
    const least = inches(Math.sqrt(2 * shift * width - shift ** 2));
    return failed({ code: 'offset_too_tight', length: run, least });
  }
  const turn = 2 * Math.atan2(shift, run);
  const degrees = (turn * 180) / Math.PI;
  const [low, high] = [spot(radius, 0), spot(shift - radius, run)];
  const arc = (center: Spot, size: number, from: number, to: number): Arc => ({
    center,
    radius: size,
    from,
    to,
  });
  const rightArcs = [arc(low, inner, 180, 180 - degrees), arc(high, outer, -degrees, 0)];
  const leftArcs = [arc(high, inner, 0, -degrees), arc(low, outer, 180 - degrees, 180)];
  const spotsOf = (arcs: readonly Arc[]) => arcs.flatMap((one) => arcSpots(one, divisions));
  const withLength = (arcs: readonly Arc[]) => arcs.filter((one) => one.radius > 0);
  const [a, b] = [spot(-width / 2, -firstNeck), spot(width / 2, -firstNeck)];
  const [c, d] = [spot(shift + width / 2, run + secondNeck), spot(shift - width / 2, run + secondNeck)];
  const cheek: Piece = {
    part: 1,
    name: 'cheek',
    pieces: 2,
    sides: [
      edge('first end', a, b),
      { is: 'near side', spots: [b, ...spotsOf(rightArcs), c], added: flange, arcs: withLength(rightArcs) },
      edge('second end', c, d),
      { is: 'far side', spots: [d, ...spotsOf(leftArcs), a], added: flange, arcs: withLength(leftArcs) },
    ],
    lines: [],
  };
  const [innerArc, outerArc] = [inner * turn, outer * turn];
  return done({
    run,
    travel: inches(2 * radius * turn),
    turn: degrees,
    radius: inches(radius),
    throughShare: 1,
    pieces: [
      cheek,
      strip(2, 'near side', [firstNeck, innerArc, outerArc, secondNeck], 'mark', sizes),
      strip(3, 'far side', [firstNeck, outerArc, innerArc, secondNeck], 'mark', sizes),
    ],
  });
}

function angled(sizes: OffsetSizes, run: Inches): Offset {
  const { width, shift, firstNeck, secondNeck, flange } = sizes;
  const turn = Math.atan2(shift, run);
  const travel = Math.hypot(shift, run);
  const half = width / 2;
  // A miter at half the turn carries the outer corner so far beyond the centerline, and the inner one short of it.
  const beyond = half * Math.tan(turn / 2);
  const [first, second] = [firstNeck + beyond, secondNeck + beyond];
  const [a, b] = [spot(-half, -first), spot(half, -first)];
  const [c, d] = [spot(shift + half, run + second), spot(shift - half, run + second)];
  const cheek: Piece = {
    part: 1,
    name: 'cheek',
    pieces: 2,
    sides: [
      edge('first end', a, b),
      {
        is: 'near side',
        spots: [b, spot(half, -beyond), spot(shift + half, run - beyond), c],
        added: flange,
      },
      edge('second end', c, d),
      {
        is: 'far side',
        spots: [d, spot(shift - half, run + beyond), spot(-half, beyond), a],
        added: flange,
      },
    ],
    lines: [],
  };
  return {
    run,
    travel: inches(travel),
    turn: (turn * 180) / Math.PI,
    radius: null,
    throughShare: 1,
    pieces: [
      cheek,
      strip(2, 'near side', [firstNeck, travel, second + beyond], 'bend', sizes),
      strip(3, 'far side', [first + beyond, travel, secondNeck], 'bend', sizes),
    ],
  };
}

function slant(sizes: OffsetSizes, run: Inches): Offset {
  const { width, shift, firstNeck, secondNeck, flange } = sizes;
  const half = width / 2;
  const turn = Math.atan2(shift, run);
  const travel = Math.hypot(shift, run);
  const [a, b] = [spot(-half, -firstNeck), spot(half, -firstNeck)];
  const [c, d] = [spot(shift + half, run + secondNeck), spot(shift - half, run + secondNeck)];
  const cheek: Piece = {
    part: 1,
    name: 'cheek',
    pieces: 2,
    sides: [
      edge('first end', a, b),
      { is: 'near side', spots: [b, spot(half, 0), spot(shift + half, run), c], added: flange },
      edge('second end', c, d),
      { is: 'far side', spots: [d, spot(shift - half, run), spot(-half, 0), a], added: flange },
    ],
    lines: [],
  };
  return {
    run,
    travel: inches(travel),
    turn: (turn * 180) / Math.PI,
    radius: null,
    throughShare: Math.cos(turn),
    pieces: [
      cheek,
      strip(2, 'near side', [firstNeck, travel, secondNeck], 'bend', sizes),
      strip(3, 'far side', [firstNeck, travel, secondNeck], 'bend', sizes),
    ],
  };
}

/** A side of the duct, rolled out from the first end, with a line between every two of its lengths. */
function strip(
  part: number,
  name: string,
  lengths: readonly number[],
  is: Line['is'],
  { depth, pocket }: OffsetSizes,
): Piece {
  const total = lengths.reduce((sum, one) => sum + one, 0);
  const places = lengths.map((_, index) => lengths.slice(0, index).reduce((sum, one) => sum + one, 0));
  const [a, b, c, d] = [spot(0, 0), spot(total, 0), spot(total, depth), spot(0, depth)];
  return {
    part,
    name,
    pieces: 1,
    sides: [
      { is: 'cheek edge', spots: [a, b], added: pocket },
      edge('second end', b, c),
      { is: 'cheek edge', spots: [c, d], added: pocket },
      edge('first end', d, a),
    ],
    lines: places
      .filter((at) => at > 0 && at < total)
      .map((at) => ({ is, from: spot(at, 0), to: spot(at, depth) })),
  };
}
