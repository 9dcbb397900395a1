import { feet, given, words } from '../cells.ts';
import { type Line, namedLine } from '../form.ts';
import { allowance, aRoll, chosen, length, memory, practice, thisShop } from './lines.ts';

/** What closes the joints, seams and taps of the metal. */
export const metalSeal: readonly Line[] = [
  chosen(
    'sealed_with',
    'Metal is sealed with',
    'joint tape',
    'What closes the joints, seams and taps of the metal?',
    ['joint tape', 'mastic'],
    thisShop,
  ),
  length(
    'mastic_band',
    'Mastic, band',
    2,
    'How wide is the band of mastic over a joint?',
    { least: 0.5, most: 12, why: 'a band under 1/2 in does not hold, and over a foot is a coating' },
    'sealant sheets: 2 in',
  ),
  allowance(
    'mastic_film',
    'Mastic, wet film',
    {
      asks: 'How thick is the mastic when it is wet? 1/16 in is about 62 mil.',
      least: 5,
      most: 250,
      why: 'thinner does not close a joint, and thicker than 1/4 in runs',
      usual: 32,
    },
    { content: 32, unit: 'mil' },
    'sealant sheets: 20 and 32 mil',
  ),
  allowance(
    'mastic_pail',
    'Mastic in a pail',
    {
      asks: 'How much mastic is in one pail?',
      least: 0.05,
      most: 60,
      why: 'mastic is sold from tubs to drums',
      usual: 1,
    },
    { content: 1, unit: 'gal' },
    practice,
  ),
  namedLine(
    'tape_roll',
    words('Roll of joint tape'),
    given({ asks: 'How long is a roll of tape for metal joints?', ...aRoll }, { content: 180, ...feet }),
    words(`60 yd, ${memory}`),
  ),
];
