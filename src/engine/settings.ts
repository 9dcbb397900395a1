import type { ConfigParams } from 'hyperformula';

/** More than any workbook file may have, so that the engine is never the one to refuse a cell. */
const rowsAtMost = 100_000;
const columnsAtMost = 1024;

/** How the engine is set up; why is in `docs/decisions/0005-engine-settings.md`. */
export const settings = {
  licenseKey: 'gpl-v3',
  maxRows: rowsAtMost,
  maxColumns: columnsAtMost,

  // Comparisons and differences forgive the last bits; values are read unrounded, see `exactNumber`.
  smartRounding: true,
  precisionEpsilon: 1e-13,

  // It never reads what a person typed: no dates, times or money in text.
  dateFormats: [],
  timeFormats: [],
  currencySymbol: [],

  // Patterns in criteria can run for ever.
  useWildcards: false,
  useRegularExpressions: false,
  matchWholeCell: true,

  // Spilling arrays can corrupt a sheet; undo belongs to the workbook.
  useArrayArithmetic: false,
  undoLimit: 0,

  caseSensitive: false,
  ignoreWhiteSpace: 'any',
  evaluateNullToZero: false,
} as const satisfies Partial<Mutable<ConfigParams>>;

/** The engine's own type asks for arrays that may be changed; ours are empty and stay so. */
type Mutable<T> = {
  readonly [Key in keyof T]: T[Key] extends readonly (infer One)[] ? readonly One[] : T[Key];
};
