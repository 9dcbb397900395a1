import type { Drawing, Mark, Point } from '../../src/catalogue/drawing.ts';
import { type Box, boxOf, textsOf } from '../../src/catalogue/drawn-text.ts';

/** Every shape and text that reaches past the sheet. */
export function outsideOf(drawing: Drawing, width: number): readonly string[] {
  const slack = 0.5;
  const isIn = (box: Box) =>
    box.left >= -slack &&
    box.right <= width + slack &&
    box.top >= -slack &&
    box.bottom <= drawing.height + slack;
  return [
    ...drawing.marks.filter((mark) => !isIn(extentOf(mark))).map((mark) => JSON.stringify(mark)),
    ...textsOf(drawing)
      .filter((text) => !isIn(boxOf(text)))
      .map((text) => `text ${text.text}`),
  ];
}

/** Every two texts that lie over each other. */
export function clashesIn(drawing: Drawing): readonly string[] {
  const texts = textsOf(drawing).map((text) => ({ text: text.text, box: boxOf(text) }));
  return texts.flatMap((one, index) =>
    texts
      .slice(index + 1)
      .filter((other) => overlap(one.box, other.box))
      .map((other) => `${one.text} / ${other.text}`),
  );
}

function overlap(one: Box, other: Box): boolean {
  const lap = 0.5; // widths are estimates
  return (
    one.left < other.right - lap &&
    other.left < one.right - lap &&
    one.top < other.bottom - lap &&
    other.top < one.bottom - lap
  );
}

function extentOf(mark: Mark): Box {
  switch (mark.type) {
    case 'outline':
      return around(mark.points, 0);
    case 'circle':
      return around([mark.center], mark.radius);
    case 'ring':
      return around([mark.center], mark.outer);
    case 'measure':
      return around([mark.from, mark.to], 0);
    case 'label':
      return around([mark.at], 0);
  }
}

function around(points: readonly Point[], margin: number): Box {
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  return {
    left: Math.min(...xs) - margin,
    right: Math.max(...xs) + margin,
    top: Math.min(...ys) - margin,
    bottom: Math.max(...ys) + margin,
  };
}
