import { cornerRules } from '../../../src/trade/wrap/geometry.ts';
import { given, words } from '../cells.ts';
import { type Line, namedLine } from '../form.ts';
import { allowance, length, percent, practice } from './lines.ts';

/** Wrap: lap, corners, flange in the roll, and what R may be missing. */
export const wrapping: readonly Line[] = [
  length(
    'lap',
    'Lap of the wrap',
    2,
    'What does the facing lap over itself at the long seam?',
    { least: 0, most: 12, why: 'a lap takes a few inches of wrap' },
    'published stretch-out tables: 2 in',
    { least: 1, says: 'a lap under 1 in cannot be stapled (common practice)' },
  ),
  namedLine(
    'corners',
    words('Wrap at the corners'),
    given(
      {
        asks: 'How is wrap thought to go round the corners of a rectangular duct?',
        choices: [...cornerRules],
        usual: 'bent',
      },
      { content: 'bent' },
    ),
    words('geometry; rule of this shop'),
  ),
  length(
    'wrap_flange',
    'Flange within the roll',
    0,
    'How much of the roll width lies over the next piece and covers nothing of its own?',
    { least: 0, most: 12, why: 'a flange is a few inches wide' },
    'data sheet, inferred: none',
  ),
  allowance(
    'r_short',
    'R that may be missing',
    {
      asks: 'How far may the R that is left lie under the R that is needed? 0 for not at all.',
      least: 0,
      most: 1,
      why: 'more than 1 is another wrap',
      usual: 0,
    },
    { content: 0, unit: 'r', format: { type: 'decimal', places: 2 } },
    'rule of this shop: nothing',
  ),
  percent('wrap_waste', 'Waste of wrap', 0.05, practice),
];
