import { z } from 'zod';
import { applyDifference, type Difference } from './difference.ts';
import type { Workbook } from './document.ts';
import { type DeedMark, emptyHistory, type History } from './history.ts';
import { readRecord, recordOf } from './record.ts';
import { noValues } from './values.ts';

const deed = z.object({
  says: z.string(),
  difference: z.custom<Difference>((data) => Array.isArray(data) && data.every(isTyped)),
});
const history = z.object({ done: z.array(deed), undone: z.array(deed) });
const mark = z.discriminatedUnion('type', [
  z.object({ type: z.literal('did'), says: z.string() }),
  z.object({ type: z.literal('took_back') }),
  z.object({ type: z.literal('did_again') }),
]);

/** Reads the history of an earlier visit; an empty one where there is none that can be read. What its deeds do is looked at
 *  when one of them is asked for: see `fitsAfter`. */
export function readHistory(data: unknown): History {
  const parsed = history.safeParse(data);
  return parsed.success ? parsed.data : emptyHistory;
}

function isTyped(change: unknown): boolean {
  return typeof change === 'object' && change !== null && 'type' in change;
}

/** Null for a line of the log from before deeds were marked. */
export function readMark(data: unknown): DeedMark | null {
  const parsed = mark.safeParse(data);
  return parsed.success ? parsed.data : null;
}

/** Whether a difference from an earlier visit makes a whole workbook of this one. It is data from outside, so what it comes
 *  to passes the schema like a file; rows that it leaves alone have passed already. */
export function fitsAfter(workbook: Workbook, difference: Difference): boolean {
  try {
    const after = applyDifference(workbook, difference);
    const known = new Set(workbook.sheets.flatMap((sheet) => sheet.rows));
    const sheets = after.sheets.map((sheet) => ({
      ...sheet,
      rows: sheet.rows.filter((row) => !known.has(row)),
    }));
    return readRecord(recordOf({ workbook: { ...after, sheets }, values: noValues })).ok;
  } catch {
    return false; // no difference at all
  }
}
