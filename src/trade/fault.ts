import type { Inches } from '../base/quantity.ts';
import type { TapeFault } from './tape/fault.ts';

/** Why the trade maths gives no figure for sizes that are each in range. Wording: `catalogue/wording.ts`. */
export type TradeFault =
  | { readonly code: 'needs_depth'; readonly shape: string }
  | { readonly code: 'depth_on_round'; readonly diameter: Inches; readonly depth: Inches }
  | {
      readonly code: 'no_published_row';
      readonly table: string;
      readonly got: number;
      readonly rows: readonly number[];
    }
  | { readonly code: 'no_shop_figure'; readonly wrap: string; readonly column: string }
  | {
      readonly code: 'installed_over_thickness';
      readonly wrap: string;
      readonly installed: Inches;
      readonly thickness: Inches;
    }
  /** The R figures of a wrap's row do not say what squeezing costs. */
  | {
      readonly code: 'no_squeeze_figures';
      readonly wrap: string;
      readonly labelR: number;
      readonly installedR: number;
    }
  | { readonly code: 'cut_too_short'; readonly cut: Inches; readonly perimeter: Inches; readonly lap: Inches }
  | {
      readonly code: 'squeezed_past_half';
      readonly left: Inches;
      readonly thickness: Inches;
      /** The shortest cut that still leaves half of the thickness. */
      readonly leastCut: Inches;
    }
  | { readonly code: 'tap_wider_than_trunk'; readonly across: Inches; readonly trunk: Inches }
  | { readonly code: 'no_such_part'; readonly make: string; readonly part: number }
  | {
      readonly code: 'no_gauge_row';
      readonly material: string;
      readonly got: number;
      readonly gauges: readonly number[];
    }
  | { readonly code: 'no_minimum_sheet'; readonly material: string }
  | { readonly code: 'not_a_length'; readonly text: string; readonly fault: TapeFault };
