import { assertNever } from '../base/outcome.ts';
import type { Drawing, Mark, Point } from './drawing.ts';

/** A text as it stands in a drawing: where its baseline is held, and whether it runs upward along a measure. */
export interface DrawnText {
  readonly at: Point;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly isUpward: boolean;
}

/** A rectangle that a text covers. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** About the width of one letter where text is 12 high. */
const letter = 6.2;
const above = 9;
const below = 3;

/** Where the text of a measure stands: over a level one; along an upright one where it fits, otherwise beside it. */
export function measureText({ from, to, text }: Extract<Mark, { type: 'measure' }>): DrawnText {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const isUpright = Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
  if (!isUpright) return { at: { x: middle.x, y: middle.y - 6 }, text, anchor: 'middle', isUpward: false };
  if (Math.hypot(to.x - from.x, to.y - from.y) > text.length * 7) {
    return { at: { x: middle.x - 6, y: middle.y }, text, anchor: 'middle', isUpward: true };
  }
  return { at: { x: middle.x + 7, y: middle.y + 4 }, text, anchor: 'start', isUpward: false };
}

/** Every text of a drawing, those of the measures included. */
export function textsOf(drawing: Drawing): readonly DrawnText[] {
  return drawing.marks.flatMap((mark) => {
    switch (mark.type) {
      case 'label':
        return [{ at: mark.at, text: mark.text, anchor: mark.anchor, isUpward: false }];
      case 'measure':
        return [measureText(mark)];
      case 'outline':
      case 'circle':
      case 'ring':
        return [];
      default:
        return assertNever(mark);
    }
  });
}

/** About the room that a text takes. */
export function boxOf({ at, text, anchor, isUpward }: DrawnText): Box {
  const width = text.length * letter;
  const before = anchor === 'start' ? 0 : anchor === 'end' ? width : width / 2;
  return isUpward
    ? { left: at.x - above, right: at.x + below, top: at.y - width + before, bottom: at.y + before }
    : { left: at.x - before, right: at.x - before + width, top: at.y - above, bottom: at.y + below };
}
