import { check, given, heading, inches } from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { allBlank, firstOf, missing } from '../sentences.ts';
import { pastTheTable, pieceSize, sameMark, veryShort } from '../trunk/piece-check.ts';
import { howLong, howManyCaps, whichGauge } from '../trunk/piece-questions.ts';
import { besidePieces, pieceRows } from '../trunk/piece-rows.ts';

export const pieces: Form = form({
  id: 'pieces',
  name: 'Pieces',
  says: 'Measure each piece and fill in a line; what branches off it goes on Taps, and its blanks stand on Blanks.',
  widths: [6, 10, 6, 6, 9, 6, 5, 20],
  lines: [
    line(...['Piece', 'Shape', 'Width', 'Depth', 'Length', 'Gauge', 'Caps', 'Check'].map(heading)),
    ...pieceRows.map(pieceLine),
  ],
  blocks: {
    piece_shapes: besidePieces('B'),
    piece_widths: besidePieces('C'),
    piece_depths: besidePieces('D'),
  },
});

/** The first line must be filled in, so that a new job says what it waits for. */
function pieceLine(row: number): Line {
  const open = row === 2 ? {} : { mayBeBlank: true };
  return line(
    given({ asks: 'What mark goes on this piece, such as S1?', ...open }),
    given({
      asks: 'Is it round or rectangular?',
      choices: ['round', 'rectangular'],
      usual: 'round',
      ...open,
    }),
    given(
      { asks: 'What is its diameter, or its width if it is rectangular?', ...pieceSize, ...open },
      inches,
    ),
    given(
      { asks: 'What is its depth? Leave it blank for a round piece.', ...pieceSize, mayBeBlank: true },
      inches,
    ),
    howLong(open),
    whichGauge,
    howManyCaps,
    check(lineCheck(row)),
  );
}

/** The first thing that is amiss: what is missing, then what must not be cut, then what is worth a look. */
function lineCheck(row: number): string {
  const absent = missing(
    [`B${row}=""`, 'shape'],
    [`C${row}=""`, 'width'],
    [`AND(B${row}="rectangular",D${row}="")`, 'depth'],
    [`E${row}=""`, 'length'],
  );
  const largest = `IF(B${row}="round",C${row},MAX(C${row},D${row}))`;
  const least = `GAUGE.LEAST(B${row},${largest},static_pressure,,gauge_table)`;
  const sheet = `Blanks!G${row}`;
  const tooLight = `"stop: "&${sheet}&" ga is too light; the "&gauge_table&" asks for "&${least}&" ga at least"`;
  return firstOf(
    [allBlank(row, ['A', 'B', 'C', 'D', 'E', 'F', 'G']), '""'],
    [`A${row}=""`, '"stop: this line has sizes but no mark; give it one, such as S1"'],
    [`${absent}<>""`, `"stop: still to fill in: "&${absent}`],
    [`COUNTIF(${besidePieces('A')},A${row})>1`, `"${sameMark}"`],
    [`IF(gauge_table="not checked",FALSE,IFERROR(${sheet}>${least},FALSE))`, tooLight],
    [`OR(E${row}<12,E${row}<C${row})`, `"${veryShort}"`],
    [`IF(gauge_table="not checked",FALSE,ISERROR(${least}))`, `"${pastTheTable}"`],
  );
}

/** What every line needs, and what a rectangular one needs besides. */
export function unfinished(row: number): string {
  const always = ['A', 'B', 'C', 'E'].map((column) => `Pieces!${column}${row}=""`).join(',');
  return `OR(${always},AND(Pieces!B${row}="rectangular",Pieces!D${row}=""))`;
}
