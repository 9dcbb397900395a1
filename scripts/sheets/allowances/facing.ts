import { feet, given, words } from '../cells.ts';
import { type Line, namedLine } from '../form.ts';
import { aRoll, counted, memory, percent, practice, thisShop } from './lines.ts';

/** What is added to every tape and to mastic. */
export const tapeWaste: readonly Line[] = [percent('tape_waste', 'Laps and waste of tape', 0.1, practice)];

/** Tape for the facing of the wrap; the waste is that of every tape and of mastic. */
export const facingTape: readonly Line[] = [
  namedLine(
    'facing_roll',
    words('Roll of facing tape'),
    given({ asks: 'How long is a roll of tape for the facing?', ...aRoll }, { content: 150, ...feet }),
    words(`50 yd, ${memory}`),
  ),
  ...tapeWaste,
  counted(
    'facing_ends',
    'Closed ends of the facing',
    1,
    'How many ends of each piece get a ring of facing tape of their own?',
    { least: 0, most: 2, why: 'a piece has two ends' },
    thisShop,
  ),
];
