import type { CellAddress } from '../../base/address.ts';
import { type CellSight, type SheetSight, sightOf } from './cell-sight.ts';
import { paintCell } from './paint-cell.ts';

/** Milliseconds of a frame that may go by before new cells wait for the next one. A frame has 16, and what is new has to be
 *  laid out and drawn as well. */
const share = 4;
/** So many are painted in each later frame however long they take: a slow machine would else need too many frames. */
const atLeast = 80;

/** A cell of the grid that has its place and not its words yet. */
interface LateCell {
  readonly element: HTMLElement;
  readonly piece: HTMLElement;
  readonly address: CellAddress;
}

export interface CellPainter {
  /** Paints a cell onto the table's own element; hands back the piece to put into it. */
  paint(element: HTMLElement, sight: CellSight): HTMLElement;
  destroy(): void;
}

/**
 * Paints the cells of the table within `host`. What a scroll brings into sight is painted over as many frames as it takes:
 * a jump makes every cell anew, and the page must not stand still for that. All else is painted at once, and so is the
 * cell where the person is.
 */
export function createCellPainter(host: HTMLElement, look: () => SheetSight): CellPainter {
  let end = Number.POSITIVE_INFINITY;
  let late: LateCell[] = [];

  // Heard before the table hears it, and over before the frame is drawn.
  function onScroll(): void {
    if (end !== Number.POSITIVE_INFINITY) return;
    end = performance.now() + share;
    requestAnimationFrame(() => {
      end = Number.POSITIVE_INFINITY;
    });
  }

  function paintLate(): void {
    const stop = performance.now() + share;
    let at = 0;
    for (; at < late.length && (at < atLeast || performance.now() < stop); at += 1) {
      const cell = late[at];
      // Scrolled past, or painted anew in the meantime.
      if (!cell?.piece.isConnected) continue;
      paintCell(cell.element, cell.piece, sightOf(look(), cell.address));
    }
    late = late.slice(at);
    if (late.length > 0) requestAnimationFrame(paintLate);
  }

  host.addEventListener('scroll', onScroll, true);
  return {
    paint: (element, sight) => {
      const piece = document.createElement('span');
      if (sight.isHere || performance.now() < end) {
        paintCell(element, piece, sight);
        return piece;
      }
      // A frame's own callbacks come after its scrolling, so one more has to pass.
      if (late.length === 0) requestAnimationFrame(() => requestAnimationFrame(paintLate));
      late.push({ element, piece, address: sight.address });
      return piece;
    },
    destroy: () => host.removeEventListener('scroll', onScroll, true),
  };
}
