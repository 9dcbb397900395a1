import { type RefObject, useEffect, useState } from 'react';

/** The width of an element as far as a drawing can follow it: within the bounds the drawing keeps its type size, beyond
 *  them it is scaled. */
export function useDrawnWidth(
  element: RefObject<Element | null>,
  { start, least, most }: { readonly start: number; readonly least: number; readonly most: number },
): number {
  const [width, setWidth] = useState(start);
  useEffect(() => {
    if (element.current === null) return;
    const observer = new ResizeObserver(([entry]) => {
      if (!entry || entry.contentRect.width === 0) return;
      setWidth(Math.round(Math.max(least, Math.min(most, entry.contentRect.width))));
    });
    observer.observe(element.current);
    return () => observer.disconnect();
  }, [element, least, most]);
  return width;
}
