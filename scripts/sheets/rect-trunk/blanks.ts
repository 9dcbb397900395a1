import type { Cell } from '../../../src/workbook/document.ts';
import { check, count, cutInches, figured, gauge, heading, pounds, squareFeet, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line } from '../form.ts';
import { ifFilled } from '../sentences.ts';
import { sheetsToBuy } from '../trunk/gauges.ts';
import { type BlankColumns, besidePieces, pieceRows } from '../trunk/piece-rows.ts';
import { wholeDown, wholeUp } from '../whole.ts';
import { unfinished } from './pieces.ts';
import { fewest } from './ways.ts';

export const blankColumns: BlankColumns = {
  sections: 'I',
  blanks: ['D', 'F'],
  gauge: 'J',
  sheets: 'K',
  area: 'L',
  weight: 'M',
  notCounted: 'O',
};

export const blanks: Form = form({
  id: 'blanks',
  name: 'Blanks',
  says: 'Cut the first and the second blanks of each piece from flat sheet; nothing is to be filled in here.',
  widths: [12, 12, 9, 7, 9, 7, 10, 12, 9, 7, 7, 10, 9, 27, 12],
  lines: [
    line(
      ...[
        'Piece',
        'Made from',
        'First blank',
        'Of them',
        'Second',
        'Of them',
        'Cut length',
        'Fit',
        'Sections',
        'Gauge',
        'Sheets',
        'Area',
        'Weight',
        'Flat sides',
        'Not counted',
      ].map(heading),
    ),
    ...pieceRows.map(blankLine),
    line(
      words('Total'),
      null,
      null,
      total('D'),
      null,
      total('F'),
      null,
      words('each blank on its own sheets; a cutting plan may need fewer', { style: { wraps: true } }),
      total('I'),
      null,
      total('K'),
      total('L', squareFeet),
      total('M', pounds),
    ),
    emptyLine,
    ...sheetsToBuy(blankColumns),
  ],
  blocks: { piece_marks: besidePieces('A') },
});

/** A line of Pieces that is not finished has no blank, and no other sheet knows of its piece; the last column names it,
 *  so that the order can say what it is without. Sheets are counted for each kind of blank by itself, all of it laid one
 *  way, so that the count is never short. */
function blankLine(row: number): Line {
  const [width, depth, length] = ['C', 'D', 'E'].map((column) => `Pieces!${column}${row}`);
  const unless = (formula: string) => ifFilled(`A${row}`, formula);
  const blank = (made: string, part: number) => `BLANK.RECT(${width},${depth},${made},${part},pocket,flange)`;
  const onOneSheet = (across: string) => {
    const sideBySide = (one: string, other: string) =>
      `${wholeDown(`sheet_width/${one}`)}*${wholeDown(`sheet_length/${other}`)}`;
    return `MAX(${sideBySide(across, `G${row}`)},${sideBySide(`G${row}`, across)})`;
  };
  const fitsWhen = (made: string) => `${onOneSheet(blank(made, 1))}>0`;
  const byTheSheet = `IF(${fitsWhen('"one piece"')},"one piece",IF(${fitsWhen('"two L halves"')},"two L halves","four pieces"))`;
  const asTheJob = `IF(job_made="${fewest}",${byTheSheet},job_made)`;
  const hasSecond = `OR(B${row}="U and flat",B${row}="four pieces")`;
  const firstEach = `IF(OR(B${row}="one piece",B${row}="U and flat"),1,2)`;
  const secondEach = `IF(B${row}="U and flat",1,2)`;
  const second = (formula: string) => unless(`IF(${hasSecond},${formula},"")`);
  const fits = (across: string) => `${onOneSheet(across)}>0`;
  const isCounted = `IFERROR(AND(H${row}="holds",Wrap!E${row}>0,Wrap!E${row}<>""),FALSE)`;
  const called = `IF(Pieces!A${row}="","an unmarked line",Pieces!A${row})`;
  const sides = `IF(MAX(${width},${depth})>cross_break_over,IF(MIN(${width},${depth})>cross_break_over,"cross-break all four","cross-break the "&MAX(${width},${depth})&" in sides"),"plain")`;
  return line(
    figured(`IF(${unfinished(row)},"",Pieces!A${row})`),
    figured(unless(`IF(Pieces!B${row}="",${asTheJob},Pieces!B${row})`)),
    figured(unless(blank(`B${row}`, 1)), cutInches),
    figured(unless(`I${row}*${firstEach}`), count),
    figured(second(blank(`B${row}`, 2)), cutInches),
    figured(second(`I${row}*${secondEach}`), count),
    figured(unless(`BLANK.LENGTH(${length}/I${row},joint_allowance,joint_allowance)`), cutInches),
    check(
      unless(
        `IF(AND(${fits(`C${row}`)},OR(E${row}="",IFERROR(${fits(`E${row}`)},FALSE))),"holds","stop: a blank is larger than the stock sheet; make it of more pieces, or of shorter sections")`,
      ),
    ),
    figured(unless(wholeUp(`${length}/section_length`)), count),
    figured(unless(`IF(Pieces!F${row}="",job_gauge,Pieces!F${row})`), gauge),
    figured(
      unless(
        `IF(H${row}="holds",${wholeUp(`D${row}/${onOneSheet(`C${row}`)}`)}+IF(E${row}="",0,${wholeUp(`F${row}/${onOneSheet(`E${row}`)}`)}),"")`,
      ),
      count,
    ),
    figured(unless(`(D${row}*C${row}+IF(E${row}="",0,F${row}*E${row}))*G${row}/144`), squareFeet),
    figured(
      unless(
        `D${row}*WEIGHT.BLANK(C${row},G${row},J${row})+IF(E${row}="",0,F${row}*WEIGHT.BLANK(E${row},G${row},J${row}))`,
      ),
      pounds,
    ),
    figured(unless(sides), { style: { wraps: true } }),
    figured(ifFilled(`Pieces!H${row}`, `IF(${isCounted},"",${called})`)),
  );
}

function total(column: string, more: Partial<Cell> = count): Cell {
  return figured(`SUM(${besidePieces(column)})`, more);
}
