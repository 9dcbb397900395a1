import { useEffect, useRef } from 'react';

/** What to do when the person copies, cuts or pastes with the focus on a cell. */
export interface ClipboardDeeds {
  /** Whether the focus is on a cell; anywhere else the clipboard is the browser's business. */
  readonly isOnCell: () => boolean;
  /** The text for the clipboard; null where there is nothing to take. */
  readonly onTake: (kind: 'copy' | 'cut') => string | null;
  readonly onPaste: (text: string) => void;
}

/** Listens at the document: without selected text some browsers tell a copy to the body, wherever the focus is. */
export function useClipboard(deeds: ClipboardDeeds): void {
  const latest = useRef(deeds);
  latest.current = deeds;
  useEffect(() => {
    const take = (event: ClipboardEvent) => {
      if (!latest.current.isOnCell()) return;
      const text = latest.current.onTake(event.type === 'cut' ? 'cut' : 'copy');
      if (text !== null) event.clipboardData?.setData('text/plain', text);
      event.preventDefault();
    };
    const paste = (event: ClipboardEvent) => {
      if (!latest.current.isOnCell()) return;
      event.preventDefault();
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (text !== '') latest.current.onPaste(text);
    };
    document.addEventListener('copy', take);
    document.addEventListener('cut', take);
    document.addEventListener('paste', paste);
    return () => {
      document.removeEventListener('copy', take);
      document.removeEventListener('cut', take);
      document.removeEventListener('paste', paste);
    };
  }, []);
}
