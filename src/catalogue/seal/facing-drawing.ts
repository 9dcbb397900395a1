import type { Drawing, Mark } from '../drawing.ts';
import { box } from './joint-drawing.ts';

const left = 20;
const right = 340;
const top = 48;
const bottom = 112;
/** More pieces than this are drawn as so many. */
const mostDrawn = 6;

/** A wrapped run from the side: the seam along it, and the rings that are taped. */
export function facingDrawing(about: {
  readonly describes: string;
  readonly run: string;
  readonly ring: string;
  readonly strips: number;
  readonly rings: number;
}): Drawing {
  const drawn = Math.min(mostDrawn, about.strips);
  const inner = Array.from(
    { length: drawn - 1 },
    (_, index) => left + ((index + 1) * (right - left)) / drawn,
  );
  const ends = [left, right].slice(0, Math.max(0, about.rings - (about.strips - 1)));
  const ringMarks = [...inner, ...ends].map(
    (x): Mark => box({ x: x - 4, y: top - 3 }, { x: x + 4, y: bottom + 3 }, 'tape'),
  );
  const more = about.strips > drawn ? `, ${drawn} of ${about.strips} pieces drawn` : '';
  return {
    title: 'Tape on the facing',
    describes: about.describes,
    height: 164,
    marks: [
      box({ x: left, y: top }, { x: right, y: bottom }, 'wrap'),
      ...ringMarks,
      box({ x: left, y: 76 }, { x: right, y: 84 }, 'tape'),
      { type: 'measure', from: { x: left, y: 30 }, to: { x: right, y: 30 }, text: about.run },
      { type: 'label', at: { x: left, y: 134 }, text: 'seam along the run', anchor: 'start' },
      { type: 'label', at: { x: left, y: 154 }, text: `${about.ring}${more}`, anchor: 'start' },
    ],
  };
}
