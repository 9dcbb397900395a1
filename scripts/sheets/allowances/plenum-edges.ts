import { feet, given, words } from '../cells.ts';
import { type Line, namedLine } from '../form.ts';
import { aBox, counted, length, practice, thisShop } from './lines.ts';

const edge = { least: 0, most: 3, why: 'an edge takes an inch or two' };

/** What a plenum box takes at its edges, and what a flex return takes beside its box. */
export const plenumEdges: readonly Line[] = [
  length(
    'top_edge',
    'Edge above the walls',
    0,
    'What stands above the walls of a plenum for its top?',
    edge,
    practice,
  ),
  length(
    'bottom_edge',
    'Edge below the walls',
    1,
    'What stands below the walls of a plenum, to be turned out on the unit?',
    edge,
    'units differ: look at the collar of yours',
  ),
  length(
    'lid_edge',
    'Edge of the top',
    1,
    'What is turned down on each side of the top, for screws?',
    edge,
    practice,
    { least: 0.5, says: 'under 1/2 in it holds no row of screws (common practice)' },
  ),
];

export const bootSeam: readonly Line[] = [
  length(
    'boot_seam',
    'Seam of a boot',
    1,
    'How much does each seam of a boot take, both edges together?',
    { least: 0, most: 3, why: 'a seam takes an inch or two' },
    practice,
  ),
];

/** Boots and flex of a return. */
export const flexReturns: readonly Line[] = [
  length(
    'boot_height',
    'Height of a boot',
    8,
    'How high is a boot, from its grille to its round end?',
    { least: 2, most: 48, why: 'a lower boot has no room for its collar, and a higher one is a box' },
    thisShop,
  ),
  ...bootSeam,
  counted(
    'flex_ties',
    'Ties at each end of flex',
    2,
    'How many ties hold each end of a flex: one on its core, one on its jacket?',
    { least: 0, most: 6, why: 'more than three pairs are a slip' },
    practice,
    { least: 2, says: 'the core and the jacket each need a tie of their own (common practice)' },
  ),
  counted('tie_bag', 'Ties in a bag', 50, 'How many ties are in a bag?', aBox, thisShop),
  namedLine(
    'flex_box',
    words('Flex in a box'),
    given(
      {
        asks: 'How long is the flex in one box?',
        least: 1,
        most: 200,
        why: 'flex is sold in boxes of 6 to 50 ft',
        usual: 25,
      },
      { content: 25, ...feet },
    ),
    words(practice),
  ),
];
