import { useEffect, useState, useSyncExternalStore } from 'react';
import { type LotDesk, type LotDeskState, lotDesk } from './lot-desk.ts';

/** The desk of the lots, when this browser has let it be opened. */
export function useLotDesk(): LotDesk | 'opening' | 'no storage' {
  const [desk, setDesk] = useState<LotDesk | 'opening' | 'no storage'>('opening');
  useEffect(() => {
    lotDesk().then(setDesk, () => setDesk('no storage'));
  }, []);
  return desk;
}

export function useLotState(desk: LotDesk): LotDeskState {
  return useSyncExternalStore(desk.subscribe, desk.getState);
}

/** While the lots are shown, Ctrl+Z and Ctrl+Y take back and do again what was done to them, and leave the workbook alone. */
export function useLotHistoryKeys(desk: LotDesk): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const { target } = event;
      const hasOwnUndo = target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
      // What is marked in the house form is done to the open template.
      const isOfWorkbook = target instanceof Element && target.closest('.house-form') !== null;
      if (!(event.ctrlKey || event.metaKey) || event.altKey || hasOwnUndo || isOfWorkbook) return;
      const key = event.key.toLowerCase();
      const isRedo = key === 'y' || (key === 'z' && event.shiftKey);
      if (key !== 'z' && !isRedo) return;
      event.preventDefault();
      event.stopPropagation();
      if (isRedo) desk.redo();
      else desk.undo();
    };
    document.addEventListener('keydown', onKey, { capture: true });
    return () => document.removeEventListener('keydown', onKey, { capture: true });
  }, [desk]);
}
