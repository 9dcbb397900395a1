import type { Drawing, Mark } from '../drawing.ts';
import { sayCount } from '../say.ts';

/** More rolls than this are drawn as so many. */
const mostDrawn = 7;

/** Rolls of tape side by side. */
export function rollsDrawing(rolls: number, each: string, needed: string): Drawing {
  const drawn = Math.min(mostDrawn, rolls);
  return {
    title: 'Rolls of tape',
    describes: `${sayCount(rolls, 'roll')} of ${each} for ${needed}.`,
    height: 112,
    marks: [
      ...Array.from(
        { length: drawn },
        (_, index): Mark => ({
          type: 'ring',
          center: { x: 42 + 46 * index, y: 40 },
          inner: 9,
          outer: 20,
          role: 'tape',
        }),
      ),
      {
        type: 'label',
        at: { x: 20, y: 84 },
        text: `${sayCount(rolls, 'roll')} of ${each}${rolls > drawn ? `, ${drawn} drawn` : ''}`,
        anchor: 'start',
      },
      { type: 'label', at: { x: 20, y: 104 }, text: `needed ${needed}`, anchor: 'start' },
    ],
  };
}
