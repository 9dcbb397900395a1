import type { Cell } from '../../../src/workbook/document.ts';
import { check, count, cutInches, figured, gauge, heading, pounds, squareFeet, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line } from '../form.ts';
import { ifFilled } from '../sentences.ts';
import { sheetsToBuy } from '../trunk/gauges.ts';
import { type BlankColumns, besidePieces, pieceRows } from '../trunk/piece-rows.ts';
import { wholeDown, wholeUp } from '../whole.ts';
import { unfinished } from './pieces.ts';

export const blankColumns: BlankColumns = {
  sections: 'C',
  blanks: ['D'],
  gauge: 'G',
  sheets: 'H',
  area: 'I',
  weight: 'J',
  notCounted: 'K',
};

export const blanks: Form = form({
  id: 'blanks',
  name: 'Blanks',
  says: 'Cut these blanks from flat sheet; nothing is to be filled in here.',
  widths: [9, 10, 7, 6, 9, 14, 6, 6, 10, 9, 12],
  lines: [
    line(
      ...[
        'Piece',
        'Blank width',
        'Sections',
        'Blanks',
        'Cut length',
        'Fit',
        'Gauge',
        'Sheets',
        'Area',
        'Weight',
        'Not counted',
      ].map(heading),
    ),
    ...pieceRows.map(blankLine),
    line(
      words('Total'),
      null,
      total('C'),
      total('D'),
      null,
      words('each piece on sheets of its own; a cutting plan may need fewer', { style: { wraps: true } }),
      null,
      total('H'),
      total('I', squareFeet),
      total('J', pounds),
    ),
    emptyLine,
    ...sheetsToBuy(blankColumns),
  ],
  blocks: { piece_marks: besidePieces('A') },
});

/** A line of Pieces that is not finished has no blank, and no other sheet knows of its piece; the last column names it,
 *  so that the order can say what it is without. Sheets are counted for each line by itself, all its blanks laid one
 *  way, so that the count is never short. */
function blankLine(row: number): Line {
  const [shape, width, depth, length] = ['B', 'C', 'D', 'E'].map((column) => `Pieces!${column}${row}`);
  const unless = (formula: string) => ifFilled(`A${row}`, formula);
  const round = `BLANK.ROUND(${width},seam_round,GAUGE.THICKNESS(G${row}),measured)`;
  const rectangular = `BLANK.RECT(${width},${depth},made,1,pocket,flange)`;
  const section = `${length}/C${row}`;
  const roundLength = `BLANK.LENGTH(${section},round_joint,0)`;
  const rectangularLength = `BLANK.LENGTH(${section},joint_allowance,joint_allowance)`;
  const byShape = (ifRound: string, otherwise: string) =>
    unless(`IF(${shape}="round",${ifRound},${otherwise})`);
  const sideBySide = (across: string, along: string) =>
    `${wholeDown(`sheet_width/${across}`)}*${wholeDown(`sheet_length/${along}`)}`;
  const onOneSheet = `MAX(${sideBySide(`B${row}`, `E${row}`)},${sideBySide(`E${row}`, `B${row}`)})`;
  const isCounted = `IFERROR(AND(F${row}="holds",Wrap!E${row}>0,Wrap!E${row}<>""),FALSE)`;
  const called = `IF(Pieces!A${row}="","an unmarked line",Pieces!A${row})`;
  return line(
    figured(`IF(${unfinished(row)},"",Pieces!A${row})`),
    figured(byShape(round, rectangular), cutInches),
    figured(unless(wholeUp(`${length}/section_length`)), count),
    figured(byShape(`C${row}`, `C${row}*IF(made="one piece",1,2)`), count),
    figured(byShape(roundLength, rectangularLength), cutInches),
    check(
      unless(
        `IF(${onOneSheet}>0,"holds","stop: larger than the stock sheet; make more pieces, or shorter sections")`,
      ),
    ),
    figured(unless(`IF(Pieces!F${row}="",job_gauge,Pieces!F${row})`), gauge),
    figured(unless(`IF(F${row}="holds",${wholeUp(`D${row}/${onOneSheet}`)},"")`), count),
    figured(unless(`D${row}*B${row}*E${row}/144`), squareFeet),
    figured(unless(`D${row}*WEIGHT.BLANK(B${row},E${row},G${row})`), pounds),
    figured(ifFilled(`Pieces!H${row}`, `IF(${isCounted},"",${called})`)),
  );
}

function total(column: string, more: Partial<Cell> = count): Cell {
  return figured(`SUM(${besidePieces(column)})`, more);
}
