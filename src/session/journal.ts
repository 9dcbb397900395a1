import type { Difference } from '../workbook/difference.ts';
import type { DeedMark } from '../workbook/history.ts';

/** Where a session writes down what was done. The promise is fulfilled only when it stands on disk. */
export interface Journal {
  append(difference: Difference, mark: DeedMark): Promise<void>;
}
