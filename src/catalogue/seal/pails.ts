import { done } from '../../base/outcome.ts';
import { pailsFor } from '../../trade/seal/mastic.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayCount } from '../say.ts';

/** Whole pails of mastic. */
export const sealPails = defineFunction({
  name: 'SEAL.PAILS',
  says: 'Pails of mastic to buy for so many gallons.',
  words: ['pails', 'buckets', 'buy mastic', 'gallons', 'duct sealant'],
  gives: { label: 'Pails', unit: 'count' },
  arguments: {
    gallons: quantity('gal', {
      says: 'the mastic that is needed, waste included, all joints together',
      least: 0,
      most: 10_000,
      why: 'more in one job is most likely a slip of the unit',
    }),
    pail: optional(
      quantity('gal', {
        says: 'the mastic in one pail',
        least: 0.05,
        most: 60,
        why: 'mastic is sold from tubs to drums',
      }),
      1,
      'coverage is printed for one gallon; pails of one gallon are common practice, no source',
    ),
  },
  formula: [String.raw`\text{pails} = \left\lceil \frac{\text{gallons}}{\text{pail}} \right\rceil`],
  work: ({ gallons, pail }) => done(pailsFor(gallons, pail)),
  result: ({ pails }) => pails,
  steps: ({ exactly, pails }, { gallons, pail }) => [
    {
      label: 'Pails',
      sum: `${figure(gallons)} ÷ ${figure(pail)} = ${figure(exactly)}, up to ${sayCount(pails, 'whole pail')}`,
      value: pails,
      unit: 'count',
      source: 'geometry',
    },
  ],
  sources: ['geometry'],
  examples: [
    { says: '2.3 gallons in pails of one gallon', given: { gallons: 2.3 }, gives: 3 },
    { says: 'exactly two', given: { gallons: 2 }, gives: 2 },
  ],
});
