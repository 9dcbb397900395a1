import type { Drawing, Mark } from '../drawing.ts';

const left = 30;
const right = 330;
const structure = 22;
const top = 76;
const bottom = 112;
/** More would run into each other. */
const mostDrawn = 40;

/** A run of duct from the side, under the structure that it hangs from. Places go from 0 at its start to 1 at its end. */
export function runDrawing(about: {
  readonly title: string;
  readonly describes: string;
  readonly places: readonly number[];
  readonly carriesStart: boolean;
  readonly carriesEnd: boolean;
  /** The place that is asked for. */
  readonly marked?: number;
  readonly note: string;
  readonly length: string;
}): Drawing {
  const { title, describes, places, carriesStart, carriesEnd, marked, note, length } = about;
  const step = Math.max(1, Math.ceil(places.length / mostDrawn));
  const drawn = places.filter((_, index) => index % step === 0 || index === places.length - 1);
  return {
    title,
    describes,
    height: 176,
    marks: [
      line(left - 14, structure, right + 14, structure, 'guide'),
      rectangle(left, top, right, bottom, 'metal'),
      ...(carriesStart ? [rectangle(left - 16, top - 12, left, bottom + 12, 'guide')] : []),
      ...(carriesEnd ? [rectangle(right, top - 12, right + 16, bottom + 12, 'guide')] : []),
      ...drawn.map((place) => {
        const x = left + place * (right - left);
        return line(x, structure, x, bottom, 'cut');
      }),
      ...(marked === undefined
        ? []
        : [
            {
              type: 'circle',
              center: { x: left + marked * (right - left), y: structure },
              radius: 5,
              role: 'fastener',
            } as const,
          ]),
      { type: 'label', at: { x: 180, y: 142 }, text: note, anchor: 'middle' },
      { type: 'measure', from: { x: left, y: 166 }, to: { x: right, y: 166 }, text: length },
    ],
  };
}

export function line(
  fromX: number,
  fromY: number,
  toX: number,
  toY: number,
  role: 'guide' | 'cut' | 'metal',
): Mark {
  return {
    type: 'outline',
    closed: false,
    role,
    points: [
      { x: fromX, y: fromY },
      { x: toX, y: toY },
    ],
  };
}

function rectangle(fromX: number, fromY: number, toX: number, toY: number, role: 'guide' | 'metal'): Mark {
  return {
    type: 'outline',
    closed: true,
    role,
    points: [
      { x: fromX, y: fromY },
      { x: toX, y: fromY },
      { x: toX, y: toY },
      { x: fromX, y: toY },
    ],
  };
}
