import { useEffect, useState } from 'react';
import type { Session } from '../../session/session.ts';
import type { Workbook } from '../../workbook/document.ts';
import type { Deed } from '../../workbook/history.ts';
import type { DeskKeeper } from '../desk.ts';
import { canPickFiles, type FileHandle, pickToOpen, workbookKind } from './file-picker.ts';
import { knownFiles } from './known-files.ts';
import { openFile, rememberFile, saveFile } from './workbook-file.ts';

/** Opening workbooks from files and saving the open one. */
export interface WorkbookFile {
  /** Opens a file that the page has in hand. */
  readonly open: (file: File) => Promise<void>;
  /** Lets the person choose one; null in a browser without a window for it. */
  readonly pick: (() => Promise<void>) | null;
  readonly save: (where: 'same' | 'another') => Promise<void>;
  /** Which file holds the workbook, and whether as it is now. Empty where none is known. */
  readonly savedWords: string;
}

/** As of when a file holds a workbook: after which deed. Taking back all that was done since leads to the same again. */
interface Saved {
  readonly name: string;
  readonly id: string;
  readonly last: Deed | undefined;
}

function savedNow(session: Session, name: string): Saved {
  const { workbook, history } = session.getState();
  return { name, id: workbook.id, last: history.done.at(-1) };
}

const files = knownFiles();

/** `onSay` takes what has to be told, or null where all is well; `onOpened` is called when another workbook lies open. */
export function useWorkbookFile(
  keeper: DeskKeeper,
  session: Session,
  workbook: Workbook,
  onSay: (sentence: string | null) => void,
  onOpened: () => void,
): WorkbookFile {
  const [saved, setSaved] = useState<Saved | null>(null);
  const [before, setBefore] = useState<{ readonly name: string; readonly id: string } | null>(null);
  const { id } = workbook;

  useEffect(() => {
    files.find(id).then((known) => setBefore(known && { name: known.handle.name, id }));
  }, [id]);

  async function open(file: File, handle?: FileHandle): Promise<void> {
    const kept = await openFile(file);
    if (!kept.ok) return onSay(`${file.name} was not opened. ${kept.fault}`);
    onSay(null);
    onOpened();
    await keeper.add(kept.value);
    const opened = keeper.getDesk().session;
    if (!handle) return;
    setSaved(savedNow(opened, file.name));
    await rememberFile(opened.getState().workbook.id, handle, files);
  }

  async function pick(): Promise<void> {
    try {
      const handle = await pickToOpen(workbookKind);
      if (handle) await open(await handle.getFile(), handle);
    } catch (fault) {
      onSay(`No file was opened. ${wordsOf(fault)}`);
    }
  }

  async function save(where: 'same' | 'another'): Promise<void> {
    const kept = session.kept();
    const now = savedNow(session, '');
    try {
      const name = await saveFile(kept, files, where);
      if (!name.ok) return onSay(name.fault);
      if (name.value === null) return;
      setSaved({ ...now, name: name.value });
      onSay(null);
    } catch (fault) {
      onSay(`The workbook was not saved to a file. ${wordsOf(fault)}`);
    }
  }

  return { open: (file) => open(file), pick: canPickFiles() ? pick : null, save, savedWords: words() };

  function words(): string {
    if (saved?.id !== id) return before?.id === id ? `saved before to ${before.name}` : '';
    return saved.last === session.getState().history.done.at(-1)
      ? `saved to ${saved.name}`
      : `changed since it was saved to ${saved.name}`;
  }
}

function wordsOf(fault: unknown): string {
  const why = fault instanceof Error && fault.message ? `The browser says: ${fault.message}` : '';
  return `${why} Try again, or choose another folder.`.trim();
}
