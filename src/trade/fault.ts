import type { Airflow, BtuPerHour, Feet, FeetPerMinute, Inches, InchesOfWater } from '../base/quantity.ts';
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
  | { readonly code: 'no_roll_size'; readonly wrap: string; readonly column: string }
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
  | {
      readonly code: 'left_over_thickness' | 'left_under_half';
      readonly wrap: string;
      readonly left: Inches;
      readonly thickness: Inches;
    }
  /** Outside of the densities that a conductivity was fitted to, lb/cu ft. */
  | { readonly code: 'past_the_fit'; readonly density: number; readonly least: number; readonly most: number }
  | { readonly code: 'needs_density' }
  | { readonly code: 'no_wrap_so_thick'; readonly thickness: Inches; readonly most: Inches }
  /** A code says nothing of this; `rows` are those that are held. */
  | {
      readonly code: 'no_code_row';
      readonly table: string;
      readonly what: string;
      readonly rows: readonly string[];
    }
  /** The table goes by a figure that was left out. */
  | { readonly code: 'needs_for_table'; readonly table: string; readonly what: 'zone' | 'difference' }
  | { readonly code: 'flange_over_roll'; readonly flange: Inches; readonly rollWidth: Inches }
  | { readonly code: 'piece_longer_than_roll'; readonly cut: Inches; readonly rollLength: Inches }
  | { readonly code: 'tap_wider_than_trunk'; readonly across: Inches; readonly trunk: Inches }
  | { readonly code: 'no_such_part'; readonly make: string; readonly part: number }
  | { readonly code: 'no_taper'; readonly first: Inches; readonly second: Inches }
  | { readonly code: 'too_few_divisions'; readonly got: number }
  | { readonly code: 'radius_inside_elbow'; readonly radius: Inches; readonly least: Inches }
  /** The angle in degrees. */
  | {
      readonly code: 'too_few_gores';
      readonly pieces: number;
      readonly angle: number;
      readonly least: number;
    }
  /** `reach` is the farthest side of the branch, from the middle of the trunk. */
  | { readonly code: 'tap_past_the_trunk'; readonly reach: Inches; readonly trunkRadius: Inches }
  /** `parts` names those there are: `1 (cheek)`. */
  | { readonly code: 'no_such_piece'; readonly part: number; readonly parts: readonly string[] }
  /** Degrees. */
  | { readonly code: 'miter_too_sharp'; readonly angle: number; readonly most: number }
  | { readonly code: 'throat_flanges_meet'; readonly flange: Inches; readonly least: Inches }
  | { readonly code: 'radius_on_miter'; readonly radius: Inches }
  | { readonly code: 'offset_needs'; readonly form: string }
  | { readonly code: 'offset_has_angle'; readonly form: string }
  | { readonly code: 'offset_has_both'; readonly length: Inches; readonly angle: number }
  | { readonly code: 'offset_too_tight'; readonly length: Inches; readonly least: Inches }
  | { readonly code: 'pattern_over_itself'; readonly piece: string }
  | { readonly code: 'boot_too_low'; readonly height: Inches; readonly least: Inches }
  | {
      readonly code: 'opening_past_wall';
      readonly opening: string;
      readonly wall: string;
      readonly width: Inches;
      readonly height: Inches;
    }
  | {
      readonly code: 'no_such_station';
      readonly piece: string;
      readonly what: 'side' | 'point';
      readonly got: number;
      readonly most: number;
    }
  | {
      readonly code: 'no_gauge_row';
      readonly material: string;
      readonly got: number;
      readonly gauges: readonly number[];
    }
  | { readonly code: 'no_minimum_sheet'; readonly material: string }
  /** Sizes in inches, pressures in in. w.g. */
  | {
      readonly code: 'past_the_table';
      readonly table: string;
      readonly what: 'size' | 'pressure';
      readonly got: number;
      readonly most: number;
    }
  | { readonly code: 'not_in_the_table'; readonly table: string; readonly what: string }
  | { readonly code: 'no_least_gauge'; readonly metal: string; readonly thickness: Inches }
  /** The rectangular duct that would take the place of a round one is no duct that a shop makes. */
  | {
      readonly code: 'width_not_duct';
      readonly diameter: Inches;
      readonly depth: Inches;
      readonly width: Inches;
      readonly least: Inches;
      readonly most: Inches;
    }
  | {
      readonly code: 'air_too_fast';
      readonly airflow: Airflow;
      readonly velocity: FeetPerMinute;
      readonly most: FeetPerMinute;
    }
  | {
      readonly code: 'no_elbow_row';
      readonly make: string;
      readonly got: number;
      readonly ratios: readonly number[];
    }
  /** `aspects` are those that go with the ratio; none where the make has no such ratio. */
  | {
      readonly code: 'no_rectangular_elbow_row';
      readonly make: string;
      readonly ratio: number;
      readonly aspect: number;
      readonly ratios: readonly number[];
      readonly aspects: readonly number[];
    }
  /** Airflows in cfm, diameters in inches. */
  | {
      readonly code: 'branch_over_main';
      readonly what: 'airflow' | 'diameter';
      readonly branch: number;
      readonly main: number;
    }
  | { readonly code: 'not_larger'; readonly small: Inches; readonly large: Inches }
  | { readonly code: 'longer_than_stretched'; readonly installed: Feet; readonly stretched: Feet }
  /** Shares of compression, as 0.15. */
  | { readonly code: 'no_flex_row'; readonly got: number; readonly rows: readonly number[] }
  | { readonly code: 'no_pressure_left'; readonly external: InchesOfWater; readonly losses: InchesOfWater }
  | { readonly code: 'room_over_house'; readonly room: BtuPerHour; readonly house: BtuPerHour }
  | {
      readonly code: 'no_leakage_class';
      readonly seal: string;
      readonly shape: string;
      readonly edition: number;
    }
  | { readonly code: 'no_such_hanger'; readonly number: number; readonly hangers: number }
  /** The size is the diameter of a round duct, or half way round a rectangular one. */
  | {
      readonly code: 'no_hanger_row';
      readonly shape: string;
      readonly size: Inches;
      readonly spacing: Inches;
    }
  | { readonly code: 'no_hanger_figure'; readonly row: string; readonly column: string }
  | { readonly code: 'hanger_not_for_shape'; readonly hanger: string; readonly shape: string }
  | { readonly code: 'drop_too_short'; readonly drop: Inches; readonly least: Inches }
  | { readonly code: 'too_heavy'; readonly load: number; readonly most: number }
  | { readonly code: 'no_labor_unit'; readonly work: string; readonly hasBoth: boolean }
  | { readonly code: 'productive_over_paid'; readonly productive: number; readonly paid: number }
  | { readonly code: 'not_a_length'; readonly text: string; readonly fault: TapeFault };
