import { readFile, stat } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { done, failed, type Outcome } from '../base/outcome.ts';
import { type KeptWorkbook, largestFile, readWorkbookFile } from '../workbook/file.ts';
import { wordFileFault } from '../workbook/wording.ts';

/** Opens a workbook file, or says in a sentence why not. A file that is too large is not even read. */
export async function openFile(path: string | URL): Promise<Outcome<KeptWorkbook, string>> {
  const name = path instanceof URL ? fileURLToPath(path) : path;
  const refused = (reason: string) => failed(`${name} is not opened. ${reason}`);
  let text: string;
  try {
    const about = await stat(path);
    if (!about.isFile()) return refused('It is not a file. Name the workbook file itself.');
    if (about.size > largestFile) {
      return refused(wordFileFault({ code: 'too_large', got: about.size, most: largestFile }));
    }
    text = await readFile(path, 'utf8');
  } catch (error) {
    return refused(whyUnread(error));
  }
  const read = readWorkbookFile(text);
  if (read.ok) return done(read.value);
  return refused(read.fault.code === 'lot_table' ? lotTableInstead(name) : wordFileFault(read.fault));
}

function lotTableInstead(name: string): string {
  return `This is a lot table, not a workbook. Figure its lots with: stretchout lots ${name}`;
}

/** Why the disk does not give a file, in a sentence. */
export function whyUnread(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : '';
  if (code === 'ENOENT' || code === 'ENOTDIR')
    return 'There is no such file. See whether the name is spelled right.';
  if (code === 'EACCES' || code === 'EPERM') return 'You may not read it. Ask whoever keeps it to let you.';
  return 'It cannot be read just now. Copy it somewhere else and try again.';
}
