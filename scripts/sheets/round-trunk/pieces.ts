import type { Cell } from '../../../src/workbook/document.ts';
import {
  check,
  count,
  cutInches,
  feetAndInches,
  figured,
  gauge,
  given,
  heading,
  inches,
  pounds,
  squareFeet,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, type Line, line } from '../form.ts';
import { blanks, ifPiece, measured } from './piece-rows.ts';

const size = {
  least: 2,
  most: 120,
  why: 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
};

/** In the same words on every line, so that the Job sheet can count it. */
export const notFinished = 'stop: this line is not finished; fill in piece, shape, sizes and length';

export const pieces: Form = form({
  id: 'pieces',
  name: 'Pieces',
  says: 'Measure each piece and fill in a line; the blanks to cut stand underneath.',
  widths: [6, 10, 6, 6, 9, 9, 7, 7, 6],
  lines: [
    line(...['Piece', 'Shape', 'Width', 'Depth', 'Length', 'Gauge', 'Taps', 'Tap size'].map(heading)),
    ...measured.map(measuredLine),
    emptyLine,
    line(
      ...['Piece', 'Blank width', 'Sections', 'Blanks', 'Cut length', 'Area', 'Weight', 'Sheets', 'Fit'].map(
        heading,
      ),
    ),
    ...measured.map((row, index) => blankLine(row, blanks[index] ?? 0)),
    line(
      words('Total'),
      null,
      total('C'),
      total('D'),
      null,
      total('F', squareFeet),
      total('G', pounds),
      total('H'),
    ),
  ],
});

/** The first line must be filled in, so that a new job says what it waits for. */
function measuredLine(row: number): Line {
  const open = row === 2 ? {} : { mayBeBlank: true };
  return line(
    given({ asks: 'What mark goes on this piece, such as S1?', ...open }),
    given({
      asks: 'Is it round or rectangular?',
      choices: ['round', 'rectangular'],
      usual: 'round',
      ...open,
    }),
    given({ asks: 'What is its diameter, or its width if it is rectangular?', ...size, ...open }, inches),
    given(
      { asks: 'What is its depth? Leave it blank for a round piece.', ...size, mayBeBlank: true },
      inches,
    ),
    given(
      {
        asks: 'How long is the straight run, joint to joint?',
        least: 1,
        most: 1200,
        why: 'a run under 1 in or over 100 ft is most likely a slip of the unit',
        ...open,
      },
      feetAndInches,
    ),
    given(
      {
        asks: 'What gauge is it? Blank means the gauge of the job.',
        least: 14,
        most: 30,
        why: 'duct is made of 14 to 30 ga sheet',
        mayBeBlank: true,
      },
      gauge,
    ),
    given(
      {
        asks: 'How many round branches leave this piece?',
        least: 0,
        most: 40,
        why: 'more than 40 taps on one piece is most likely a slip',
        usual: 0,
        mayBeBlank: true,
      },
      count,
    ),
    given(
      {
        asks: 'What is the diameter of these branches? Give another size its own line.',
        least: 2,
        most: 60,
        why: 'branches under 2 in or over 5 ft are not shop duct',
        mayBeBlank: true,
      },
      inches,
    ),
  );
}

/** A line that is not finished has no blank, and no other sheet knows of its piece. Sheets are counted for each line by itself, all its blanks laid one way, so that the count is never short. */
function blankLine(from: number, row: number): Line {
  const unless = (formula: string) => ifPiece(`A${row}`, formula);
  const sheet = `IF(F${from}="",job_gauge,F${from})`;
  const round = `BLANK.ROUND(C${from},seam_round,GAUGE.THICKNESS(${sheet}),measured)`;
  const rectangular = `BLANK.RECT(C${from},D${from},made,1,pocket,flange)`;
  const section = `E${from}/C${row}`;
  const roundLength = `BLANK.LENGTH(${section},round_joint,0)`;
  const rectangularLength = `BLANK.LENGTH(${section},joint_allowance,joint_allowance)`;
  const byShape = (ifRound: string, otherwise: string) =>
    unless(`IF(B${from}="round",${ifRound},${otherwise})`);
  const sideBySide = (across: string, along: string) =>
    `INT(sheet_width/${across})*INT(sheet_length/${along})`;
  const onOneSheet = `MAX(${sideBySide(`B${row}`, `E${row}`)},${sideBySide(`E${row}`, `B${row}`)})`;
  return line(
    figured(`IF(${unfinished(from)},"",A${from})`),
    figured(byShape(round, rectangular), cutInches),
    figured(unless(`ROUNDUP(E${from}/section_length,0)`), count),
    figured(byShape(`C${row}`, `C${row}*IF(made="one piece",1,2)`), count),
    figured(byShape(roundLength, rectangularLength), cutInches),
    figured(unless(`D${row}*B${row}*E${row}/144`), squareFeet),
    figured(unless(`D${row}*WEIGHT.BLANK(B${row},E${row},${sheet})`), pounds),
    figured(unless(`IF(I${row}="holds",ROUNDUP(D${row}/${onOneSheet},0),"")`), count),
    check(
      `IF(A${row}="",IF(${untouched(from)},"","${notFinished}"),` +
        `IF(${onOneSheet}>0,"holds","stop: larger than the stock sheet; make more pieces, or shorter sections"))`,
    ),
  );
}

/** What every line needs, what a rectangular one needs besides, and what taps need. */
function unfinished(row: number): string {
  const always = ['A', 'B', 'C', 'E'].map((column) => `${column}${row}=""`).join(',');
  return `OR(${always},AND(B${row}="rectangular",D${row}=""),AND(G${row}>0,H${row}=""))`;
}

function untouched(row: number): string {
  return `AND(${['A', 'B', 'C', 'D', 'E'].map((column) => `${column}${row}=""`).join(',')})`;
}

function total(column: string, more: Partial<Cell> = count): Cell {
  return figured(`SUM(${column}12:${column}19)`, more);
}
