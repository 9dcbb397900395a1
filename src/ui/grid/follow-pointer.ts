import type { CellAddress } from '../../base/address.ts';
import { columnOf, rowOf } from './cell-place.ts';
import { within } from './keyboard.ts';
import { lastPlace } from './selection.ts';

/** How often the sheet goes on while the pointer is held past its edge, and how far out it goes one line faster. */
const stepMilliseconds = 60;
const pixelsPerStep = 40;
/** At the right and below the sheet may end where the window does, so that going past begins a little before. */
const beforeEdge = 12;
/** From the edge of the cells back into the row numbers and the column letters. */
const intoNames = 12;

/** Follows a pointer that is held down, over cells and past the edges of the sheet, until it is let go. */
export function followPointer({
  start,
  cellArea,
  onPlace,
  onEnd,
}: {
  readonly start: CellAddress;
  readonly cellArea: () => DOMRect;
  /** Told each cell that the pointer comes to; it has to be scrolled into view. */
  readonly onPlace: (place: CellAddress) => void;
  /** False where it was not let go, but given up with Escape or lost. */
  readonly onEnd: (isLetGo: boolean) => void;
}): void {
  let last = start;
  let pointer: { readonly x: number; readonly y: number } | null = null;

  function come(to: CellAddress): void {
    const place = within(to, { last: lastPlace });
    if (place.row === last.row && place.column === last.column) return;
    last = place;
    onPlace(place);
  }

  /** Inside the sheet the cell under the pointer; past an edge, step by step on from the last one. */
  function look(isStep: boolean): void {
    if (!pointer) return;
    const { x, y } = pointer;
    const area = cellArea();
    const down = stepsPast(y, area.top, area.bottom - beforeEdge);
    const right = stepsPast(x, area.left, area.right - beforeEdge);
    come({
      row: down === 0 ? rowAt(area, y, last.row) : last.row + (isStep ? down : 0),
      column: right === 0 ? columnAt(area, x, last.column) : last.column + (isStep ? right : 0),
    });
  }

  const steps = setInterval(() => look(true), stepMilliseconds);

  const listening = new AbortController();
  const options = { signal: listening.signal };
  document.addEventListener(
    'pointermove',
    (event) => {
      pointer = { x: event.clientX, y: event.clientY };
      look(false);
    },
    options,
  );
  function end(isLetGo: boolean): void {
    listening.abort();
    clearInterval(steps);
    onEnd(isLetGo);
  }
  for (const up of ['pointerup', 'mouseup']) window.addEventListener(up, () => end(true), options);
  for (const lost of ['pointercancel', 'blur']) window.addEventListener(lost, () => end(false), options);
  window.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      end(false);
    },
    { ...options, capture: true },
  );
}

/** By how many lines to go on; none between the edges. */
function stepsPast(at: number, least: number, most: number): number {
  if (at >= least && at <= most) return 0;
  return at < least
    ? -1 - Math.floor((least - at) / pixelsPerStep)
    : 1 + Math.floor((at - most) / pixelsPerStep);
}

/** Read off the row numbers, which stand beside every row in view and are never covered. */
function rowAt({ left }: DOMRect, y: number, otherwise: number): number {
  return rowOf(document.elementFromPoint(left - intoNames, y)) ?? otherwise;
}

function columnAt({ top }: DOMRect, x: number, otherwise: number): number {
  return columnOf(document.elementFromPoint(x, top - intoNames)) ?? otherwise;
}
