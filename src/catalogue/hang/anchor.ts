import { done } from '../../base/outcome.ts';
import { attachmentFor, attachmentShare } from '../../trade/hang/load.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import { attachment, codeDecides } from './cautions.ts';
import { loadArgument } from './strap.ts';

/** Failure load that an upper attachment must have. Pounds. Source: duct standard of 2005, 4.1. */
export const hangAnchor = defineFunction({
  name: 'HANG.ANCHOR',
  says: 'The failure load that the fastening of a strap or rod to the structure must have.',
  words: ['anchor load', 'upper attachment', 'fastener strength', 'beam clamp', 'safety factor', 'pull out'],
  gives: { label: 'Failure load', unit: 'lb' },
  arguments: {
    load: loadArgument,
    share: optional(
      quantity('percent', {
        says: 'the share of its failure load that the attachment may carry: a quarter is 0.25',
        least: 0.05,
        most: 1,
        why: 'nothing may carry more than the load that breaks it',
      }),
      attachmentShare,
      'a quarter, by the duct standard of 2005, 4.1, in a third-party copy',
    ),
  },
  formula: [String.raw`\text{failure load} = \frac{\text{load}}{\text{share}}`],
  work: ({ load, share }) => done({ failure: attachmentFor(load, share) }),
  result: ({ failure }) => failure,
  steps: ({ failure }, { load, share }) => [
    {
      label: 'Failure load',
      sum: `${figure(load, 4)} ÷ ${figure(share, 4)}`,
      value: failure,
      unit: 'lb',
      source: 'duct-standard-2005',
    },
  ],
  cautions: (_, { share }) => [
    codeDecides,
    attachment,
    ...(share > attachmentShare
      ? [
          {
            level: 'look',
            sentence: 'A larger share than a quarter is more than the duct standard allows.',
            source: 'duct-standard-2005',
          } as const,
        ]
      : []),
  ],
  sources: ['duct-standard-2005'],
  examples: [{ says: 'a strap with 50 lb', given: { load: 50 }, gives: 200, source: 'duct-standard-2005' }],
});
