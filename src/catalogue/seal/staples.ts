import { done } from '../../base/outcome.ts';
import { seamStaples } from '../../trade/seal/staples.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Mark } from '../drawing.ts';
import { figure, sayCount, sayFeet, sayInches } from '../say.ts';
import { staplePoints } from './cautions.ts';
import { box } from './joint-drawing.ts';

/** Staples along the side seam of wrap, one for each interval. Source: maker guide specification. */
export const sealStaples = defineFunction({
  name: 'SEAL.STAPLES',
  says: 'Staples along the seam of the wrap, one for each interval.',
  words: ['staples', 'staple the seam', 'outward clinching staples', 'close the wrap'],
  gives: { label: 'Staples', unit: 'count' },
  arguments: {
    seam: quantity('in', {
      says: 'the length of seam to staple, all together',
      least: 0,
      most: 1_200_000,
      why: 'more than 100,000 ft of seam in one job is most likely a slip of the unit',
    }),
    spacing: optional(
      quantity('in', {
        says: 'from one staple to the next',
        least: 0.5,
        most: 24,
        why: 'staples stand from half an inch to two feet apart',
      }),
      6,
      '6 in is the maker guide specification; a public bid specification asks for 1 in',
    ),
  },
  formula: [String.raw`\text{staples} = \left\lceil \frac{\text{seam}}{\text{spacing}} \right\rceil`],
  work: ({ seam, spacing }) => done(seamStaples(seam, spacing)),
  result: ({ staples }) => staples,
  steps: ({ intervals, staples }, { seam, spacing }) => [
    { label: 'Seam', sum: sayFeet(seam), value: seam, unit: 'in' },
    {
      label: 'Staples',
      sum: `${figure(seam, 2)} ÷ ${figure(spacing)} = ${figure(intervals)}, up to ${sayCount(staples, 'staple')}`,
      value: staples,
      unit: 'count',
      source: 'wrap-guide-specification',
    },
  ],
  drawing: (_, { spacing }) => ({
    title: 'Staples along a seam',
    describes: `A seam of wrap with a staple every ${sayInches(spacing)}.`,
    height: 110,
    marks: [
      box({ x: 20, y: 30 }, { x: 340, y: 74 }, 'wrap'),
      box({ x: 20, y: 44 }, { x: 340, y: 60 }, 'lap'),
      ...[50, 115, 180, 245, 310].map(
        (x): Mark => ({
          type: 'outline',
          closed: false,
          role: 'fastener',
          points: [
            { x: x - 7, y: 52 },
            { x: x + 7, y: 52 },
          ],
        }),
      ),
      { type: 'measure', from: { x: 115, y: 96 }, to: { x: 180, y: 96 }, text: sayInches(spacing) },
      { type: 'label', at: { x: 20, y: 20 }, text: 'the flap laps over, facing outward', anchor: 'start' },
    ],
  }),
  cautions: () => [staplePoints],
  sources: ['wrap-guide-specification', 'wrap-bid-specification'],
  examples: [
    {
      says: 'a 48 in seam, 1 in apart',
      given: { seam: 48, spacing: 1 },
      gives: 48,
      source: 'wrap-bid-specification',
    },
    { says: 'a 48 in seam, 6 in apart', given: { seam: 48 }, gives: 8 },
  ],
});
