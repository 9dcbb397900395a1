/** What a formula may be at most. The engine stops a whole workbook at 127 brackets, 1,249 terms or a range of a few
 *  million cells; a browser may stop earlier, so these lie well below. */
export const limits = {
  characters: 8192,
  nesting: 60,
  terms: 500,
  /** All ranges of a formula together. */
  cells: 100_000,
  /** The last column is ZZ. */
  columns: 702,
  rows: 99_999,
} as const;
