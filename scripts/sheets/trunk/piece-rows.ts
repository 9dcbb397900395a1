import { rowsFrom } from '../sentences.ts';

/** Room for so many pieces in a job, and for as many lines of taps; each piece has the same row on every sheet that
 *  tells of it. */
export const pieceCount = 20;

export const pieceRows = rowsFrom(2, pieceCount);
const lastPieceRow = pieceCount + 1;
export const totalRow = lastPieceRow + 1;

/** The cells of a column beside the pieces: `A2:A21`. */
export function besidePieces(column: string): string {
  return `${column}2:${column}${lastPieceRow}`;
}

/** How a formula writes the shape of the piece in a row: a cell of Pieces, or always the same in quotes. */
export type ShapeOf = (row: number) => string;

/** As formulas write it. */
export const rectangular = '"rectangular"';

/** Columns of Blanks that other sheets tell of. */
export interface BlankColumns {
  readonly sections: string;
  /** One column, or two where a piece has two kinds of blank. */
  readonly blanks: readonly string[];
  readonly gauge: string;
  readonly sheets: string;
  readonly area: string;
  readonly weight: string;
  readonly notCounted: string;
}
