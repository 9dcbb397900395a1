import type { Difference } from '../workbook/difference.ts';

/** Where a session writes down what was done. The promise is fulfilled only when it stands on disk. */
export interface Journal {
  append(difference: Difference): Promise<void>;
}
