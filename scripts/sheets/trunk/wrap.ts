import { wrapCount } from '../allowances/wraps.ts';
import { check, count, cutInches, exactInches, figured, given, heading, resistance } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line } from '../form.ts';
import { ifFilled, rowsFrom } from '../sentences.ts';
import { besidePieces, pieceRows, type ShapeOf, totalRow } from './piece-rows.ts';

/** One line to each line of the table of wraps. */
export const wrapOrderRows = rowsFrom(totalRow + 2, wrapCount);

/** Without figures of their own, so that the Job sheet can count them. */
export const lessByGeometry =
  'look: by geometry, less R is left than is needed; a longer cut squeezes the wrap less';
export const byGeometryInstead =
  'look: the way chosen on Job has no figure for this wrap, so it is worked out by geometry';

const squeezed =
  'stop: cut this way, less than half of the thickness is left, and no R is published for that; cut it by geometry';

/** The wrap of each piece of Pieces; `shapeOf` writes its shape. */
export function wrapSheet(shapeOf: ShapeOf): Form {
  return form({
    id: 'wrap',
    name: 'Wrap',
    says: 'Cut each wrap at the length under “Cut at”; nothing is to be filled in unless a piece gets another wrap.',
    widths: [7, 8, 10, 9, 6, 22, 6, 8, 11, 12],
    lines: [
      line(
        ...[
          'Piece',
          'Wrap',
          'Stretch-out',
          'Cut at',
          'Pieces',
          'Check',
          'R left',
          'Left on',
          'Other wrap',
          'Worked out by',
        ].map(heading),
      ),
      ...pieceRows.map((row) => pieceLine(row, shapeOf)),
      emptyLine,
      line(...['To buy', 'Rolls', 'Pieces'].map(heading)),
      ...wrapOrderRows.map((row, index) => orderLine(row, index + 2)),
    ],
    blocks: {
      wrap_used: besidePieces('B'),
      wrap_cuts: besidePieces('D'),
      wrap_pieces: besidePieces('E'),
    },
  });
}

/** A wrap that is not finished on Allowances stops its piece once, at the check. */
function pieceLine(row: number, shapeOf: ShapeOf): Line {
  const ofWrap = (column: string) => `INDEX(${column},MATCH(B${row},wrap_names,0))`;
  const isReady = `IFERROR(${ofWrap('wrap_lines')}="holds",FALSE)`;
  const unless = (formula: string) => ifFilled(`A${row}`, formula);
  const worked = (formula: string) => ifFilled(`J${row}`, formula);
  const duct = `${shapeOf(row)},Pieces!C${row},Pieces!D${row}`;
  const stretchOut = (method: string) => `WRAP.STRETCHOUT(${duct},B${row},wraps,${method},lap,corners)`;
  const left = `${duct},D${row},B${row},wraps,lap,corners`;
  const rated = ofWrap('wrap_ratings');
  const tooLow = `"stop: this wrap is rated R "&ROUND(${rated},2)&" installed, and R "&ROUND(needed_r,2)&" is needed"`;
  return line(
    figured(`Blanks!A${row}`),
    figured(unless(`IF(I${row}="",job_wrap,I${row})`)),
    figured(worked(stretchOut(`J${row}`)), exactInches),
    figured(worked(`TAPE.ROUND(C${row},fraction,"up")`), cutInches),
    figured(worked(`WRAP.PIECES(Pieces!E${row},B${row},wraps,wrap_flange)`), count),
    check(
      unless(
        `IF(J${row}="","stop: no wrap of this name is finished on Allowances; choose another, or finish its line",` +
          `IF(${rated}<needed_r,${tooLow},IF(G${row}="","${squeezed}",IF(G${row}<needed_r-r_short,"${lessByGeometry}",` +
          `IF(J${row}<>wrap_method,"${byGeometryInstead}","holds")))))`,
      ),
    ),
    figured(worked(`IFERROR(WRAP.RLEFT(${left}),"")`), resistance),
    figured(worked(`IFERROR(WRAP.THICKNESS(${left}),"")`), exactInches),
    given({
      asks: 'Does this piece get another wrap than the job? Type its name from the wraps on Allowances.',
      mayBeBlank: true,
    }),
    figured(unless(`IF(${isReady},IF(ISERROR(${stretchOut('wrap_method')}),"geometry",wrap_method),"")`)),
  );
}

function orderLine(row: number, wrapRow: number): Line {
  const used = `COUNTIF(wrap_used,A${row})`;
  const isReady = `Allowances!D${wrapRow}="holds"`;
  const unless = (formula: string) => `IF(OR(A${row}="",${used}=0),"",IF(${isReady},${formula},""))`;
  return line(
    figured(`IF(Allowances!A${wrapRow}="","",Allowances!A${wrapRow})`),
    figured(unless(`WRAP.ROLLS(wrap_cuts,wrap_pieces,A${row},wraps,wrap_waste,wrap_used)`), count),
    figured(unless(`SUMIF(wrap_used,A${row},wrap_pieces)`), count),
  );
}
