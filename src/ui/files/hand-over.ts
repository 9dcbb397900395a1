import { done, failed, type Outcome } from '../../base/outcome.ts';
import { canPickFiles, type FileHandle, type FileKind, pickToSave } from './file-picker.ts';

/** Hands a file to the person: into the place that they choose, or to where the browser puts its downloads. Gives the
 *  name that it has there; null where they changed their mind. */
export async function handOver(
  content: Blob,
  name: string,
  kind: FileKind,
): Promise<Outcome<string | null, string>> {
  if (!canPickFiles()) {
    download(content, name);
    return done(name);
  }
  const handle = await pickToSave(name, kind);
  return handle ? writeTo(handle, content) : done(null);
}

/** Puts the content in place of what the file held; where that fails, the file is as it was. */
export async function writeTo(handle: FileHandle, content: Blob): Promise<Outcome<string, string>> {
  try {
    const writing = await handle.createWritable();
    try {
      await writing.write(content);
      await writing.close();
    } catch (fault) {
      await writing.abort().catch(() => {});
      throw fault;
    }
    return done(handle.name);
  } catch (fault) {
    const why = fault instanceof Error ? ` (${fault.message})` : '';
    return failed(
      `${handle.name} could not be written${why}. It is as it was; save to another file, such as one on this computer’s own disk.`,
    );
  }
}

export function download(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
