import { check, given, heading, inches } from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { allBlank, firstOf, missing } from '../sentences.ts';
import { pastTheTable, pieceSize, sameMark, veryShort } from '../trunk/piece-check.ts';
import { howLong, howManyCaps, whichGauge } from '../trunk/piece-questions.ts';
import { besidePieces, pieceRows } from '../trunk/piece-rows.ts';
import { ways } from './ways.ts';

export const pieces: Form = form({
  id: 'pieces',
  name: 'Pieces',
  says: 'Measure each piece and fill in a line; what branches off it goes on Taps, and its blanks stand on Blanks.',
  widths: [7, 14, 8, 8, 11, 7, 6, 34],
  lines: [
    line(...['Piece', 'Made from', 'Width', 'Depth', 'Length', 'Gauge', 'Caps', 'Check'].map(heading)),
    ...pieceRows.map(pieceLine),
  ],
  blocks: { piece_widths: besidePieces('C'), piece_depths: besidePieces('D') },
});

/** The first line must be filled in, so that a new job says what it waits for. */
function pieceLine(row: number): Line {
  const open = row === 2 ? {} : { mayBeBlank: true };
  return line(
    given({ asks: 'What mark goes on this piece, such as S1?', ...open }),
    given({
      asks: 'From how many blanks is it made? Blank means as the job says.',
      choices: [...ways],
      mayBeBlank: true,
    }),
    given({ asks: 'How wide is it?', ...pieceSize, ...open }, inches),
    given({ asks: 'How deep is it?', ...pieceSize, ...open }, inches),
    howLong(open),
    whichGauge,
    howManyCaps,
    check(lineCheck(row)),
  );
}

/** The first thing that is amiss: what is missing, then what must not be cut, then what is worth a look. */
function lineCheck(row: number): string {
  const absent = missing([`C${row}=""`, 'width'], [`D${row}=""`, 'depth'], [`E${row}=""`, 'length']);
  const largest = `MAX(C${row},D${row})`;
  const least = `GAUGE.LEAST("rectangular",${largest},static_pressure,,gauge_table)`;
  const sheet = `Blanks!J${row}`;
  const tooLight = `"stop: "&${sheet}&" ga is too light; the "&gauge_table&" asks for "&${least}&" ga at least"`;
  const isChecked = (condition: string) => `IF(gauge_table="not checked",FALSE,${condition})`;
  return firstOf(
    [allBlank(row, ['A', 'B', 'C', 'D', 'E', 'F', 'G']), '""'],
    [`A${row}=""`, '"stop: this line has sizes but no mark; give it one, such as S1"'],
    [`${absent}<>""`, `"stop: still to fill in: "&${absent}`],
    [`COUNTIF(${besidePieces('A')},A${row})>1`, `"${sameMark}"`],
    [isChecked(`IFERROR(${sheet}>${least},FALSE)`), tooLight],
    [`OR(E${row}<12,E${row}<MIN(C${row},D${row}))`, `"${veryShort}"`],
    [isChecked(`ISERROR(${least})`), `"${pastTheTable}"`],
  );
}

/** What every line needs. */
export function unfinished(row: number): string {
  return `OR(${['A', 'C', 'D', 'E'].map((column) => `Pieces!${column}${row}=""`).join(',')})`;
}
