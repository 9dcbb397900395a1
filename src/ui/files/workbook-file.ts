import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type KeptWorkbook, largestFile, readWorkbookFile, writeWorkbookFile } from '../../workbook/file.ts';
import { wordFileFault } from '../../workbook/wording.ts';
import { fileName } from './file-name.ts';
import { canPickFiles, type FileHandle, pickToSave, workbookKind } from './file-picker.ts';
import { download, writeTo } from './hand-over.ts';
import type { KnownFiles } from './known-files.ts';

/** Reads a workbook file that a person chose, or says in a sentence why it is refused. */
export async function openFile(file: File): Promise<Outcome<KeptWorkbook, string>> {
  if (file.size > largestFile) {
    return failed(wordFileFault({ code: 'too_large', got: file.size, most: largestFile }));
  }
  const text = await file.text().catch(() => null);
  if (text === null)
    return failed('The file could not be read. Look whether it is still there, and try again.');
  const kept = readWorkbookFile(text);
  return kept.ok ? kept : failed(wordFileFault(kept.fault));
}

/** Saves the workbook: into the file that it came from or was last saved to, or into one that the person chooses. Gives
 *  the name of the file; null where they changed their mind. */
export async function saveFile(
  kept: KeptWorkbook,
  files: KnownFiles,
  where: 'same' | 'another',
): Promise<Outcome<string | null, string>> {
  const { id } = kept.workbook;
  const { name, content } = fileOf(kept);
  if (!canPickFiles()) {
    download(content, name);
    return done(name);
  }
  const same = where === 'same' ? await fileToWriteAgain(id, files) : null;
  const handle = same ?? (await pickToSave(name, workbookKind));
  if (!handle) return done(null);
  const written = await writeTo(handle, content);
  if (written.ok) await rememberFile(id, handle, files);
  return written;
}

/** Saves a workbook that is open nowhere, to a file that the person chooses. Nothing is remembered of it. */
export async function saveApart(kept: KeptWorkbook): Promise<Outcome<string | null, string>> {
  const { name, content } = fileOf(kept);
  if (!canPickFiles()) {
    download(content, name);
    return done(name);
  }
  const handle = await pickToSave(name, workbookKind);
  return handle ? writeTo(handle, content) : done(null);
}

const endings: { readonly [kind in KeptWorkbook['workbook']['kind']]: string } = {
  job: 'stretchout.json',
  template: 'template.stretchout.json',
  allowances: 'allowances.stretchout.json',
};

function fileOf(kept: KeptWorkbook): { readonly name: string; readonly content: Blob } {
  const { title, kind } = kept.workbook;
  return {
    name: fileName([title], endings[kind]),
    content: new Blob([writeWorkbookFile(kept)], { type: 'application/json' }),
  };
}

export async function rememberFile(workbook: string, handle: FileHandle, files: KnownFiles): Promise<void> {
  const file = await handle.getFile().catch(() => null);
  if (file) await files.remember(workbook, { handle, lastModified: file.lastModified });
}

/** The file that is known for this workbook, if it may be written, is still there, and nothing else has written it since;
 *  else the person chooses again, and the browser asks before it puts anything over another file. */
async function fileToWriteAgain(workbook: string, files: KnownFiles): Promise<FileHandle | null> {
  const known = await files.find(workbook);
  if (!known) return null;
  try {
    const { handle, lastModified } = known;
    const wish = { mode: 'readwrite' } as const;
    const isGranted =
      (await handle.queryPermission?.(wish)) === 'granted' ||
      (await handle.requestPermission?.(wish)) === 'granted';
    if (!isGranted) return null;
    return (await handle.getFile()).lastModified === lastModified ? handle : null;
  } catch {
    return null;
  }
}
