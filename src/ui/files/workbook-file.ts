import { failed, type Outcome } from '../../base/outcome.ts';
import { type KeptWorkbook, largestFile, readWorkbookFile, writeWorkbookFile } from '../../workbook/file.ts';
import { wordFileFault } from '../../workbook/wording.ts';

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

/** Hands the workbook to the browser as a file to save. */
export function saveFile(kept: KeptWorkbook): void {
  const address = URL.createObjectURL(new Blob([writeWorkbookFile(kept)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName(kept.workbook.title);
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** `Larkspur Lane, lot 7` → `larkspur-lane-lot-7.stretchout.json` */
function fileName(title: string): string {
  const plain = title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return `${plain || 'workbook'}.stretchout.json`;
}
