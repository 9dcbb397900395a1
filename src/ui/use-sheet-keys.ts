import { useEffect, useRef } from 'react';

/** Alt with PageUp or PageDown goes to the sheet before or after, from wherever the focus is: also out of a formula that is
 *  being written. */
export function useSheetKeys(onStep: (by: 1 | -1) => void): void {
  const latest = useRef(onStep);
  latest.current = onStep;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const isPlain = event.altKey && !event.ctrlKey && !event.metaKey && !event.shiftKey;
      if (!isPlain || (event.key !== 'PageUp' && event.key !== 'PageDown')) return;
      event.preventDefault();
      event.stopPropagation();
      latest.current(event.key === 'PageDown' ? 1 : -1);
    };
    document.addEventListener('keydown', onKey, true);
    return () => document.removeEventListener('keydown', onKey, true);
  }, []);
}
