/** Where the editor stands, in pixels inside the grid's frame. */
export interface EditorPlace {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** How wide it may grow. */
  readonly room: number;
  /** Which side of the cell the notes hang from. */
  readonly side: 'below' | 'above';
}

const leastRoom = 280;
/** Space for the question and some choices. */
const roomBelow = 150;

/** Over the cell, pushed back into the frame where the cell has been scrolled half out of it. */
export function placeOver(cell: Element, frame: Element): EditorPlace {
  const inner = cell.getBoundingClientRect();
  const outer = frame.getBoundingClientRect();
  const width = inner.width;
  const left = clamp(inner.left - outer.left, 0, Math.max(0, outer.width - Math.min(leastRoom, outer.width)));
  const top = clamp(inner.top - outer.top, 0, Math.max(0, outer.height - inner.height));
  const below = outer.height - top - inner.height;
  return {
    left,
    top,
    width,
    height: inner.height,
    room: Math.max(width, outer.width - left),
    side: below < roomBelow && top > below ? 'above' : 'below',
  };
}

export function samePlace(one: EditorPlace, other: EditorPlace): boolean {
  return (
    one.left === other.left &&
    one.top === other.top &&
    one.width === other.width &&
    one.height === other.height &&
    one.room === other.room &&
    one.side === other.side
  );
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
