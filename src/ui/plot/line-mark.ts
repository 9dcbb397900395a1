import {
  type SymbolType,
  symbol,
  symbolCircle,
  symbolDiamond,
  symbolSquare,
  symbolTriangle,
  symbolWye,
} from 'd3-shape';

/** How one line is told from the others, each of the three enough by itself. */
export interface LineMark {
  /** Names the color: `plot-ink-0` and on. */
  readonly ink: string;
  /** Nothing for a line drawn through. */
  readonly dash: string | undefined;
  /** Outline of the mark at the line's end, about nothing as its middle. */
  readonly outline: string;
}

const inks = 5;
const dashes = [undefined, '8 4', '2 4', '12 4 2 4', '5 2'];
const shapes: readonly SymbolType[] = [symbolCircle, symbolSquare, symbolTriangle, symbolDiamond, symbolWye];
const area = 58;

/** The mark of the line that stands at `place`. From the sixth on the colors come round with other dashes and shapes. */
export function lineMark(place: number): LineMark {
  const shifted = place + Math.floor(place / inks);
  return {
    ink: `plot-ink-${place % inks}`,
    dash: dashes[shifted % dashes.length],
    outline: symbol(shapes[shifted % shapes.length], area)() ?? '',
  };
}
