import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { FileHandle } from './file-picker.ts';

/** Which file on disk a workbook was opened from or saved to. */
export interface KnownFile {
  readonly handle: FileHandle;
  /** When the file was last written, as this browser left it: another time means that something else wrote it. */
  readonly lastModified: number;
}

interface Shape extends DBSchema {
  files: { key: string; value: KnownFile };
}

/** Files by the id of their workbook, kept for the next visit. It is a convenience: where the browser refuses, the person
 *  chooses the file again. */
export interface KnownFiles {
  find(workbook: string): Promise<KnownFile | null>;
  remember(workbook: string, file: KnownFile): Promise<void>;
}

/** A database of its own, since a handle can be gone or refused without harm to any workbook. */
export function knownFiles(): KnownFiles {
  let opened: Promise<IDBPDatabase<Shape>> | null = null;
  const database = () => {
    opened ??= openDB<Shape>('stretchout files', 1, {
      upgrade: (fresh) => {
        fresh.createObjectStore('files');
      },
    });
    return opened;
  };
  return {
    find: async (workbook) => {
      try {
        return (await (await database()).get('files', workbook)) ?? null;
      } catch {
        return null;
      }
    },
    remember: async (workbook, file) => {
      try {
        await (await database()).put('files', file, workbook);
      } catch {
        // The person will be asked for the file again.
      }
    },
  };
}
