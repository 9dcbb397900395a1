import { done } from '../../base/outcome.ts';
import { trapezeBar } from '../../trade/hang/length.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayCut } from '../say.ts';
import { saySection, sectionArguments, sectionOf } from '../section.ts';
import { attachment, codeDecides, overhead } from './cautions.ts';
import { hangerDrawing } from './hanger-drawing.ts';
import { wrapArgument } from './length.ts';

/** The bar of a trapeze. Inches. Source: geometry. */
export const hangBar = defineFunction({
  name: 'HANG.BAR',
  says: 'How long to cut the bar of a trapeze under a duct.',
  words: ['trapeze bar', 'angle iron', 'strut length', 'cross bar'],
  gives: { label: 'Bar', unit: 'in' },
  arguments: {
    ...sectionArguments,
    wrap: wrapArgument,
    past: optional(
      quantity('in', {
        says: 'how far the bar reaches past the duct and its wrap on each side, for the rods and their nuts',
        least: 0,
        most: 36,
        why: 'a bar that reaches more than a yard past the duct is most likely a slip',
      }),
      2,
      'room for a rod and its nut on each side; no source, so measure your own',
    ),
  },
  formula: [String.raw`\text{bar} = \text{width} + 2\,\text{wrap} + 2\,\text{past}`],
  work: (given) => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    return done({ section: section.value, bar: trapezeBar(section.value, given.wrap, given.past) });
  },
  result: ({ bar }) => bar,
  steps: ({ section, bar }, { wrap, past }) => [
    {
      label: 'Bar',
      sum: `${figure(section.shape === 'round' ? section.diameter : section.width, 4)} + 2 × ${figure(wrap, 4)} + 2 × ${figure(past, 4)}`,
      value: bar,
      unit: 'in',
      source: 'geometry',
    },
  ],
  drawing: ({ section, bar }, { wrap }) =>
    hangerDrawing({
      title: `Trapeze under a ${saySection(section)} duct`,
      describes: `The bar under a ${saySection(section)} duct is cut ${sayCut(bar)} long.`,
      section,
      make: 'trapeze',
      isWrapped: wrap > 0,
      notes: [`bar ${sayCut(bar)}`],
    }),
  cautions: () => [
    codeDecides,
    overhead,
    attachment,
    {
      level: 'care',
      sentence:
        'The shape and strength of the bar are not figured here: take them from your own copy of the duct standard for the load on it.',
    },
  ],
  sources: ['geometry'],
  examples: [
    {
      says: 'under a 24 × 12 in duct with 2 in of wrap',
      given: { shape: 'rectangular', width: 24, depth: 12, wrap: 2 },
      gives: 32,
      source: 'geometry',
    },
  ],
});
