import type { Difference } from '../workbook/difference.ts';
import type { KeptWorkbook } from '../workbook/file.ts';

/** Where a session keeps what was done. Every promise is fulfilled only when it stands on disk. */
export interface Journal {
  /** Adds one difference to the log of the open workbook. */
  append(difference: Difference): Promise<void>;
  /** Stores the whole workbook with its values, and begins a new log. */
  snapshot(kept: KeptWorkbook): Promise<void>;
}
