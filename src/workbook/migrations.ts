import { done, failed, type Outcome } from '../base/outcome.ts';
import type { FileFault } from './file-fault.ts';

export const newestVersion = 1;

/** Steps from version n to n + 1, the first from version 1. Numbered without gaps; each has a stored sample in the tests. */
const steps: readonly ((file: Record<string, unknown>) => Record<string, unknown>)[] = [];

/** Brings a parsed file of any known version to the newest. A newer one is refused, never half-read. */
export function bringUpToDate(data: unknown): Outcome<unknown, FileFault> {
  if (typeof data !== 'object' || data === null || Array.isArray(data) || !('stretchout' in data)) {
    const isLots = typeof data === 'object' && data !== null && 'stretchoutLots' in data;
    return failed({ code: isLots ? 'lot_table' : 'not_a_workbook' });
  }
  const version = data.stretchout;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return failed({ code: 'unknown_version', got: String(version) });
  }
  if (version > newestVersion) return failed({ code: 'newer_version', got: version, newest: newestVersion });
  return done(steps.slice(version - 1).reduce((file, step) => step(file), data as Record<string, unknown>)); // checked above
}
