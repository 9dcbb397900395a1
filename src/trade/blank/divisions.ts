/** Into how many equal parts a circle may be divided: so that each quarter has whole parts. More than 96 lie closer than
 *  they can be scribed on small pipe, fewer than 8 miss the curve. */
export const divisionsOfCircle = [8, 12, 16, 24, 32, 48, 64, 96] as const;

/** Points of a curve between whose marks nothing must be lost; every one of the divisions goes into it. */
export const curveDivisions = 192;

/** How the parts of a circle are stepped off on the flat: at their true length, or as the straight line across. */
export const stepped = ['arcs', 'chords'] as const;
export type Stepped = (typeof stepped)[number];

/** One part of a circle on the flat. Chords lose a share of the girth, 0.29 % with 24 parts. Source: geometry. */
export function stepOf(radius: number, divisions: number, by: Stepped): number {
  return by === 'arcs' ? (2 * Math.PI * radius) / divisions : 2 * radius * Math.sin(Math.PI / divisions);
}

/** The turn to a mark, in radians: the first mark is 1. */
export function turnAt(station: number, divisions: number): number {
  return (2 * Math.PI * (station - 1)) / divisions;
}

/** The stations to draw as lines: all of them, or as many in even steps as can be told apart. */
export function drawnStations(divisions: number): readonly number[] {
  const step = Math.ceil(divisions / 32);
  return Array.from({ length: Math.ceil(divisions / step) - 1 }, (_, index) => step * (index + 1));
}
