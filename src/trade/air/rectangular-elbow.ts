import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { TradeFault } from '../fault.ts';

export const rectangularMakes = ['radius', 'one vane', 'mitered'] as const;
export type RectangularMake = (typeof rectangularMakes)[number];

/** Radius of the middle line over the width, which lies in the plane of the turn. A mitered elbow has none: 0. */
export const rectangularRatios = [0, 0.5, 0.55, 0.75, 1, 1.5, 2] as const;
export type RectangularRatio = (typeof rectangularRatios)[number];

/** Depth over width. */
export const rectangularAspects = [0.25, 0.5, 1, 2, 4, 8] as const;
export type RectangularAspect = (typeof rectangularAspects)[number];

interface Row {
  readonly make: RectangularMake;
  readonly ratio: RectangularRatio;
  readonly aspect: RectangularAspect;
  readonly coefficient: number;
}

/** The rows that were read: handbook of fundamentals 2005 (SI), p. 35.52, CR3-1 and CR3-3, and the duct design manual of
 *  the contractors association, 4th ed., table A-7 D for the mitered ones. */
const rows: readonly Row[] = [
  { make: 'radius', ratio: 0.5, aspect: 0.25, coefficient: 1.53 },
  { make: 'radius', ratio: 0.5, aspect: 0.5, coefficient: 1.38 },
  { make: 'radius', ratio: 0.5, aspect: 1, coefficient: 1.18 },
  { make: 'radius', ratio: 0.5, aspect: 2, coefficient: 1 },
  { make: 'radius', ratio: 0.5, aspect: 4, coefficient: 1.06 },
  { make: 'radius', ratio: 0.75, aspect: 1, coefficient: 0.44 },
  { make: 'radius', ratio: 1, aspect: 1, coefficient: 0.21 },
  { make: 'radius', ratio: 1.5, aspect: 1, coefficient: 0.17 },
  { make: 'radius', ratio: 2, aspect: 1, coefficient: 0.15 },
  { make: 'one vane', ratio: 0.55, aspect: 1, coefficient: 0.43 },
  { make: 'one vane', ratio: 0.75, aspect: 1, coefficient: 0.11 },
  { make: 'one vane', ratio: 1, aspect: 1, coefficient: 0.05 },
  { make: 'mitered', ratio: 0, aspect: 0.25, coefficient: 1.3 },
  { make: 'mitered', ratio: 0, aspect: 0.5, coefficient: 1.3 },
  { make: 'mitered', ratio: 0, aspect: 1, coefficient: 1.2 },
  { make: 'mitered', ratio: 0, aspect: 2, coefficient: 1.1 },
  { make: 'mitered', ratio: 0, aspect: 4, coefficient: 0.92 },
  { make: 'mitered', ratio: 0, aspect: 8, coefficient: 0.83 },
];

/** Loss coefficient of a rectangular elbow of 90°, on its own velocity. Rows of the tables only. Fault:
 *  `no_rectangular_elbow_row`. */
export function rectangularElbowCoefficient(
  make: RectangularMake,
  ratio: RectangularRatio,
  aspect: RectangularAspect,
): Outcome<number, TradeFault> {
  const made = rows.filter((row) => row.make === make);
  const found = made.find((row) => row.ratio === ratio && row.aspect === aspect);
  if (found) return done(found.coefficient);
  return failed({
    code: 'no_rectangular_elbow_row',
    make,
    ratio,
    aspect,
    ratios: [...new Set(made.map((row) => row.ratio))],
    aspects: made.filter((row) => row.ratio === ratio).map((row) => row.aspect),
  });
}
