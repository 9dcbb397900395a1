import { given, words } from '../cells.ts';
import { type Line, namedLine } from '../form.ts';
import { chosen, length, practice, seam, seamSource, seamTypes } from './lines.ts';

/** The long seam of a round pipe. */
export const roundSeam: readonly Line[] = [
  length(
    'seam_round',
    'Seam of a round pipe',
    1,
    'How much does the lengthwise seam take in all, both edges together?',
    seam,
    'textbook of 1921: grooved, 1 in',
    { least: 0.25, says: 'without metal for it, a seam can only be butt-welded' },
  ),
];

/** Seams and joints of round pipe. */
export const roundSeams: readonly Line[] = [
  ...roundSeam,
  namedLine(
    'measured',
    words('Diameter is measured'),
    given(
      {
        asks: 'Where is the diameter of a pipe measured?',
        choices: ['inside', 'outside', 'ignored'],
        usual: 'inside',
      },
      { content: 'inside' },
    ),
    words(practice),
  ),
  chosen(
    'round_seam',
    'Kind of round seam',
    'other lock or weld',
    'Which kind is the long seam of a round pipe?',
    seamTypes,
    seamSource,
  ),
  length(
    'round_joint',
    'Crimp of a round pipe',
    1.5,
    'How much does the crimped end of each section take?',
    seam,
    'older code, quoted: 1 1/2 in',
    { least: 1, says: 'a joint that laps under 1 in holds few screws (common practice)' },
  ),
];
