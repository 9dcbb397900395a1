/** Where the editor stands, in pixels inside the grid's frame. */
export interface EditorPlace {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** How wide the field may grow. */
  readonly room: number;
  /** From which edge of the field the notes hang, and how wide they may be. */
  readonly edge: 'left' | 'right';
  readonly noteRoom: number;
  /** Which side of the cell the notes hang from. */
  readonly side: 'below' | 'above';
}

const leastNoteRoom = 280;
const mostNoteRoom = 400;
/** Space for the question and some choices. */
const roomBelow = 150;

/** Over the cell, pushed back into the frame where the cell has been scrolled half out of it. */
export function placeOver(cell: Element, frame: Element): EditorPlace {
  const inner = cell.getBoundingClientRect();
  const outer = frame.getBoundingClientRect();
  const width = inner.width;
  const left = clamp(inner.left - outer.left, 0, Math.max(0, outer.width - width));
  const top = clamp(inner.top - outer.top, 0, Math.max(0, outer.height - inner.height));
  const below = outer.height - top - inner.height;
  const room = Math.max(width, outer.width - left);
  const edge = room < leastNoteRoom && left + width > room ? 'right' : 'left';
  return {
    left,
    top,
    width,
    height: inner.height,
    room,
    edge,
    noteRoom: Math.min(mostNoteRoom, edge === 'left' ? room : left + width),
    side: below < roomBelow && top > below ? 'above' : 'below',
  };
}

/** Along the top of the frame, for a cell of a sheet that does not stand there. */
export function stripPlace(frame: Element | null): EditorPlace {
  const room = frame?.clientWidth ?? mostNoteRoom;
  const noteRoom = Math.min(mostNoteRoom, room);
  return { left: 0, top: 0, width: room, height: 34, room, edge: 'left', noteRoom, side: 'below' };
}

export function samePlace(one: EditorPlace, other: EditorPlace): boolean {
  const keys = ['left', 'top', 'width', 'height', 'room', 'edge', 'noteRoom', 'side'] as const;
  return keys.every((key) => one[key] === other[key]);
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
