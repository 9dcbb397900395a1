import { columnOf } from './cell-place.ts';

/** How near the pointer has to come to the edge between two column letters; wider for fingers. */
const nearMouse = 6;
const nearFinger = 16;

/** The column whose right edge is pressed, with how wide it is now; null away from an edge. */
export function columnEdgeAt(
  target: EventTarget | null,
  x: number,
  isTouch: boolean,
): { readonly column: number; readonly pixels: number } | null {
  const head = target instanceof Element ? target.closest('.ag-header-cell') : null;
  const column = columnOf(head);
  if (!head || column === null) return null;
  const { left, right } = head.getBoundingClientRect();
  const near = isTouch ? nearFinger : nearMouse;
  if (right - x <= near) return { column, pixels: right - left };
  if (isTouch || x - left > near) return null;
  // From the other side of the same edge.
  const before = neighborBefore(head, left);
  const own = columnOf(before);
  if (!before || own === null) return null;
  return { column: own, pixels: before.getBoundingClientRect().width };
}

function neighborBefore(head: Element, left: number): Element | null {
  const all = [...(head.closest('.ag-header')?.querySelectorAll('.ag-header-cell') ?? [])];
  return all.find((one) => Math.abs(one.getBoundingClientRect().right - left) < 2) ?? null;
}

/** Follows the pointer that holds an edge until it is let go; Escape gives it up. */
export function pullEdge({
  x,
  pixels,
  onWidth,
  onEnd,
}: {
  readonly x: number;
  readonly pixels: number;
  readonly onWidth: (pixels: number) => void;
  /** Null where it was given up. */
  readonly onEnd: (pixels: number | null) => void;
}): void {
  const listening = new AbortController();
  const options = { signal: listening.signal, capture: true };
  let width = pixels;
  const end = (result: number | null) => {
    listening.abort();
    onEnd(result);
  };
  document.addEventListener(
    'pointermove',
    (event) => {
      width = Math.max(36, pixels + event.clientX - x);
      onWidth(width);
    },
    options,
  );
  document.addEventListener('pointerup', () => end(width), options);
  document.addEventListener('pointercancel', () => end(null), options);
  document.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      end(null);
    },
    options,
  );
}
