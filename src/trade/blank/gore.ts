import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches, type SquareFeet, squareFeetFromSquareInches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { curveDivisions, drawnStations, turnAt } from './divisions.ts';
import { edge, type Line, type Piece, type Spot, spot } from './piece.ts';

/** Where the lengthwise seam of a gore lies. */
export const goreSeams = ['throat', 'heel'] as const;
export type GoreSeam = (typeof goreSeams)[number];

export interface GoredElbowSizes {
  readonly diameter: Inches;
  /** From the center of the turn to the middle of the duct. */
  readonly radius: Inches;
  /** What the elbow turns through, in degrees. */
  readonly angle: number;
  /** Gores, the two end pieces included. */
  readonly pieces: number;
  readonly divisions: number;
  readonly seamAt: GoreSeam;
  /** What the lengthwise seam takes, both edges together. */
  readonly seam: Inches;
  /** The two halves of a joint between gores. */
  readonly singleEdge: Inches;
  readonly doubleEdge: Inches;
  /** Straight metal at the two ends of the elbow. */
  readonly firstCollar: Inches;
  readonly lastCollar: Inches;
}

export interface GoredElbow {
  /** Between a square cut and a joint, in degrees; a joint turns the duct by twice that. */
  readonly miter: number;
  /** From the straight end to each joint, in degrees. */
  readonly joints: readonly number[];
  /** Half widths of a gore: shortest, at the middle of the duct, longest. */
  readonly throat: Inches;
  readonly middle: Inches;
  readonly heel: Inches;
  /** What the joint rises from throat to heel. */
  readonly rise: Inches;
  readonly girth: Inches;
  /** Half widths by station, from the left edge. */
  readonly ordinates: readonly Inches[];
  /** Along the middle of the duct as made, and along the smooth arc. */
  readonly centerline: Inches;
  readonly arc: Inches;
  /** All gores without seams and collars. */
  readonly surface: SquareFeet;
  readonly gores: readonly Piece[];
}

/** A round elbow of flat-sided gores. In inches and degrees; the sheet as thin, the diameter at its middle. Faults:
 *  `radius_inside_elbow`, `too_few_gores`. Source: geometry; five pieces as in a drafting textbook of 1921. */
export function goredElbow(sizes: GoredElbowSizes): Outcome<GoredElbow, TradeFault> {
  const { diameter, radius, angle, pieces, divisions } = sizes;
  const least = Math.ceil(angle / 90 - 1e-9) + 1;
  if (pieces < least) return failed({ code: 'too_few_gores', pieces, angle, least });
  if (radius < diameter / 2) {
    return failed({ code: 'radius_inside_elbow', radius, least: inches(diameter / 2) });
  }
  const miter = angle / (2 * (pieces - 1));
  const slope = Math.tan((miter * Math.PI) / 180);
  const towards = sizes.seamAt === 'throat' ? -1 : 1;
  const ordinatesIn = (parts: number): readonly Inches[] =>
    Array.from({ length: parts + 1 }, (_, index) =>
      inches((radius + ((towards * diameter) / 2) * Math.cos(turnAt(index + 1, parts))) * slope),
    );
  const girth = Math.PI * diameter;
  const centerline = 2 * (pieces - 1) * radius * slope;
  return done({
    miter,
    joints: Array.from({ length: pieces - 1 }, (_, index) => miter * (2 * index + 1)),
    throat: inches((radius - diameter / 2) * slope),
    middle: inches(radius * slope),
    heel: inches((radius + diameter / 2) * slope),
    rise: inches(diameter * slope),
    girth: inches(girth),
    ordinates: ordinatesIn(divisions),
    centerline: inches(centerline),
    arc: inches((radius * angle * Math.PI) / 180),
    surface: squareFeetFromSquareInches(girth * centerline),
    gores: goresOf(sizes, ordinatesIn(curveDivisions), girth),
  });
}

/** The two end pieces, and the gore between them of which there are all others. */
function goresOf(sizes: GoredElbowSizes, ordinates: readonly Inches[], girth: number): readonly Piece[] {
  const { pieces, singleEdge, doubleEdge, firstCollar, lastCollar, seam } = sizes;
  const curve = (sign: 1 | -1): readonly Spot[] =>
    ordinates.map((ordinate, index) => spot((girth * index) / (ordinates.length - 1), sign * ordinate));
  const level = (up: number): readonly Spot[] => [spot(0, up), spot(girth, up)];
  const gore = (
    part: number,
    name: string,
    count: number,
    below: { readonly is: string; readonly spots: readonly Spot[]; readonly added: Inches },
    above: { readonly is: string; readonly spots: readonly Spot[]; readonly added: Inches },
    lines: readonly Line[],
  ): Piece => {
    const [lowLeft, lowRight] = [below.spots[0], below.spots.at(-1)];
    const [highLeft, highRight] = [above.spots[0], above.spots.at(-1)];
    const half = { added: inches(seam / 2) };
    return {
      part,
      name,
      pieces: count,
      sides: [
        below,
        { ...edge('right seam', ...[lowRight, highRight].flatMap((at) => at ?? [])), ...half },
        { ...above, spots: [...above.spots].reverse() },
        { ...edge('left seam', ...[highLeft, lowLeft].flatMap((at) => at ?? [])), ...half },
      ],
      lines,
    };
  };
  const single = { is: 'joint, single edge', spots: curve(1), added: singleEdge };
  const double = { is: 'joint, double edge', spots: curve(-1), added: doubleEdge };
  const square = (up: number) => ({ is: 'straight end', spots: level(up), added: inches(0) });
  const cross: Line = { is: 'mark', from: spot(0, 0), to: spot(girth, 0) };
  const uprights = (below: number, above: number): readonly Line[] =>
    drawnStations(sizes.divisions).map((station) => {
      const ordinate = ordinates[(station * curveDivisions) / sizes.divisions] ?? 0;
      const across = (girth * station) / sizes.divisions;
      return { is: 'mark', from: spot(across, below * ordinate), to: spot(across, above * ordinate) };
    });
  return [
    gore(1, 'first end', 1, square(-firstCollar), single, [cross, ...uprights(0, 1)]),
    gore(2, 'last end', 1, double, square(lastCollar), [cross, ...uprights(-1, 0)]),
    ...(pieces > 2 ? [gore(3, 'middle gore', pieces - 2, double, single, [cross, ...uprights(-1, 1)])] : []),
  ];
}
