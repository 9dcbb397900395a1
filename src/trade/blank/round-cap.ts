import { type Inches, inches, type SquareFeet, squareFeetFromSquareInches } from '../../base/quantity.ts';

export interface RoundCap {
  /** Of the disc to cut. */
  readonly disc: Inches;
  /** Of the circle on which the flange is turned. */
  readonly turned: Inches;
  /** Along the edge of the cap. */
  readonly girth: Inches;
  /** Of the whole disc. */
  readonly area: SquareFeet;
}

/** Disc of a round end cap. In inches; `ease` is added to the diameter so that the cap goes over the pipe, less than 0 so
 *  that it goes inside. The sheet as thin. Source: geometry. */
export function roundCap(diameter: Inches, flange: Inches, ease: Inches): RoundCap {
  const turned = diameter + ease;
  const disc = turned + 2 * flange;
  return {
    disc: inches(disc),
    turned: inches(turned),
    girth: inches(Math.PI * turned),
    area: squareFeetFromSquareInches((Math.PI * disc ** 2) / 4),
  };
}
