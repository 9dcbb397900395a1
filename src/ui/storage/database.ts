import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Difference } from '../../workbook/difference.ts';
import type { DeedMark } from '../../workbook/history.ts';

/** Everything that this browser keeps: whole workbooks as of their last rest, and what was done to each since then. */
interface Shape extends DBSchema {
  workbooks: {
    key: string;
    value: StoredEntry;
  };
  log: {
    key: number;
    value: LoggedDifference;
    indexes: { workbook: string };
  };
}

export interface StoredEntry {
  readonly id: string;
  readonly title: string;
  /** When it was last worked on, in milliseconds since 1970. */
  readonly at: number;
  /** What `workbook/record.ts` makes of it; read through its schema, never trusted. */
  readonly stored: unknown;
  /** What was done up to then and can be taken back; read through `workbook/recalled.ts`. */
  readonly history?: unknown;
}

export interface LoggedDifference {
  readonly workbook: string;
  readonly difference: Difference;
  /** What kind of deed it was; none in lines from before deeds were marked. */
  readonly mark?: DeedMark;
}

export type Database = IDBPDatabase<Shape>;

export function openDatabase(): Promise<Database> {
  return openDB<Shape>('stretchout', 1, {
    upgrade: (database) => {
      database.createObjectStore('workbooks', { keyPath: 'id' });
      database.createObjectStore('log', { autoIncrement: true }).createIndex('workbook', 'workbook');
    },
  });
}
