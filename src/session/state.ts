import type { Workbook } from '../workbook/document.ts';
import type { History } from '../workbook/history.ts';
import type { Standing } from '../workbook/standing.ts';
import type { Values } from '../workbook/values.ts';

/** Everything that a screen shows of the open workbook. Replaced as a whole on every change, never altered. */
export interface SessionState {
  readonly workbook: Workbook;
  readonly values: Values;
  readonly history: History;
  /** By sheet id. */
  readonly standings: ReadonlyMap<string, Standing>;
  readonly figures: Figures;
  readonly keeping: Keeping;
  /** Set while another window has this workbook: nothing can be changed here. */
  readonly isReadOnly: boolean;
}

/** Where the shown figures come from: the file, until the engine is there; then the engine. */
export type Figures =
  | { readonly type: 'stored' }
  | { readonly type: 'figuring' }
  | { readonly type: 'current' }
  | { readonly type: 'stopped'; readonly sentence: string };

/** Whether all that was done stands on disk. */
export type Keeping =
  | { readonly type: 'kept' }
  | { readonly type: 'keeping' }
  | { readonly type: 'not_kept'; readonly sentence: string };
