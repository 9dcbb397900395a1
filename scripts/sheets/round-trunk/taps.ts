import { check, count, figured, given, heading, inches, wholeFeet, words } from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { allBlank, firstOf, ifFilled, missing } from '../sentences.ts';
import { besidePieces, pieceRows } from '../trunk/piece-rows.ts';

export const taps: Form = form({
  id: 'taps',
  name: 'Taps',
  says: 'Fill in a line for each size of round branch that leaves a piece; a trunk with two sizes has two lines.',
  widths: [6, 8, 8, 14, 6, 8, 7, 8, 13],
  lines: [
    line(
      ...['Piece', 'Tap size', 'How many', 'Fit', 'Trunk', 'To seal', 'Screws', 'Facing', 'Not counted'].map(
        heading,
      ),
    ),
    ...pieceRows.map(tapLine),
    line(
      words('Total'),
      null,
      figured(`SUM(${besidePieces('C')})`, count),
      null,
      null,
      figured(`SUM(${besidePieces('F')})`, wholeFeet),
      figured(`SUM(${besidePieces('G')})`, count),
      figured(`SUM(${besidePieces('H')})`, wholeFeet),
    ),
  ],
  blocks: {
    tapped: besidePieces('A'),
    tap_seams: besidePieces('F'),
    tap_screws: besidePieces('G'),
    tap_facing: besidePieces('H'),
  },
});

/** The trunk stands blank, and with it every figure, until the line and its piece are whole; while the piece is not,
 *  its own line says so. */
function tapLine(row: number): Line {
  const place = `MATCH(A${row},piece_marks,0)`;
  const of = (column: string) => `INDEX(${column},${place})`;
  const isRound = `${of('piece_shapes')}="round"`;
  const largestSide = `MAX(${of('piece_widths')},${of('piece_depths')})`;
  const trunk = `IF(${isRound},${of('piece_widths')},${largestSide})`;
  const absent = missing([`A${row}=""`, 'piece'], [`B${row}=""`, 'tap size'], [`C${row}=""`, 'how many']);
  const fits = (formula: string) => ifFilled(`E${row}`, `IF(B${row}>E${row},"",${formula})`);
  const seal = (on: string) => `SEAL.TAP("round",B${row},,${on},C${row})`;
  const outside = `WRAP.OUTSIDE("round",B${row},,${of('wrap_used')},wraps)`;
  return line(
    given({ asks: 'Which piece do they leave? Type its mark from Pieces.', mayBeBlank: true }),
    given(
      {
        asks: 'What is the diameter of these branches?',
        least: 2,
        most: 60,
        why: 'branches under 2 in or over 5 ft are not shop duct',
        mayBeBlank: true,
      },
      inches,
    ),
    given(
      {
        asks: 'How many branches of this size leave the piece?',
        least: 1,
        most: 40,
        why: 'more than 40 taps on one piece is most likely a slip',
        mayBeBlank: true,
      },
      count,
    ),
    check(
      firstOf(
        [allBlank(row, ['A', 'B', 'C']), '""'],
        [`${absent}<>""`, `"stop: still to fill in: "&${absent}`],
        [`COUNTIF(Pieces!${besidePieces('A')},A${row})=0`, '"stop: no piece on Pieces has this mark"'],
        [`E${row}=""`, '""'],
        [
          `B${row}>E${row}`,
          `"stop: the tap is wider than "&IF(${isRound},"its trunk","the widest side of its trunk")`,
        ],
        [
          `AND(NOT(${isRound}),B${row}>MIN(${of('piece_widths')},${of('piece_depths')}))`,
          '"look: only the wider sides of its trunk have room for it"',
        ],
      ),
    ),
    figured(`IF(OR(${absent}<>"",ISERROR(${place})),"",${trunk})`, inches),
    figured(fits(`IF(${isRound},${seal(`E${row}`)},${seal('')})`), wholeFeet),
    figured(fits(`SEAL.SCREWS("round",B${row},,tap_screw_spacing,tap_joints*C${row})`), count),
    figured(fits(`IF(${of('wrap_cuts')}="","",tap_rings*C${row}*PI()*${outside})`), wholeFeet),
    figured(
      ifFilled(`D${row}`, `IF(COUNT(F${row})=1,"",IF(A${row}="","taps without a piece","taps of "&A${row}))`),
    ),
  );
}
