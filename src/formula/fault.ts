import type { Span } from './expression.ts';

/** Why a text is no formula. `from` and `to` say where in the text. The sentences are in `wording.ts`. */
export type SyntaxFault = Span &
  (
    | { readonly code: 'nothing_typed' }
    | { readonly code: 'too_long'; readonly got: number; readonly most: number }
    | { readonly code: 'too_deep'; readonly most: number }
    | { readonly code: 'too_many_terms'; readonly got: number; readonly most: number }
    | { readonly code: 'unclosed_text' }
    | { readonly code: 'unclosed_sheet_name' }
    | { readonly code: 'unclosed_bracket' }
    | { readonly code: 'stray_bracket' }
    | { readonly code: 'value_expected'; readonly after: string }
    | { readonly code: 'operator_expected'; readonly got: string }
    | { readonly code: 'foreign_sign'; readonly got: string; readonly instead: string }
    | { readonly code: 'unknown_sign'; readonly got: string }
    | { readonly code: 'leading_equals' }
    | { readonly code: 'semicolon' }
    | { readonly code: 'stray_comma' }
    /** A foot or inch mark behind a number. */
    | { readonly code: 'length_mark'; readonly got: string }
    | { readonly code: 'cell_expected'; readonly after: string }
    | { readonly code: 'number_too_large'; readonly got: string }
    | { readonly code: 'no_such_cell'; readonly got: string }
    | { readonly code: 'whole_lines'; readonly got: string }
    | { readonly code: 'array_literal' }
    | { readonly code: 'unknown_error_value'; readonly got: string }
  );

/** Why the calculator must not see a formula. */
export type FormulaFault =
  | SyntaxFault
  | (Span &
      (
        | { readonly code: 'unknown_function'; readonly got: string; readonly nearest: string | null }
        | {
            readonly code: 'refused_function';
            readonly got: string;
            readonly why: string;
            readonly instead: string;
          }
        | { readonly code: 'function_without_brackets'; readonly got: string }
        | {
            readonly code: 'argument_count';
            readonly name: string;
            readonly got: number;
            readonly least: number;
            readonly most: number;
          }
        | { readonly code: 'half_a_group'; readonly name: string; readonly together: readonly string[] }
        | { readonly code: 'unknown_name'; readonly got: string; readonly nearest: string | null }
        | { readonly code: 'unusable_name'; readonly got: string }
        | { readonly code: 'unknown_sheet'; readonly got: string; readonly nearest: string | null }
        | { readonly code: 'range_for_a_value'; readonly got: string }
        | { readonly code: 'range_too_large'; readonly got: number; readonly most: number }
        | { readonly code: 'wildcard'; readonly got: string }
      ));
