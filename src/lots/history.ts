import { done, failed, type Outcome } from '../base/outcome.ts';
import { type LotCommand, type LotCommandFault, runLotCommand } from './commands.ts';
import { lotDeedName } from './deed-name.ts';
import { applyLotDifference, invertLotDifference, type LotDifference, lotDifference } from './difference.ts';
import type { LotTable } from './lot-table.ts';

/** A lot table with what was done to it, newest last. */
export interface LotHistory {
  readonly table: LotTable;
  readonly done: readonly LotDeed[];
  readonly undone: readonly LotDeed[];
}

export interface LotDeed {
  readonly says: string;
  readonly difference: LotDifference;
}

const mostDeeds = 500;

export function lotHistory(table: LotTable): LotHistory {
  return { table, done: [], undone: [] };
}

export function doToLots(history: LotHistory, command: LotCommand): Outcome<LotHistory, LotCommandFault> {
  const { table } = history;
  const outcome = runLotCommand(table, command);
  if (!outcome.ok) return failed(outcome.fault);
  const difference = lotDifference(table, outcome.value);
  if (difference.length === 0) return done(history);
  const deed = { says: lotDeedName(table, command), difference };
  return done({ table: outcome.value, done: [...history.done, deed].slice(-mostDeeds), undone: [] });
}

/** The same history where there is nothing to take back. */
export function undoLots(history: LotHistory): LotHistory {
  const deed = history.done.at(-1);
  if (!deed) return history;
  return {
    table: applyLotDifference(history.table, invertLotDifference(deed.difference)),
    done: history.done.slice(0, -1),
    undone: [...history.undone, deed],
  };
}

export function redoLots(history: LotHistory): LotHistory {
  const deed = history.undone.at(-1);
  if (!deed) return history;
  return {
    table: applyLotDifference(history.table, deed.difference),
    done: [...history.done, deed],
    undone: history.undone.slice(0, -1),
  };
}
