import { done } from '../../base/outcome.ts';
import { jointScrews, leastInRound, leastOnSide } from '../../trade/seal/screws.ts';
import type { DuctSection } from '../../trade/section.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Mark, Point } from '../drawing.ts';
import { figure, sayCount, sayInches } from '../say.ts';
import { saySection, sectionArguments, sectionOf } from '../section.ts';
import type { Step } from '../working.ts';
import { sharpMetal } from './cautions.ts';
import { jointsArgument } from './joint.ts';
import { acrossMarks, fitted } from './joint-drawing.ts';

/** Screws in metal joints by spacing, with the least that the code asks of a round one. Source: mechanical code 603. */
export const sealScrews = defineFunction({
  name: 'SEAL.SCREWS',
  says: 'Screws for the joints between lengths of duct: by spacing, and never fewer than the least.',
  words: ['screws', 'fasteners', 'zip screws', 'screws per joint', 'rivets'],
  gives: { label: 'Screws', unit: 'count' },
  arguments: {
    ...sectionArguments,
    spacing: optional(
      quantity('in', {
        says: 'the widest gap between two screws',
        least: 1,
        most: 36,
        why: 'screws closer than 1 in tear the sheet, and over 3 ft apart they hold nothing',
      }),
      12,
      '12 in is common practice, no source',
    ),
    joints: jointsArgument,
  },
  formula: [
    String.raw`\text{round:}\quad \text{screws} = \text{joints} \times \max\left(3,\ \left\lceil \frac{\pi \times \text{width}}{\text{spacing}} \right\rceil\right)`,
    String.raw`\text{rectangular:}\quad \text{screws} = 2 \times \text{joints} \times \left(\max\left(2,\ \left\lceil \frac{\text{width}}{\text{spacing}} \right\rceil\right) + \max\left(2,\ \left\lceil \frac{\text{depth}}{\text{spacing}} \right\rceil\right)\right)`,
  ],
  work: (given) => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    return done({ section: section.value, ...jointScrews(section.value, given.spacing, given.joints) });
  },
  result: ({ screws }) => screws,
  steps: ({ section, parts, perJoint, screws }, { spacing, joints }): readonly Step[] => [
    ...(section.shape === 'round' ? parts : parts.slice(0, 2)).map(
      (part, index): Step => ({
        label:
          section.shape === 'round'
            ? 'Round the joint'
            : index === 0
              ? 'On each wide side'
              : 'On each deep side',
        sum: `${figure(part.length, 2)} ÷ ${figure(spacing)}, up to ${part.bySpacing}; at least ${section.shape === 'round' ? leastInRound : leastOnSide}`,
        value: part.screws,
        unit: 'count',
        source: section.shape === 'round' ? 'mechanical-code-603' : 'sealing-practice',
      }),
    ),
    {
      label: 'In one joint',
      sum: section.shape === 'round' ? '' : parts.map((part) => part.screws).join(' + '),
      value: perJoint,
      unit: 'count',
    },
    { label: 'Screws', sum: `${perJoint} × ${joints}`, value: screws, unit: 'count' },
  ],
  drawing: ({ section, parts, perJoint }) => ({
    title: 'Screws in one joint',
    describes: `${saySection(section)} duct with ${sayCount(perJoint, 'screw')} in a joint.`,
    height: 160,
    marks: [
      ...acrossMarks(section, { x: 110, y: 74 }, 112),
      ...places(
        section,
        parts.map((part) => part.screws),
      ).map((center): Mark => ({ type: 'circle', center, radius: 3.5, role: 'fastener' })),
      { type: 'label', at: { x: 210, y: 70 }, text: sayCount(perJoint, 'screw'), anchor: 'start' },
      {
        type: 'label',
        at: { x: 210, y: 90 },
        text:
          section.shape === 'round' ? `${sayInches(section.diameter)} joint, evenly` : 'each side by itself',
        anchor: 'start',
      },
    ],
  }),
  cautions: ({ section }) => [
    sharpMetal,
    {
      level: 'care',
      sentence:
        section.shape === 'round'
          ? 'Where part of a joint is out of reach, the exposed part takes the least number. Your local code and its edition decide.'
          : 'No published figure was found for rectangular joints: your construction standard and local code decide.',
      source: section.shape === 'round' ? 'mechanical-code-603' : 'sealing-practice',
    },
  ],
  sources: ['mechanical-code-603'],
  examples: [
    { says: 'a 20 in pipe, 12 in apart', given: { shape: 'round', width: 20 }, gives: 6 },
    { says: 'a small pipe all the same', given: { shape: 'round', width: 6, joints: 2 }, gives: 6 },
  ],
});

function places(section: DuctSection, screws: readonly number[]): readonly Point[] {
  const center = { x: 110, y: 74 };
  if (section.shape === 'round') {
    const count = Math.min(screws[0] ?? 0, 60);
    return Array.from({ length: count }, (_, index) => {
      const angle = (index / count) * 2 * Math.PI - Math.PI / 2;
      return { x: center.x + 56 * Math.cos(angle), y: center.y + 56 * Math.sin(angle) };
    });
  }
  const [width, height] = fitted(section.width, section.depth, 112);
  const [wide = 0, deep = 0] = screws;
  const along = (count: number, size: number) =>
    Array.from(
      { length: Math.min(count, 40) },
      (_, index) => ((index + 0.5) / Math.min(count, 40) - 0.5) * size,
    );
  return [
    ...along(wide, width).flatMap((x) =>
      [-1, 1].map((side) => ({ x: center.x + x, y: center.y + (side * height) / 2 })),
    ),
    ...along(deep, height).flatMap((y) =>
      [-1, 1].map((side) => ({ x: center.x + (side * width) / 2, y: center.y + y })),
    ),
  ];
}
