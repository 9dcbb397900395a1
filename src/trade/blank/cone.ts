import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches, type SquareFeet, squareFeetFromSquareInches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { arcSpots, edge, type Piece, spot } from './piece.ts';

export interface ConeSizes {
  /** The ends in any order; 0 makes a point. */
  readonly firstDiameter: Inches;
  readonly secondDiameter: Inches;
  /** Between the ends, square to them. */
  readonly height: Inches;
  /** Equal pieces that go round together. */
  readonly pieces: number;
  /** What the lengthwise seam of each piece takes, both edges together. */
  readonly seam: Inches;
  /** Beyond the curve of the large and of the small end. */
  readonly largeEnd: Inches;
  readonly smallEnd: Inches;
}

export interface Cone {
  readonly large: Inches;
  readonly small: Inches;
  readonly slant: Inches;
  readonly outerRadius: Inches;
  readonly innerRadius: Inches;
  /** Of the sector of one piece, in degrees. */
  readonly angle: number;
  /** Straight across the outer curve of one piece. */
  readonly chord: Inches;
  /** The whole skin, without seams. */
  readonly area: SquareFeet;
  readonly piece: Piece;
}

/** Under this difference of the diameters, in inches, the arms of the sector are past use: it is a straight pipe. */
export const leastTaper = 1 / 64;
/** Points on each curve of the outline, which is exact between them. */
const curvePoints = 48;

/** Sector of a concentric reducer, or of a pointed cone. In inches and degrees; the sheet as thin, diameters at its middle.
 *  Faults: `no_taper`. Source: geometry. */
export function cone(sizes: ConeSizes): Outcome<Cone, TradeFault> {
  const { firstDiameter, secondDiameter, height, pieces } = sizes;
  const [large, small] = [Math.max(firstDiameter, secondDiameter), Math.min(firstDiameter, secondDiameter)];
  if (large - small < leastTaper) {
    return failed({ code: 'no_taper', first: firstDiameter, second: secondDiameter });
  }
  const slant = Math.hypot(height, (large - small) / 2);
  const outerRadius = (large * slant) / (large - small);
  const innerRadius = (small * slant) / (large - small);
  const angle = (180 * (large - small)) / slant / pieces;
  return done({
    large: inches(large),
    small: inches(small),
    slant: inches(slant),
    outerRadius: inches(outerRadius),
    innerRadius: inches(innerRadius),
    angle,
    chord: inches(2 * outerRadius * Math.sin((angle * Math.PI) / 360)),
    area: squareFeetFromSquareInches((Math.PI * (large + small) * slant) / 2),
    piece: sector(sizes, outerRadius, innerRadius, angle),
  });
}

/** The large end above, the seams to the left and the right. */
function sector(
  { pieces, seam, largeEnd, smallEnd }: ConeSizes,
  outer: number,
  inner: number,
  angle: number,
): Piece {
  const [from, to] = [90 - angle / 2, 90 + angle / 2];
  const outward = { center: spot(0, 0), radius: outer, from, to };
  const inward = { center: spot(0, 0), radius: inner, from: to, to: from };
  const above = arcSpots(outward, curvePoints);
  const below = arcSpots(inward, curvePoints);
  const side = (is: string, spots: readonly (typeof above)[number][]) => ({
    ...edge(is, ...spots),
    added: inches(seam / 2),
  });
  return {
    part: 1,
    name: pieces === 1 ? 'cone' : 'part of the cone',
    pieces,
    sides: [
      { ...edge('small end', ...below), added: smallEnd, arcs: [inward] },
      side('right seam', [...below.slice(-1), ...above.slice(0, 1)]),
      { ...edge('large end', ...above), added: largeEnd, arcs: [outward] },
      side('left seam', [...above.slice(-1), ...below.slice(0, 1)]),
    ],
    lines: [],
  };
}
