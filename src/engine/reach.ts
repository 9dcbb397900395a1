import type { CellRange } from '../base/address.ts';

/** A block of cells that a formula reads directly. The sheet's name is in small letters. */
export interface Reach {
  readonly sheet: string;
  readonly range: CellRange;
}
