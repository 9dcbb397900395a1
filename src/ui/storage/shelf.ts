import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { Journal } from '../../session/journal.ts';
import { applyDifference } from '../../workbook/difference.ts';
import { type KeptWorkbook, readStoredForm, storedForm } from '../../workbook/file.ts';
import { wordFileFault } from '../../workbook/wording.ts';
import type { Database } from './database.ts';

export interface ShelfEntry {
  readonly id: string;
  readonly title: string;
  readonly at: number;
}

/** The workbooks that this browser keeps. A workbook is its last snapshot and the differences since. */
export interface Shelf {
  /** Newest first. */
  list(): Promise<readonly ShelfEntry[]>;
  /** A workbook as it was last left, or in a sentence why it cannot be read; then it stays on the shelf as it is. */
  read(id: string): Promise<Outcome<KeptWorkbook, string>>;
  /** Stores a whole workbook, and forgets the differences that it holds already. */
  put(kept: KeptWorkbook): Promise<void>;
  journal(id: string): Journal;
}

// A promise must mean that the disk has it, so that a power cut loses no more than the entry in flight.
const onDisk = { durability: 'strict' } as const;

export function createShelf(database: Database, now: () => number): Shelf {
  return {
    list: async () => {
      const entries = await database.getAll('workbooks');
      return entries.map(({ id, title, at }) => ({ id, title, at })).sort((one, other) => other.at - one.at);
    },
    read: async (id) => {
      const reading = database.transaction(['workbooks', 'log']);
      const [entry, log] = await Promise.all([
        reading.objectStore('workbooks').get(id),
        reading.objectStore('log').index('workbook').getAll(id),
      ]);
      if (!entry) return failed('This workbook is no longer kept in this browser. Choose another one.');
      const kept = readStoredForm(entry.stored);
      if (!kept.ok) return failed(wordFileFault(kept.fault));
      if (log.length === 0) return kept;
      const workbook = log.reduce(
        (sofar, { difference }) => applyDifference(sofar, difference),
        kept.value.workbook,
      );
      // The log is data from outside as well: what it comes to passes the schema like a file.
      const whole = readStoredForm(storedForm({ workbook, values: kept.value.values }));
      return whole.ok ? done(whole.value) : failed(wordFileFault(whole.fault));
    },
    put: async (kept) => {
      const { id, title } = kept.workbook;
      const writing = database.transaction(['workbooks', 'log'], 'readwrite', onDisk);
      const log = writing.objectStore('log');
      const done = await log.index('workbook').getAllKeys(id);
      await Promise.all([
        writing.objectStore('workbooks').put({ id, title, at: now(), stored: storedForm(kept) }),
        ...done.map((key) => log.delete(key)),
        writing.done,
      ]);
    },
    journal: (id) => ({
      append: async (difference) => {
        const writing = database.transaction('log', 'readwrite', onDisk);
        await Promise.all([writing.store.add({ workbook: id, difference }), writing.done]);
      },
    }),
  };
}
