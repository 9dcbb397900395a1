import type { Frame, Spot } from './plot-line.ts';

/** Where the box of values stands (top left) beside the hairline: on the side and at the height where it hides least of
 *  the lines, right and above where that is the same. */
export function readingPlace(
  hairline: number,
  box: { readonly width: number; readonly height: number },
  frame: Frame,
  spots: readonly Spot[],
): Spot {
  const gap = 10;
  const sides = [hairline + gap, hairline - gap - box.width];
  const inside = sides.filter((x) => x >= frame.left && x + box.width <= frame.right);
  const heights = [frame.top, (frame.top + frame.bottom - box.height) / 2, frame.bottom - box.height];
  const places = (inside.length > 0 ? inside : [Math.max(frame.left, frame.right - box.width)]).flatMap((x) =>
    heights.map((y) => ({ x, y })),
  );
  const hides = (place: Spot) =>
    spots.filter(
      ({ x, y }) => x >= place.x && x <= place.x + box.width && y >= place.y && y <= place.y + box.height,
    ).length;
  return places.reduce((best, place) => (hides(place) < hides(best) ? place : best));
}
