import { useEffect } from 'react';
import type { Session } from '../session/session.ts';

/** Ctrl+Z takes back and Ctrl+Shift+Z or Ctrl+Y does again, wherever the focus is, except in a field that has an undo
 *  of its own. */
export function useHistoryKeys(session: Session): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || hasOwnUndo(event.target)) return;
      const key = event.key.toLowerCase();
      const isRedo = key === 'y' || (key === 'z' && event.shiftKey);
      if (key !== 'z' && !isRedo) return;
      event.preventDefault();
      if (isRedo) session.redo();
      else session.undo();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [session]);
}

function hasOwnUndo(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    (target.isContentEditable || target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement)
  );
}
