/** Why a text could not be read as a length. `at` counts characters from 0. Wording: `catalogue/wording.ts`. */
export type TapeFault =
  | { readonly code: 'nothing_typed' }
  | { readonly code: 'too_long'; readonly got: number; readonly most: number }
  | { readonly code: 'unknown_sign'; readonly at: number; readonly got: string }
  /** `instead` is the same text with a point in place of the comma. */
  | { readonly code: 'comma'; readonly at: number; readonly instead: string }
  | { readonly code: 'number_expected'; readonly at: number; readonly got: string }
  | { readonly code: 'half_a_fraction'; readonly at: number }
  | { readonly code: 'over_zero'; readonly at: number; readonly got: string }
  /** A point in a fraction, or a fraction after a number with a point. */
  | { readonly code: 'point_and_fraction'; readonly at: number }
  | {
      readonly code: 'fraction_of_one_or_more';
      readonly at: number;
      readonly got: string;
      readonly instead: string;
    }
  | { readonly code: 'part_of_a_foot'; readonly at: number }
  | { readonly code: 'unit_twice'; readonly at: number; readonly unit: string; readonly instead: string }
  | { readonly code: 'inches_before_feet'; readonly at: number }
  | { readonly code: 'mixed_systems'; readonly at: number; readonly got: string }
  | { readonly code: 'one_number_too_many'; readonly at: number; readonly got: string };
