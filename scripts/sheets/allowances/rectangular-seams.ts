import { given, words } from '../cells.ts';
import { type Line, namedLine } from '../form.ts';
import { chosen, length, practice, seam, seamSource, seamTypes } from './lines.ts';

/** What the long locks take. */
export const lockSizes: readonly Line[] = [
  length(
    'pocket',
    'Pocket of the seam',
    1,
    'How much does the pocket, the female half of the seam, take?',
    { ...seam, most: 3 },
    practice,
    { least: 0.5, says: 'a pocket under 1/2 in does not hold its flange (common practice)' },
  ),
  length(
    'flange',
    'Flange of the seam',
    0.25,
    'How much does the flange, the male half of the seam, take?',
    { ...seam, most: 3 },
    'how-to on the lock: 1/4 in',
    { least: 0.125, says: 'a flange under 1/8 in does not stay in its pocket (common practice)' },
  ),
];

/** What the long locks and the drives of rectangular duct take. */
export const rectangularSeamSizes: readonly Line[] = [
  ...lockSizes,
  length(
    'joint_allowance',
    'Drive, at each end',
    0.5,
    'How much is turned back at each end of a rectangular section?',
    seam,
    'trade-school study cards: 1/2 in',
    { least: 0.25, says: 'without metal turned back, a drive has nothing to hold (common practice)' },
  ),
];

/** The locks and joints of rectangular duct. */
export const rectangularLocks: readonly Line[] = [
  chosen(
    'square_seam',
    'Kind of rectangular seam',
    'other lock or weld',
    'Which kind are the long seams of a rectangular duct?',
    seamTypes,
    seamSource,
  ),
  ...rectangularSeamSizes,
];

/** Seams and joints of rectangular duct that a shop always makes one way. */
export const rectangularSeams: readonly Line[] = [
  namedLine(
    'made',
    words('Rectangular duct from'),
    given(
      {
        asks: 'Is a rectangular duct made of one blank or of two halves?',
        choices: ['one piece', 'two L halves'],
        usual: 'two L halves',
      },
      { content: 'two L halves' },
    ),
    words(practice),
  ),
  ...rectangularLocks,
];
