import type { CellBlock, CellValue } from '../base/value.ts';
import type { Span } from '../formula/expression.ts';

/** Values of parts of one formula, asked of the calculator as they stand in the text. */
export type Ask = (parts: readonly Span[]) => Promise<readonly (CellValue | CellBlock)[]>;

/** What a part of a formula says, as typed. */
export type Say = (part: Span) => string;
