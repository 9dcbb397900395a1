import { done, failed, type Outcome } from '../../base/outcome.ts';

const largest = 2 * 1024 * 1024;

/** The text of a file that another program wrote: UTF-8, UTF-16 with its mark, or what Windows writes in the West. */
export async function readText(file: File): Promise<Outcome<string, string>> {
  if (file.size > largest) {
    const size = (file.size / 1024 / 1024).toFixed(1);
    return failed(`The file has ${size} MB; a list to bring in has at most 2 MB. Bring it in in parts.`);
  }
  const bytes = await file.arrayBuffer().catch(() => null);
  if (bytes === null)
    return failed('The file could not be read. Look whether it is still there, and try again.');
  const text = decoded(new Uint8Array(bytes));
  if (text.trim() === '') return failed('The file is empty. Choose one with a line for each piece.');
  if (text.includes('\0')) {
    return failed(
      'This is not a CSV file but something else, such as a workbook of another program. Save it as CSV there, and choose that file.',
    );
  }
  return done(text);
}

function decoded(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
