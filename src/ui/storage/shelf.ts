import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { Journal } from '../../session/journal.ts';
import { applyDifference } from '../../workbook/difference.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { afterMark, emptyHistory, type History, keptPart } from '../../workbook/history.ts';
import { readHistory, readMark } from '../../workbook/recalled.ts';
import { readRecord, recordOf } from '../../workbook/record.ts';
import { wordFileFault } from '../../workbook/wording.ts';
import type { Database, LoggedDifference, StoredEntry } from './database.ts';

export interface ShelfEntry {
  readonly id: string;
  readonly title: string;
  readonly at: number;
  /** As its last snapshot says; a job never becomes a template in place. */
  readonly isTemplate: boolean;
  /** As its last snapshot says: a template that a lot table can take. */
  readonly isHouseType: boolean;
}

/** The workbooks that this browser keeps. A workbook is its last snapshot and the differences since. */
export interface Shelf {
  /** Newest first. */
  list(): Promise<readonly ShelfEntry[]>;
  /** A workbook as it was last left, or in a sentence why it cannot be read; then it stays on the shelf as it is. */
  read(id: string): Promise<Outcome<ShelvedWorkbook, string>>;
  /** Stores a whole workbook with what can be taken back, and forgets the differences that it holds already. */
  put(kept: KeptWorkbook, history?: History): Promise<void>;
  /** Takes a workbook off the shelf, with all that was done to it. Null where it is not there. */
  takeOff(id: string): Promise<OffShelf | null>;
  /** Puts it back exactly as it stood. */
  putBack(off: OffShelf): Promise<void>;
  journal(id: string): Journal;
}

/** A workbook as it was left, and what was done to it that can still be taken back. */
export interface ShelvedWorkbook extends KeptWorkbook {
  readonly history: History;
}

/** What stood on the shelf for one workbook, readable or not. */
export interface OffShelf {
  readonly entry: StoredEntry;
  readonly log: readonly LoggedDifference[];
}

// A promise must mean that the disk has it, so that a power cut loses no more than the entry in flight.
const onDisk = { durability: 'strict' } as const;

export function createShelf(database: Database, now: () => number): Shelf {
  return {
    list: async () => {
      const entries = await database.getAll('workbooks');
      return entries
        .map(({ id, title, at, stored }) => ({ id, title, at, ...firstLook(stored) }))
        .sort((one, other) => other.at - one.at);
    },
    read: async (id) => {
      const reading = database.transaction(['workbooks', 'log']);
      const [entry, log] = await Promise.all([
        reading.objectStore('workbooks').get(id),
        reading.objectStore('log').index('workbook').getAll(id),
      ]);
      if (!entry) return failed('This workbook is no longer kept in this browser. Choose another one.');
      const kept = readRecord(entry.stored);
      if (!kept.ok) return failed(wordFileFault(kept.fault));
      const history = historyAfter(entry, log);
      if (log.length === 0) return done({ ...kept.value, history });
      const workbook = log.reduce(
        (sofar, { difference }) => applyDifference(sofar, difference),
        kept.value.workbook,
      );
      // The log is data from outside as well: what it comes to passes the schema like a file.
      const whole = readRecord(recordOf({ workbook, values: kept.value.values }));
      return whole.ok ? done({ ...whole.value, history }) : failed(wordFileFault(whole.fault));
    },
    put: async (kept, history = emptyHistory) => {
      const { id, title } = kept.workbook;
      const writing = database.transaction(['workbooks', 'log'], 'readwrite', onDisk);
      const log = writing.objectStore('log');
      const done = await log.index('workbook').getAllKeys(id);
      await Promise.all([
        writing.objectStore('workbooks').put({
          id,
          title,
          at: now(),
          stored: recordOf(kept),
          history: keptPart(history),
        }),
        ...done.map((key) => log.delete(key)),
        writing.done,
      ]);
    },
    takeOff: async (id) => {
      const taking = database.transaction(['workbooks', 'log'], 'readwrite', onDisk);
      const [workbooks, log] = [taking.objectStore('workbooks'), taking.objectStore('log')];
      const entry = await workbooks.get(id);
      if (!entry) return null;
      const own = log.index('workbook');
      const [differences, keys] = await Promise.all([own.getAll(id), own.getAllKeys(id)]);
      await Promise.all([workbooks.delete(id), ...keys.map((key) => log.delete(key)), taking.done]);
      return { entry, log: differences };
    },
    putBack: async ({ entry, log }) => {
      const putting = database.transaction(['workbooks', 'log'], 'readwrite', onDisk);
      await Promise.all([
        putting.objectStore('workbooks').put(entry),
        ...log.map((one) => putting.objectStore('log').add(one)),
        putting.done,
      ]);
    },
    journal: (id) => ({
      append: async (difference, mark) => {
        const writing = database.transaction('log', 'readwrite', onDisk);
        await Promise.all([writing.store.add({ workbook: id, difference, mark }), writing.done]);
      },
    }),
  };
}

/** A line of the log that does not say what it was leaves nothing before it that could be taken back. */
function historyAfter(entry: StoredEntry, log: readonly LoggedDifference[]): History {
  return log.reduce((history, line) => {
    const mark = readMark(line.mark);
    return mark ? afterMark(history, mark, line.difference) : emptyHistory;
  }, readHistory(entry.history));
}

/** Before anything is read through its schema. */
function firstLook(stored: unknown): Pick<ShelfEntry, 'isTemplate' | 'isHouseType'> {
  const workbook = partOf(stored, 'workbook');
  const isTemplate = partOf(workbook, 'kind') === 'template';
  return { isTemplate, isHouseType: isTemplate && partOf(workbook, 'house') !== undefined };
}

function partOf(whole: unknown, part: string): unknown {
  return typeof whole === 'object' && whole !== null ? Reflect.get(whole, part) : undefined;
}
