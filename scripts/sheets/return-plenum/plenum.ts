import {
  check,
  count,
  cutInches,
  figured,
  given,
  heading,
  inches,
  pounds,
  squareFeet,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { firstOf } from '../sentences.ts';
import { wholeDown, wholeUp } from '../whole.ts';
import { boxIsKnown, dropIsKnown } from './known.ts';
import { returnLines } from './returns.ts';

const size = { least: 6, most: 60, why: 'plenums of houses are half a foot to 5 ft each way' };

const filterFits =
  'OR(AND(filter_width<=box_width,filter_height<=box_depth),AND(filter_width<=box_depth,filter_height<=box_width))';

const dropLong = 'BLANK.LENGTH(drop_length/drop_sections,joint_allowance,joint_allowance)';

const firstBlankRow = 13;
const blankRows = {
  walls: firstBlankRow,
  top: firstBlankRow + 1,
  drop: firstBlankRow + 2,
  second: firstBlankRow + 3,
};
export const lastBlankRow = firstBlankRow + 4;
export const blanksTotalRow = lastBlankRow + 1;

export const plenum: Form = form({
  id: 'plenum',
  name: 'Plenum',
  says: 'Measure the box, so that it fits the collar of the unit; cut it and the drop from the blanks below.',
  widths: [19, 12, 9, 9, 27, 8, 11, 10],
  lines: [
    line(heading('The box'), null, null, null, heading('Check')),
    namedLine(
      'box_width',
      words('Width'),
      given({ asks: 'How wide is the box, front and back?', ...size }, inches),
    ),
    namedLine(
      'box_depth',
      words('Depth'),
      given({ asks: 'How deep is the box, right and left?', ...size }, inches),
    ),
    namedLine(
      'box_height',
      words('Height'),
      given({ asks: 'How high are its walls?', ...size }, inches),
      null,
      null,
      check(boxCheck()),
    ),
    namedLine(
      'box_top',
      words('Top'),
      given(
        { asks: 'Is the top closed with a panel, or open?', choices: ['closed', 'open'], usual: 'closed' },
        { content: 'closed' },
      ),
    ),
    namedLine(
      'box_gauge',
      words('Gauge'),
      given(
        {
          asks: 'Which gauge are the box, the drop and the boots made of?',
          least: 14,
          most: 30,
          why: 'duct is made of 14 to 30 ga sheet',
          usual: 26,
        },
        { content: 26, unit: 'gauge' },
      ),
      null,
      null,
      check(gaugeCheck()),
    ),
    namedLine(
      'box_seams',
      words('Upright seams'),
      figured(`IF(${boxIsKnown},IF(box_made="one piece",1,2),"")`, count),
    ),
    namedLine('box_made', words('Walls made from'), figured(`IF(${boxIsKnown},${madeOf()},"")`)),
    namedLine('drop_made', words('Drop made from'), figured(`IF(${dropIsKnown},${dropMade()},"")`)),
    namedLine(
      'drop_sections',
      words('Sections of the drop'),
      figured(`IF(${dropIsKnown},${wholeUp('drop_length/section_length')},"")`, count),
    ),
    emptyLine,
    line(...['Blanks', 'Wide', 'Long', 'How many', 'Fit', 'Sheets', 'Area', 'Weight'].map(heading)),
    blankLine(blankRows.walls, 'IF(box_made="two L halves","Walls, halves","Walls")', {
      known: boxIsKnown,
      wide: box(1, 'width'),
      long: box(1, 'length'),
      many: 'IF(box_made="two L halves",2,1)',
    }),
    blankLine(blankRows.top, '"Top"', {
      known: `AND(${boxIsKnown},box_top="closed")`,
      wide: box(3, 'width'),
      long: box(3, 'length'),
      many: '1',
    }),
    blankLine(blankRows.drop, 'IF(drop_made="four pieces","Drop, wide sides","Drop")', {
      known: dropIsKnown,
      wide: 'BLANK.RECT(drop_width,drop_depth,drop_made,1,pocket,flange)',
      long: dropLong,
      many: 'drop_sections*IF(drop_made="one piece",1,2)',
    }),
    blankLine(blankRows.second, '"Drop, narrow sides"', {
      known: `AND(${dropIsKnown},drop_made="four pieces")`,
      wide: 'BLANK.RECT(drop_width,drop_depth,drop_made,2,pocket,flange)',
      long: dropLong,
      many: 'drop_sections*2',
    }),
    bootLine(),
    line(
      words('Total'),
      null,
      null,
      figured(`SUM(D${firstBlankRow}:D${lastBlankRow})`, count),
      words('each blank on its own sheets; a plan may need fewer', { style: { wraps: true } }),
      figured(`SUM(F${firstBlankRow}:F${lastBlankRow})`, count),
      figured(`SUM(G${firstBlankRow}:G${lastBlankRow})`, squareFeet),
      figured(`SUM(H${firstBlankRow}:H${lastBlankRow})`, pounds),
    ),
  ],
});

function box(part: number, what: string, made = 'box_made'): string {
  return `BLANK.PLENUM(box_width,box_depth,box_height,${part},"${what}",,${made},box_top,pocket,flange,top_edge,bottom_edge,lid_edge)`;
}

function onOneSheet(wide: string, long: string): string {
  const side = (one: string, other: string) =>
    `${wholeDown(`sheet_width/(${one})`)}*${wholeDown(`sheet_length/(${other})`)}`;
  return `MAX(${side(wide, long)},${side(long, wide)})`;
}

/** One wrap of walls where the stock sheet holds it. */
function madeOf(): string {
  const wide = box(1, 'width', '"one piece"');
  return `IF(${onOneSheet(wide, 'box_height+top_edge+bottom_edge')}>0,"one piece","two L halves")`;
}

function dropMade(): string {
  const fits = (made: string) =>
    `${onOneSheet(`BLANK.RECT(drop_width,drop_depth,"${made}",1,pocket,flange)`, `drop_length/${wholeUp('drop_length/section_length')}+2*joint_allowance`)}>0`;
  return `IF(${fits('one piece')},"one piece",IF(${fits('two L halves')},"two L halves","four pieces"))`;
}

function boxCheck(): string {
  return firstOf(
    ['COUNT(box_width,box_depth,box_height)=0', '""'],
    [
      `NOT(${boxIsKnown})`,
      '"stop: still to fill in: "&TEXTJOIN(", ",TRUE,IF(box_width="","width",""),IF(box_depth="","depth",""),IF(box_height="","height",""))',
    ],
    [
      `AND(COUNT(filter_width,filter_height)=2,NOT(${filterFits}))`,
      '"look: the filter does not lie flat in this box; it needs a rack of its own size"',
    ],
  );
}

/** The unit pulls at a return with at most its own pressure. */
function gaugeCheck(): string {
  const largest = 'MAX(box_width,box_depth,IF(drop_width="",0,drop_width),IF(drop_depth="",0,drop_depth))';
  const least = `GAUGE.LEAST("rectangular",${largest},job_pressure,,job_table)`;
  return firstOf(
    [`NOT(${boxIsKnown})`, '""'],
    ['job_table="not checked"', '"holds"'],
    [
      `ISERROR(${least})`,
      '"look: the table of least gauges ends before this box; the construction standard of the job decides"',
    ],
    [
      `box_gauge>${least}`,
      `"stop: "&box_gauge&" ga is too light; the "&job_table&" asks for "&${least}&" ga at least"`,
    ],
  );
}

interface Blank {
  readonly known: string;
  readonly wide: string;
  readonly long: string;
  readonly many: string;
}

function blankLine(row: number, label: string, { known, wide, long, many }: Blank): Line {
  const unless = (formula: string) => `IF(${known},${formula},"")`;
  const held = onOneSheet(`B${row}`, `C${row}`);
  return line(
    figured(unless(label)),
    figured(unless(wide), cutInches),
    figured(unless(long), cutInches),
    figured(unless(many), count),
    check(
      unless(
        `IF(${held}>0,"holds","stop: larger than the stock sheet; make the box smaller, or take a larger sheet")`,
      ),
    ),
    figured(unless(`IF(E${row}="holds",${wholeUp(`D${row}/${held}`)},"")`), count),
    figured(unless(`D${row}*B${row}*C${row}/144`), squareFeet),
    figured(unless(`D${row}*WEIGHT.BLANK(B${row},C${row},box_gauge)`), pounds),
  );
}

/** The halves of the boots, each as the rectangle that it is cut from. */
function bootLine(): Line {
  const halves = `SUM(${returnLines.all('halves')})`;
  const unless = (formula: string) => `IF(${halves}=0,"",${formula})`;
  return line(
    figured(unless('"Boots, halves"')),
    null,
    null,
    figured(unless(halves), count),
    check(unless(`IF(SUM(${returnLines.all('sheets')})>0,"holds","stop: no boot fits the stock sheet")`)),
    figured(unless(`SUM(${returnLines.all('sheets')})`), count),
    figured(unless(`SUM(${returnLines.all('boot area')})`), squareFeet),
    figured(unless(`SUM(${returnLines.all('boot area')})*GAUGE.WEIGHT(box_gauge)`), pounds),
  );
}
