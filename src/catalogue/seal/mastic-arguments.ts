import { optional, quantity } from '../argument.ts';
import type { Caution } from '../working.ts';

export const masticLength = quantity('in', {
  says: 'the length to seal, all together, in inches',
  least: 0,
  most: 1_200_000,
  why: 'more than 100,000 ft of joint in one job is most likely a slip of the unit',
});

export const masticWaste = optional(
  quantity('percent', {
    says: 'the share added for what stays in the pail and on the brush; 10 % is 0.1',
    least: 0,
    most: 1,
    why: 'more than as much again would be a slip; 10 % is written 0.1',
  }),
  0.1,
  'a tenth is common practice, no source',
);

/** Whoever brushes or guns sealant on. */
export const filmCautions: readonly Caution[] = [
  {
    level: 'care',
    sentence:
      'Use what carries the closure mark for the duct: 181B-M mastic on metal and flex, 181A-M on duct board, by the code of 2018. Your local code and edition decide.',
    source: 'irc-2018-closures',
  },
  {
    level: 'care',
    sentence: 'Water-based mastic must not freeze or be rained on before it has dried.',
    source: 'mastic-instructions',
  },
  {
    level: 'care',
    sentence:
      'Wait as long as the data sheet says, 16 to 48 h and more in the cold, before you test the duct under pressure.',
    source: 'mastic-sheets',
  },
  {
    level: 'care',
    sentence: 'Gaps over 1/4 in need mesh under the mastic.',
    source: 'mastic-by-eye',
  },
  {
    level: 'care',
    sentence:
      'Read the data sheet of a sealant first and air the space; keep flames and sparks away from solvent ones.',
    source: 'safety-from-memory',
  },
];
