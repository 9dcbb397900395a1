import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { wholeUp } from '../whole.ts';

export interface RunPieces {
  readonly pieces: number;
  /** What each piece covers along the duct. */
  readonly cover: Inches;
  /** What the last piece has to cover; as much as the others when the run comes out even. */
  readonly last: Inches;
}

/** Pieces of wrap side by side along a straight run, each once round the duct and as wide as the roll; a flange that
 *  lies over the next piece covers nothing of its own. In inches. Faults: `flange_over_roll`. */
export function runPieces(length: Inches, rollWidth: Inches, flange: Inches): Outcome<RunPieces, TradeFault> {
  if (flange >= rollWidth) return failed({ code: 'flange_over_roll', flange, rollWidth });
  const cover = inches(rollWidth - flange);
  const pieces = wholeUp(length / cover);
  return done({ pieces, cover, last: inches(length - (pieces - 1) * cover) });
}
