import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { type Arc, arcSpots, edge, type Line, type Piece, type Side, type Spot, spot } from './piece.ts';

/** Rounded: throat and heel are arcs about one center. Mitered: both are square corners. */
export const elbowForms = ['radius', 'mitered'] as const;
export type ElbowForm = (typeof elbowForms)[number];

export interface ElbowSizes {
  readonly form: ElbowForm;
  /** Across the turn. */
  readonly width: Inches;
  readonly depth: Inches;
  /** Degrees turned through. */
  readonly angle: number;
  /** 0 for a sharp throat; not used when mitered. */
  readonly throatRadius: Inches;
  readonly firstNeck: Inches;
  readonly secondNeck: Inches;
  /** On both edges of throat and heel. */
  readonly pocket: Inches;
  /** On the curved edges of the cheeks. */
  readonly flange: Inches;
  /** Points that are told on each arc; sizes and areas are exact with any number. */
  readonly divisions: number;
}

export interface RectangularElbow {
  readonly heelRadius: Inches;
  /** Of the turn alone, without the straight ends. */
  readonly throatLength: Inches;
  readonly heelLength: Inches;
  readonly centerline: Inches;
  /** Part 1 the cheek, 2 the heel, 3 the throat; a sharp throat without straight ends has no strip. */
  readonly pieces: readonly Piece[];
}

/** A miter runs off the bench as the turn comes near 180°. */
export const mostMiter = 150;

/** Cheeks, heel and throat of a rectangular elbow. In inches and degrees; the sheet as thin, bends sharp.
 *  Faults: `miter_too_sharp`, `throat_flanges_meet`. Source: geometry. */
export function rectangularElbow(sizes: ElbowSizes): Outcome<RectangularElbow, TradeFault> {
  const { form, width, depth, angle, firstNeck, secondNeck } = sizes;
  if (form === 'mitered' && angle > mostMiter) {
    return failed({ code: 'miter_too_sharp', angle, most: mostMiter });
  }
  const turn = (angle * Math.PI) / 180;
  const throatRadius = form === 'mitered' ? 0 : sizes.throatRadius;
  const room = leastThroatLeg(sizes, throatRadius);
  const leg = Math.min(firstNeck, secondNeck);
  if (leg > 0 && leg < room)
    return failed({ code: 'throat_flanges_meet', flange: sizes.flange, least: room });
  const heelRadius = throatRadius + width;
  const throatLength = throatRadius * turn;
  const corner = width * Math.tan(turn / 2);
  const heelLength = form === 'mitered' ? 2 * corner : heelRadius * turn;
  const cheek =
    form === 'mitered' ? miteredCheek(sizes, corner) : roundCheek(sizes, throatRadius, heelRadius);
  const heelLines =
    form === 'mitered'
      ? [bendAt(firstNeck + corner, depth)]
      : curveLines(firstNeck, heelLength, secondNeck, depth);
  const throatLines =
    throatLength === 0 ? [bendAt(firstNeck, depth)] : curveLines(firstNeck, throatLength, secondNeck, depth);
  const throatTotal = firstNeck + throatLength + secondNeck;
  return done({
    heelRadius: inches(heelRadius),
    throatLength: inches(throatLength),
    heelLength: inches(heelLength),
    centerline: inches(form === 'mitered' ? corner : (throatRadius + width / 2) * turn),
    pieces: [
      cheek,
      strip(2, 'heel', firstNeck + heelLength + secondNeck, sizes, heelLines),
      ...(throatTotal > 0 ? [strip(3, 'throat', throatTotal, sizes, throatLines)] : []),
    ],
  });
}

/** So long must both straight ends be for the flanges of a tight throat to lie beside each other. */
function leastThroatLeg({ angle, flange }: ElbowSizes, throatRadius: number): Inches {
  return inches(Math.max(0, flange - throatRadius) * Math.tan((angle * Math.PI) / 360));
}

/** About the center of the turn, the first end below it to the right, turning left. */
function roundCheek(sizes: ElbowSizes, throatRadius: number, heelRadius: number): Piece {
  const { angle, firstNeck, secondNeck, flange, divisions } = sizes;
  const center = spot(0, 0);
  const heel: Arc = { center, radius: heelRadius, from: 0, to: angle };
  const throat: Arc = { center, radius: throatRadius, from: angle, to: 0 };
  const [heelSpots, throatSpots] = [arcSpots(heel, divisions), arcSpots(throat, divisions)];
  const arcOf = (arc: Arc) => (arc.radius > 0 ? { arcs: [arc] } : {});
  const outer = spot(heelRadius, -firstNeck);
  const inner = spot(throatRadius, -firstNeck);
  const outerEnd = onward(heelSpots.at(-1) ?? center, angle, secondNeck);
  const innerEnd = onward(throatSpots[0] ?? center, angle, secondNeck);
  return {
    part: 1,
    name: 'cheek',
    pieces: 2,
    sides: [
      edge('first end', inner, outer),
      { is: 'heel', spots: [outer, ...heelSpots, outerEnd], added: flange, ...arcOf(heel) },
      edge('second end', outerEnd, innerEnd),
      { is: 'throat', spots: [innerEnd, ...throatSpots, inner], added: flange, ...arcOf(throat) },
    ],
    lines: [],
  };
}

/** The sharp throat at the origin. */
function miteredCheek({ width, angle, firstNeck, secondNeck, flange }: ElbowSizes, corner: number): Piece {
  const turn = (angle * Math.PI) / 180;
  const throat = spot(0, 0);
  const [inner, outer] = [spot(0, -firstNeck), spot(width, -firstNeck)];
  const across = spot(width * Math.cos(turn), width * Math.sin(turn));
  const [innerEnd, outerEnd] = [onward(throat, angle, secondNeck), onward(across, angle, secondNeck)];
  return {
    part: 1,
    name: 'cheek',
    pieces: 2,
    sides: [
      edge('first end', inner, outer),
      { is: 'heel', spots: [outer, spot(width, corner), outerEnd], added: flange },
      edge('second end', outerEnd, innerEnd),
      { is: 'throat', spots: [innerEnd, throat, inner], added: flange },
    ],
    lines: [],
  };
}

function strip(
  part: number,
  name: string,
  length: number,
  { depth, pocket }: ElbowSizes,
  lines: readonly Line[],
): Piece {
  const corners = [spot(0, 0), spot(length, 0), spot(length, depth), spot(0, depth)] as const;
  const [a, b, c, d] = corners;
  const long = (is: string, from: Spot, to: Spot): Side => ({ is, spots: [from, to], added: pocket });
  return {
    part,
    name,
    pieces: 1,
    sides: [
      long('cheek edge', a, b),
      edge('second end', b, c),
      long('cheek edge', c, d),
      edge('first end', d, a),
    ],
    lines,
  };
}

function curveLines(first: number, curve: number, second: number, depth: number): readonly Line[] {
  const mark = (at: number): Line => ({ is: 'mark', from: spot(at, 0), to: spot(at, depth) });
  return [...(first > 0 ? [mark(first)] : []), ...(second > 0 ? [mark(first + curve)] : [])];
}

function bendAt(at: number, depth: number): Line {
  return { is: 'bend', from: spot(at, 0), to: spot(at, depth) };
}

/** Along the duct after the turn. */
function onward(from: Spot, angle: number, by: number): Spot {
  const turn = (angle * Math.PI) / 180;
  return spot(from.across - by * Math.sin(turn), from.up + by * Math.cos(turn));
}
