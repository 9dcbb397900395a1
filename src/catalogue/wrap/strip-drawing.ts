import type { Inches } from '../../base/quantity.ts';
import type { Mark } from '../drawing.ts';
import { sayFeet } from '../say.ts';

/** Where the strip lies in its drawing. */
export const strip = { left: 20, right: 340, top: 44, bottom: 98 } as const;

/** A straight strip of wrap with its length over it, divided by lines across at `at`, and one line of words at either
 *  end below it. */
export function stripMarks(given: {
  readonly length: Inches;
  /** What the length is of: `roll`. */
  readonly of: string;
  /** Where the lines across stand. */
  readonly at: readonly number[];
  readonly lines: 'seam' | 'cut';
  readonly words: { readonly left: string; readonly right: string };
}): readonly Mark[] {
  const { left, right, top, bottom } = strip;
  return [
    {
      type: 'outline',
      closed: true,
      role: 'wrap',
      points: [
        { x: left, y: top },
        { x: right, y: top },
        { x: right, y: bottom },
        { x: left, y: bottom },
      ],
    },
    ...given.at.map(
      (x): Mark => ({
        type: 'outline',
        closed: false,
        role: given.lines,
        points: [
          { x, y: top },
          { x, y: bottom },
        ],
      }),
    ),
    {
      type: 'measure',
      from: { x: left, y: 30 },
      to: { x: right, y: 30 },
      text: `${given.of} ${sayFeet(given.length)}`,
    },
    { type: 'label', at: { x: left, y: bottom + 20 }, text: given.words.left, anchor: 'start' },
    { type: 'label', at: { x: right, y: bottom + 40 }, text: given.words.right, anchor: 'end' },
  ];
}
