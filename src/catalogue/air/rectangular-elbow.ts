import type { Outcome } from '../../base/outcome.ts';
import {
  rectangularAspects,
  rectangularElbowCoefficient,
  rectangularMakes,
  rectangularRatios,
} from '../../trade/air/rectangular-elbow.ts';
import { choice, optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';

export const airRectangularElbow = defineFunction({
  name: 'AIR.RECTELBOW',
  says: 'The loss coefficient of a rectangular elbow of 90°, with a radius, with one vane, or mitered.',
  words: [
    'rectangular elbow',
    'square throat',
    'splitter vane',
    'trunk elbow',
    'c factor',
    'loss coefficient',
  ],
  gives: { label: 'Loss coefficient', unit: 'ratio' },
  arguments: {
    made: choice(rectangularMakes, {
      says: 'how the elbow is made: with a radius, with one vane in it, or mitered without vanes',
    }),
    radius_ratio: choice(rectangularRatios, {
      says: 'the radius of its middle line over its width, the width lying in the turn; 0 if mitered',
    }),
    aspect: optional(
      choice(rectangularAspects, { says: 'the depth, which stands across the turn, over the width' }),
      1,
      'the tables have most rows for square duct',
    ),
  },
  formula: [
    String.raw`C = \text{table}(\mathrm{made}, \mathrm{radius\_ratio}, \mathrm{aspect}) \quad \text{(rows of the tables only)}`,
  ],
  work: ({ made, radius_ratio, aspect }): Outcome<number, CallFault> =>
    fromTrade(rectangularElbowCoefficient(made, radius_ratio, aspect)),
  result: (coefficient) => coefficient,
  steps: (coefficient, { made, radius_ratio, aspect }) => [
    {
      label: 'Loss coefficient',
      sum: `${made}${made === 'mitered' ? '' : `, radius ${radius_ratio} widths`}, depth ${aspect} widths`,
      value: coefficient,
      unit: 'ratio',
      source: made === 'mitered' ? 'rectangular-miter-table' : 'rectangular-elbow-table',
    },
  ],
  cautions: (_, { radius_ratio }) => [
    {
      level: 'look',
      sentence:
        'It belongs to the velocity in the elbow. Nothing is guessed between the rows of the tables; prefer the figure of the maker.',
    },
    ...(radius_ratio === 0.5
      ? [
          {
            level: 'look',
            sentence:
              'A radius of half the width leaves a sharp throat: square duct loses more than five times what a radius of a full width would.',
            source: 'rectangular-elbow-table',
          } as const,
        ]
      : []),
  ],
  sources: ['rectangular-elbow-table', 'rectangular-miter-table'],
  examples: [
    {
      says: 'square, radius one width',
      given: { made: 'radius', radius_ratio: 1 },
      gives: 0.21,
      source: 'rectangular-elbow-table',
    },
    {
      says: 'mitered, twice as deep as wide',
      given: { made: 'mitered', radius_ratio: 0, aspect: 2 },
      gives: 1.1,
      source: 'rectangular-miter-table',
    },
  ],
});
