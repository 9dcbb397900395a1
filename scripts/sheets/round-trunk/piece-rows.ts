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
