import { check, count, cutInches, figured, given, heading, inches, wholeFeet, words } from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { allBlank, firstOf, ifFilled, missing } from '../sentences.ts';
import { besidePieces, pieceRows } from '../trunk/piece-rows.ts';

const size = {
  least: 2,
  most: 60,
  why: 'branches under 2 in or over 5 ft are not shop duct',
  mayBeBlank: true,
};

export const taps: Form = form({
  id: 'taps',
  name: 'Taps',
  says: 'Fill in a line for each size of branch on each side of a piece; cut its hole by the sizes at the right.',
  widths: [6, 12, 7, 7, 6, 12, 18, 7, 10, 10, 10, 10, 8, 9, 9, 14, 8, 13],
  lines: [
    line(
      ...[
        'Piece',
        'Tap shape',
        'Size',
        'Across',
        'Many',
        'On side',
        'Fit',
        'Side is',
        'Hole along',
        'Hole across',
        'Wrap along',
        'Wrap across',
        'Screws',
        'To seal',
        'Facing',
        'Not counted',
        'In a row',
        'Counted on',
      ].map(heading),
    ),
    ...pieceRows.map(tapLine),
    line(
      words('Total'),
      null,
      null,
      null,
      figured(`SUM(${besidePieces('E')})`, count),
      ...Array.from({ length: 7 }, () => null),
      figured(`SUM(${besidePieces('M')})`, count),
      figured(`SUM(${besidePieces('N')})`, wholeFeet),
      figured(`SUM(${besidePieces('O')})`, wholeFeet),
    ),
  ],
  blocks: {
    tapped: besidePieces('A'),
    tap_screws: besidePieces('M'),
    tap_seams: besidePieces('N'),
    tap_facing: besidePieces('O'),
    tap_runs: besidePieces('Q'),
    tap_sides: besidePieces('R'),
  },
});

/** The side stands blank, and with it every figure, until the line and its piece are whole; while the piece is not, its
 *  own line says so. All taps on one side of a piece must find room along it. */
function tapLine(row: number): Line {
  const place = `MATCH(A${row},piece_marks,0)`;
  const of = (column: string) => `INDEX(${column},${place})`;
  const isNarrow = `OR(F${row}="narrow side",F${row}="other narrow")`;
  const [width, depth] = [of('piece_widths'), of('piece_depths')];
  const side = `IF(${isNarrow},MIN(${width},${depth}),MAX(${width},${depth}))`;
  const isRound = `B${row}="round"`;
  const across = `IF(${isRound},C${row},D${row})`;
  const absent = missing(
    [`A${row}=""`, 'piece'],
    [`B${row}=""`, 'tap shape'],
    [`C${row}=""`, 'size along'],
    [`AND(B${row}="rectangular",D${row}="")`, 'size across'],
    [`E${row}=""`, 'how many'],
  );
  const fits = (formula: string) => ifFilled(`H${row}`, `IF(LEFT(G${row},4)="stop","",${formula})`);
  const oneOf = (ifRound: string, otherwise: string) => `IF(${isRound},${ifRound},${otherwise})`;
  const onTap = (name: string, ...more: readonly string[]) =>
    oneOf(
      `${name}("round",${[`C${row}`, '', ...more].join(',')})`,
      `${name}("rectangular",${[`C${row}`, `D${row}`, ...more].join(',')})`,
    );
  const wrapIsCut = `${of('wrap_cuts')}<>""`;
  const thisWrap = [of('wrap_used'), 'wraps'];
  const inWrap = (which: string) =>
    fits(`IF(${wrapIsCut},${onTap('WRAP.CUTOUT', ...thisWrap, '', which, 'wrap_ease')},"")`);
  const outside = onTap('WRAP.OUTSIDE', ...thisWrap);
  const ring = `${oneOf(`PI()*C${row}`, `2*(C${row}+D${row})`)}+PI()*(${outside}-C${row})`;
  const run = `SUMIFS(tap_runs,tapped,A${row},tap_sides,R${row})`;
  const length = of(`Pieces!${besidePieces('E')}`);
  return line(
    given({ asks: 'Which piece do they leave? Type its mark from Pieces.', mayBeBlank: true }),
    given({
      asks: 'Are these branches round or rectangular?',
      choices: ['round', 'rectangular'],
      usual: 'round',
      mayBeBlank: true,
    }),
    given({ asks: 'What is their diameter, or their size along the trunk if rectangular?', ...size }, inches),
    given({ asks: 'How large is a rectangular branch across the trunk? Blank if round.', ...size }, inches),
    given(
      {
        asks: 'How many branches of this size leave this side?',
        least: 1,
        most: 40,
        why: 'more than 40 taps on one side is most likely a slip',
        mayBeBlank: true,
      },
      count,
    ),
    given({
      asks: 'Which side of the trunk do they leave? Blank means a wide side.',
      choices: ['wide side', 'narrow side', 'other wide', 'other narrow'],
      usual: 'wide side',
      mayBeBlank: true,
    }),
    check(
      firstOf(
        [allBlank(row, ['A', 'B', 'C', 'D', 'E', 'F']), '""'],
        [`${absent}<>""`, `"stop: still to fill in: "&${absent}`],
        [`COUNTIF(Pieces!${besidePieces('A')},A${row})=0`, '"stop: no piece on Pieces has this mark"'],
        [`H${row}=""`, '""'],
        [`${across}>H${row}`, '"stop: the tap is wider than the side of its trunk"'],
        [`${run}>${length}`, '"stop: the taps on this side are together longer than the piece"'],
        [`AND(${isRound},D${row}<>"")`, '"look: a round tap has one size; the size across is not used"'],
        [
          `${across}+2*tap_edge>H${row}`,
          '"look: less metal stays beside the tap than Allowances says; a boot or a wider trunk gives it room"',
        ],
      ),
    ),
    figured(`IF(OR(${absent}<>"",ISERROR(${place})),"",${side})`, inches),
    figured(fits(`C${row}+hole_ease`), cutInches),
    figured(fits(`${across}+hole_ease`), cutInches),
    figured(inWrap('"along"'), cutInches),
    figured(inWrap('"around"'), cutInches),
    figured(fits(onTap('SEAL.SCREWS', 'tap_screw_spacing', `tap_joints*E${row}`)), count),
    figured(fits(onTap('SEAL.TAP', '', `E${row}`)), wholeFeet),
    figured(fits(`IF(${wrapIsCut},tap_rings*E${row}*(${ring}),"")`), wholeFeet),
    figured(
      ifFilled(`G${row}`, `IF(COUNT(N${row})=1,"",IF(A${row}="","taps without a piece","taps of "&A${row}))`),
    ),
    figured(ifFilled(`H${row}`, `E${row}*C${row}`), inches),
    figured(ifFilled(`H${row}`, `IF(F${row}="","wide side",F${row})`)),
  );
}
