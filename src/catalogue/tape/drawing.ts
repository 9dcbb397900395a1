import { type Inches, inches } from '../../base/quantity.ts';
import { denominators } from '../../trade/tape/round.ts';
import type { Drawing, Mark, Point } from '../drawing.ts';
import { figure, sayInches } from '../say.ts';

const left = 30;
const right = 330;
const edge = 66;
const span = right - left;

/** The inch of the tape on which a length falls, with its marks; the length itself and where it was brought to. */
export function tapeDrawing(length: Inches, rounded: Inches, denominator: number): Drawing {
  const first = Math.floor(Math.min(length, rounded));
  const at = (inch: number) => left + (inch - first) * span;
  const marks: Mark[] = [
    {
      type: 'outline',
      closed: true,
      role: 'tape',
      points: corners({ x: left - 14, y: 30 }, { x: right + 14, y: edge }),
    },
  ];
  for (const size of denominators.filter((one) => one <= Math.min(denominator, 16))) {
    for (let mark = 0; mark <= size; mark += 1) {
      if (mark % 2 === 0 && size > 1) continue;
      const x = left + (mark / size) * span;
      const tall = 34 / (1 + Math.log2(size) * 0.75);
      marks.push({
        type: 'outline',
        closed: false,
        role: 'tape',
        points: [
          { x, y: edge },
          { x, y: edge - tall },
        ],
      });
    }
  }
  marks.push(
    { type: 'label', at: { x: left, y: 22 }, text: `${first}″`, anchor: 'middle' },
    { type: 'label', at: { x: right, y: 22 }, text: `${first + 1}″`, anchor: 'middle' },
    arrow(at(length), 'guide'),
    arrow(at(rounded), 'cut'),
    {
      type: 'label',
      at: { x: middling(at(length)), y: 122 },
      text: `${figure(length, 4)} in`,
      anchor: 'middle',
    },
    {
      type: 'label',
      at: { x: middling(at(rounded)), y: 104 },
      text: sayInches(inches(rounded)),
      anchor: 'middle',
    },
  );
  return {
    title: 'On the tape',
    describes: `${figure(length, 4)} in between ${first} and ${first + 1} in on the tape, brought to ${sayInches(rounded)}.`,
    height: 130,
    marks,
  };
}

function arrow(x: number, role: 'guide' | 'cut'): Mark {
  const foot = role === 'cut' ? 92 : 110;
  return {
    type: 'outline',
    closed: false,
    role,
    points: [
      { x, y: edge + 2 },
      { x, y: foot },
    ],
  };
}

/** Keeps a label inside the drawing. */
function middling(x: number): number {
  return Math.min(310, Math.max(50, x));
}

function corners(from: Point, to: Point): readonly Point[] {
  return [from, { x: to.x, y: from.y }, to, { x: from.x, y: to.y }];
}
