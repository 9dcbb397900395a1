import { type Inches, inches } from '../../base/quantity.ts';
import { type Line, type Piece, type Side, type Spot, spot } from './piece.ts';

/** A flat rectangle with a flange turned up on each of its sides; the corners between the flanges are notched out. In
 *  inches; `ease` is added to width and depth, where the cap goes over the duct. Source: geometry. */
export function endCap(width: Inches, depth: Inches, flange: Inches, ease: Inches): Piece {
  const [w, d] = [width + ease, depth + ease];
  const corners = [spot(0, 0), spot(w, 0), spot(w, d), spot(0, d)] as const;
  return turnedPanel(1, 'cap', corners, ['bottom edge', 'right edge', 'top edge', 'left edge'], flange);
}

/** A panel with the same flange beyond each side, and a bend line along it. */
export function turnedPanel(
  part: number,
  name: string,
  corners: readonly Spot[],
  sides: readonly string[],
  flange: Inches,
): Piece {
  const edges = corners.map((from, index): Side & { readonly line: Line } => {
    const to = corners[(index + 1) % corners.length] ?? from;
    return {
      is: sides[index] ?? 'edge',
      spots: [from, to],
      added: inches(flange),
      line: { is: 'bend', from, to },
    };
  });
  return {
    part,
    name,
    pieces: 1,
    sides: edges.map(({ is, spots, added }) => ({ is, spots, added })),
    lines: flange > 0 ? edges.map(({ line }) => line) : [],
  };
}
