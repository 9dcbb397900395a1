import type { Frame, Spot } from './plot-line.ts';

/** A line's end, and how wide its name runs. */
export interface LineEnd extends Spot {
  readonly width: number;
}

export interface LabelRoom {
  readonly height: number;
  /** Between the end of a line and its name. */
  readonly gap: number;
  /** How far a name may stand above or below its line's end and still be read as its name. */
  readonly reach: number;
  /** All that a name may be written in. */
  readonly frame: Frame;
}

/** Where the names at the ends of lines stand (left edge, middle height), in the order of the ends; nothing when they
 *  cannot all stand clear of each other and of the lines. */
export function labelPlaces(
  ends: readonly LineEnd[],
  room: LabelRoom,
  spots: readonly Spot[],
): readonly Spot[] | null {
  const heights = spread(ends, room);
  const places = ends.map((end, at) => ({ x: end.x + room.gap, y: heights[at] ?? end.y, width: end.width }));
  const fits = places.every((place, at) => {
    const from = ends[at];
    const half = room.height / 2;
    const right = place.x + place.width;
    const meets = (other: Spot & { readonly width: number }) =>
      other.x < right && place.x < other.x + other.width && Math.abs(other.y - place.y) < room.height - 0.01;
    return (
      from !== undefined &&
      Math.abs(place.y - from.y) <= room.reach &&
      right <= room.frame.right &&
      place.y - half >= room.frame.top &&
      place.y + half <= room.frame.bottom &&
      !places.some((other, beside) => beside !== at && meets(other)) &&
      !spots.some((spot) => spot.x > place.x && spot.x < right && Math.abs(spot.y - place.y) < half)
    );
  });
  return fits ? places.map(({ x, y }) => ({ x, y })) : null;
}

/** Heights at least a line of text apart, each as near to its end as the others let it: names that touch are joined to a
 *  block, and a block stands about the middle of its ends. */
function spread(ends: readonly LineEnd[], { height, frame }: LabelRoom): readonly number[] {
  interface Block {
    readonly members: readonly number[];
    readonly middle: number;
  }
  const order = ends.map((_, at) => at).sort((one, other) => (ends[one]?.y ?? 0) - (ends[other]?.y ?? 0));
  const held = (members: readonly number[]): Block => {
    const mean = members.reduce((sum, at) => sum + (ends[at]?.y ?? 0), 0) / members.length;
    const half = (members.length * height) / 2;
    return { members, middle: Math.max(frame.top + half, Math.min(frame.bottom - half, mean)) };
  };
  const blocks: Block[] = [];
  for (const at of order) {
    let block = held([at]);
    for (let above = blocks.at(-1); above && touches(above, block); above = blocks.at(-1)) {
      blocks.pop();
      block = held([...above.members, ...block.members]);
    }
    blocks.push(block);
  }
  const heights = new Map(
    blocks.flatMap(({ members, middle }) =>
      members.map((at, row) => [at, middle + (row - (members.length - 1) / 2) * height] as const),
    ),
  );
  return ends.map((end, at) => heights.get(at) ?? end.y);

  function touches(above: Block, below: Block): boolean {
    return below.middle - above.middle < ((above.members.length + below.members.length) * height) / 2;
  }
}
