/** A place on a line: what it stands at, how high, and how its height is written. */
export interface PlotPoint {
  readonly x: number;
  /** Nothing where the line has a gap. */
  readonly y: number | null;
  /** The height as it is read out; for a gap, why there is none. */
  readonly shows: string;
}

export interface PlotLine {
  readonly name: string;
  readonly points: readonly PlotPoint[];
}

/** A place in the drawing, in its own units from the top left. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** The part of the drawing that the lines run in. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A height that can be drawn. */
export function isDrawn(y: number | null): y is number {
  return y !== null && Number.isFinite(y);
}
