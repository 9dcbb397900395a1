import { type DBSchema, openDB } from 'idb';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { joinLotTable } from '../../lots/file.ts';
import type { LotTable } from '../../lots/lot-table.ts';
import { wordLotFileFault } from '../../lots/wording.ts';
import { readRecord, recordOf } from '../../workbook/record.ts';
import { noValues } from '../../workbook/values.ts';

/** The lot tables that this browser keeps. The lots of a table are written at every change, its house types only when they
 *  are others. */
interface Shape extends DBSchema {
  tables: { key: string; value: StoredLots };
  types: { key: string; value: { readonly id: string; readonly records: readonly unknown[] } };
}

interface StoredLots {
  readonly id: string;
  readonly title: string;
  /** When it was last worked on, in milliseconds since 1970. */
  readonly at: number;
  /** Without the types; read through the schema, never trusted. */
  readonly lots: unknown;
}

export interface LotShelfEntry {
  readonly id: string;
  readonly title: string;
  readonly at: number;
}

export interface LotShelf {
  /** Newest first. */
  list(): Promise<readonly LotShelfEntry[]>;
  read(id: string): Promise<Outcome<LotTable, string>>;
  /** Fulfilled when it stands on disk. */
  put(table: LotTable, withTypes: boolean): Promise<void>;
  /** Gives all that stood there, to be put back; null where there was nothing. */
  takeOff(id: string): Promise<LotTable | null>;
}

// A promise must mean that the disk has it, so that a power cut loses no more than the entry in flight.
const onDisk = { durability: 'strict' } as const;

export async function openLotShelf(now: () => number): Promise<LotShelf> {
  const database = await openDB<Shape>('stretchout lots', 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('tables', { keyPath: 'id' });
      fresh.createObjectStore('types', { keyPath: 'id' });
    },
  });

  async function read(id: string): Promise<Outcome<LotTable, string>> {
    const reading = database.transaction(['tables', 'types']);
    const [entry, types] = await Promise.all([
      reading.objectStore('tables').get(id),
      reading.objectStore('types').get(id),
    ]);
    if (!entry) return failed('This lot table is no longer kept in this browser. Choose another one.');
    const workbooks = (types?.records ?? []).map(readRecord);
    const broken = workbooks.findIndex((one) => !one.ok);
    const fault = workbooks[broken];
    if (fault && !fault.ok) {
      return failed(wordLotFileFault({ code: 'broken_type', at: broken, fault: fault.fault }));
    }
    const table = joinLotTable(
      entry.lots,
      workbooks.flatMap((one) => (one.ok ? [one.value.workbook] : [])),
    );
    return table.ok ? done(table.value) : failed(wordLotFileFault(table.fault));
  }

  return {
    list: async () => {
      const entries = await database.getAll('tables');
      return entries.map(({ id, title, at }) => ({ id, title, at })).sort((one, other) => other.at - one.at);
    },
    read,
    put: async ({ types, ...lots }, withTypes) => {
      const writing = database.transaction(['tables', 'types'], 'readwrite', onDisk);
      const { id, title } = lots;
      await Promise.all([
        writing.objectStore('tables').put({ id, title, at: now(), lots }),
        withTypes
          ? writing.objectStore('types').put({
              id,
              records: types.map((workbook) => recordOf({ workbook, values: noValues })),
            })
          : null,
        writing.done,
      ]);
    },
    takeOff: async (id) => {
      const table = await read(id);
      const taking = database.transaction(['tables', 'types'], 'readwrite', onDisk);
      await Promise.all([
        taking.objectStore('tables').delete(id),
        taking.objectStore('types').delete(id),
        taking.done,
      ]);
      return table.ok ? table.value : null;
    },
  };
}
