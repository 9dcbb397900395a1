/** What a piece of duct may measure. */
export const pieceSize = {
  least: 2,
  most: 120,
  why: 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
};

export const sameMark = 'stop: another line has this mark too; give each piece its own';
/** In the same words on every line, so that the Job sheet can count them. */
export const veryShort = 'look: very short for its size; see whether the length was meant in feet';
export const pastTheTable =
  'look: the table of least gauges ends before this duct; the construction standard of the job decides';
