import { useEffect, useRef } from 'react';
import type { FindWish } from './find-panel.tsx';

const wishes: { readonly [key: string]: FindWish['wants'] } = { f: 'find', h: 'replace', g: 'place' };

/** Ctrl+F looks for something, Ctrl+H puts something in its place, Ctrl+G goes to a name or an address, from anywhere. */
export function useFindKeys(onWish: (wants: FindWish['wants']) => void): void {
  const latest = useRef(onWish);
  latest.current = onWish;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return;
      const wants = wishes[event.key.toLowerCase()];
      if (wants === undefined) return;
      event.preventDefault();
      latest.current(wants);
    };
    document.addEventListener('keydown', onKey, true);
    return () => document.removeEventListener('keydown', onKey, true);
  }, []);
}
