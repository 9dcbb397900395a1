import { check, count, cutInches, exactInches, figured, given, heading, resistance } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line } from '../form.ts';
import { blanks, ifPiece, measured, rowsFrom } from './piece-rows.ts';

const order = rowsFrom(12);

/** Without figures of its own, so that the Job sheet can count it. */
export const lessByGeometry =
  'look: by geometry, less R is left than is needed; a longer cut squeezes the wrap less';

export const wrap: Form = form({
  id: 'wrap',
  name: 'Wrap',
  says: 'Cut each wrap at the length under “Cut at”; nothing is to be filled in unless a piece gets another wrap.',
  widths: [8, 8, 8, 7, 5, 6, 5, 10, 8],
  lines: [
    line(
      ...['Piece', 'Wrap', 'Stretch-out', 'Cut at', 'Pieces', 'Left on', 'R left', 'Check', 'Other wrap'].map(
        heading,
      ),
    ),
    ...measured.map((row, index) => pieceLine(row, blanks[index] ?? 0)),
    emptyLine,
    line(...['To buy', 'Rolls', 'Pieces'].map(heading)),
    ...order.map((row, index) => orderLine(row, measured[index] ?? 0)),
  ],
  blocks: { wrap_used: 'B2:B9', wrap_cuts: 'D2:D9', wrap_pieces: 'E2:E9' },
});

function pieceLine(row: number, blankRow: number): Line {
  const unless = (formula: string) => ifPiece(`A${row}`, formula);
  const duct = `Pieces!B${row},Pieces!C${row},Pieces!D${row}`;
  const left = `${duct},D${row},B${row},wraps,lap,corners`;
  const rated = `INDEX(wrap_ratings,MATCH(B${row},wrap_names,0))`;
  return line(
    figured(`Pieces!A${blankRow}`),
    figured(unless(`IF(I${row}="",job_wrap,I${row})`)),
    figured(unless(`WRAP.STRETCHOUT(${duct},B${row},wraps,wrap_method,lap,corners)`), exactInches),
    figured(unless(`TAPE.ROUND(C${row},fraction,"up")`), cutInches),
    figured(unless(`WRAP.PIECES(Pieces!E${row},B${row},wraps,wrap_flange)`), count),
    figured(unless(`WRAP.THICKNESS(${left})`), exactInches),
    figured(unless(`WRAP.RLEFT(${left})`), resistance),
    check(
      unless(
        `IF(${rated}<needed_r,"stop: this wrap is rated R "&ROUND(${rated},1)&" installed, and R "&ROUND(needed_r,1)&" is needed",` +
          `IF(ROUND(G${row},1)<needed_r,"${lessByGeometry}","holds"))`,
      ),
    ),
    given({
      asks: 'Does this piece get another wrap than the job? Type its name from the wraps on Allowances.',
      mayBeBlank: true,
    }),
  );
}

/** One line to each line of the table of wraps. */
function orderLine(row: number, wrapRow: number): Line {
  const used = `COUNTIF(wrap_used,A${row})`;
  const unless = (formula: string) => `IF(OR(A${row}="",${used}=0),"",${formula})`;
  return line(
    figured(`IF(Allowances!A${wrapRow}="","",Allowances!A${wrapRow})`),
    figured(unless(`WRAP.ROLLS(wrap_cuts,wrap_pieces,A${row},wraps,wrap_waste,wrap_used)`), count),
    figured(unless(`SUMIF(wrap_used,A${row},wrap_pieces)`), count),
  );
}
