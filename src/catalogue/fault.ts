import type { Unit } from '../base/unit.ts';
import type { CellFault } from '../base/value.ts';
import type { TradeFault } from '../trade/fault.ts';

/** Why a trade function gave no figure. The sentences are in `wording.ts`. */
export type CallFault =
  | { readonly code: 'missing'; readonly argument: string; readonly says: string }
  | { readonly code: 'too_many'; readonly got: number; readonly allowed: number }
  | { readonly code: 'argument_in_fault'; readonly argument: string; readonly fault: CellFault }
  | { readonly code: 'not_a_number'; readonly argument: string; readonly got: string; readonly unit: Unit }
  | { readonly code: 'not_whole'; readonly argument: string; readonly got: number }
  | {
      readonly code: 'out_of_range';
      readonly argument: string;
      readonly got: number;
      readonly least: number;
      readonly most: number;
      readonly unit: Unit;
      readonly why: string;
    }
  | {
      readonly code: 'not_a_choice';
      readonly argument: string;
      readonly got: string;
      readonly choices: readonly (string | number)[];
    }
  | { readonly code: 'not_a_text'; readonly argument: string }
  | { readonly code: 'too_long'; readonly argument: string; readonly got: number; readonly most: number }
  | { readonly code: 'not_a_table'; readonly argument: string; readonly columns: readonly string[] }
  | { readonly code: 'a_table_for_one_value'; readonly argument: string }
  | {
      readonly code: 'no_column';
      readonly argument: string;
      readonly column: string;
      readonly columns: readonly string[];
    }
  | {
      readonly code: 'no_row';
      readonly argument: string;
      readonly key: string;
      readonly keys: readonly string[];
    }
  | { readonly code: 'two_rows'; readonly argument: string; readonly key: string }
  | {
      readonly code: 'bad_table_cell';
      readonly argument: string;
      readonly key: string;
      readonly column: string;
      readonly got: string;
      readonly allowed: string;
    }
  /** Two lists that belong together, row by row, have not the same number of cells. */
  | {
      readonly code: 'unlike_lists';
      readonly argument: string;
      readonly got: number;
      readonly wanted: number;
    }
  | { readonly code: 'half_a_row'; readonly argument: string; readonly row: number }
  /** Of two lists that belong together, one has something in a row and the other has nothing. */
  | {
      readonly code: 'half_a_pair';
      readonly row: number;
      readonly has: string;
      readonly lacks: string;
    }
  | { readonly code: 'trade'; readonly fault: TradeFault };
