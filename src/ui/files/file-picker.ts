/** The browser's own window for choosing files (File System Access, a draft of the WICG): not every browser has it. */

/** A file on disk that stays reachable, so that saving again writes the same one. */
export interface FileHandle extends FileSystemFileHandle {
  queryPermission?(wish: { readonly mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission?(wish: { readonly mode: 'readwrite' }): Promise<PermissionState>;
}

export interface FileKind {
  readonly description: string;
  readonly accept: { readonly [type: string]: readonly `.${string}`[] };
}

interface Pickers {
  readonly showOpenFilePicker?: (wish: { readonly types: readonly FileKind[] }) => Promise<FileHandle[]>;
  readonly showSaveFilePicker?: (wish: {
    readonly suggestedName: string;
    readonly types: readonly FileKind[];
  }) => Promise<FileHandle>;
}

export const workbookKind: FileKind = {
  description: 'Workbook',
  accept: { 'application/json': ['.json'] },
};

export function canPickFiles(): boolean {
  const { showOpenFilePicker, showSaveFilePicker } = pickers();
  return typeof showOpenFilePicker === 'function' && typeof showSaveFilePicker === 'function';
}

/** The file that the person chose; null where they changed their mind. */
export async function pickToOpen(kind: FileKind): Promise<FileHandle | null> {
  const [handle] = (await orNull(pickers().showOpenFilePicker?.({ types: [kind] }))) ?? [];
  return handle ?? null;
}

export async function pickToSave(suggestedName: string, kind: FileKind): Promise<FileHandle | null> {
  return orNull(pickers().showSaveFilePicker?.({ suggestedName, types: [kind] }));
}

async function orNull<T>(picked: Promise<T> | undefined): Promise<T | null> {
  try {
    return (await picked) ?? null;
  } catch (fault) {
    if (fault instanceof DOMException && fault.name === 'AbortError') return null;
    throw fault;
  }
}

function pickers(): Pickers {
  return window as unknown as Pickers; // TypeScript's list of what a window has leaves the draft out
}
