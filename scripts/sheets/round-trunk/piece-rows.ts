/** Room for so many pieces in a job; each has the same line on every sheet that tells of it. */
export const pieceCount = 8;

/** Row numbers, as formulas write them, of the lines of a table that begins under its heading in `first - 1`. */
export function rowsFrom(first: number): readonly number[] {
  return Array.from({ length: pieceCount }, (_, index) => first + index);
}

export const measured = rowsFrom(2);
export const blanks = rowsFrom(12);

/** A formula that stays blank on a line without a piece. */
export function ifPiece(mark: string, formula: string): string {
  return `IF(${mark}="","",${formula})`;
}
