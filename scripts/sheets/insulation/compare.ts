import type { Cell } from '../../../src/workbook/document.ts';
import { wrapCount } from '../allowances/wraps.ts';
import {
  count,
  cutInches,
  degrees,
  dollars,
  exactInches,
  figured,
  heading,
  onBelow,
  resistance,
} from '../cells.ts';
import { emptyLine, type Form, form, type Line, line } from '../form.ts';
import { rowsFrom } from '../sentences.ts';
import { airIsKnown, ductIsKnown } from './known.ts';

/** Every block has one line to each line of the table of wraps. */
const blockOf = (index: number) => rowsFrom(2 + index * (wrapCount + 2), wrapCount);
const [lengths, left, bought, wet] = [0, 1, 2, 3].map(blockOf) as [
  readonly number[],
  readonly number[],
  readonly number[],
  readonly number[],
];
export const boughtRows = bought;
export const besideBought = (column: string) =>
  `Compare!${column}${bought[0]}:${column}${bought[bought.length - 1]}`;
export const wetChecks = `Compare!F${wet[0]}:F${wet[wet.length - 1]}`;

const ways = ['published', 'geometry', 'shop'] as const;
const ductOf = (formula: (sizes: string) => string) =>
  `IF(duct_shape="round",${formula('"round",duct_width,')},${formula('"rectangular",duct_width,duct_depth')})`;
const isReady = (wrapRow: number) => `AND(${ductIsKnown},Allowances!D${wrapRow}="holds")`;

export const compare: Form = form({
  id: 'compare',
  name: 'Compare',
  says: 'See each wrap beside the others: how far round to cut it, what R is left, what it costs, whether it sweats.',
  widths: [14, 11, 12, 11, 11, 22, 28],
  lines: [
    line(
      heading('How far round'),
      heading('Published'),
      heading('By geometry'),
      heading('This shop'),
      heading('Most apart'),
      heading('What it says'),
    ),
    ...lengths.map((row, index) => lengthLine(row, index + 2)),
    emptyLine,
    line(
      heading('R that is left'),
      heading('Published'),
      heading('By geometry'),
      heading('This shop'),
      heading('Installed R'),
      heading('What it says'),
    ),
    ...left.map((row, index) => leftLine(row, index + 2, lengths[index] ?? 0)),
    emptyLine,
    line(
      heading('As chosen on Job'),
      heading('Cut at'),
      heading('Pieces'),
      heading('Rolls'),
      heading('Price'),
      heading('R left'),
      heading('Does it suit?'),
    ),
    ...bought.map((row, index) => boughtLine(row, index + 2, lengths[index] ?? 0, left[index] ?? 0)),
    emptyLine,
    line(
      heading('On a cold duct'),
      heading('Outer face'),
      heading('Dew point'),
      heading('Warmer by'),
      heading('Least R'),
      heading('Does it sweat?'),
    ),
    ...wet.map((row, index) => wetLine(row, index + 2, bought[index] ?? 0)),
  ],
});

function wrapName(wrapRow: number): Cell {
  return figured(`IF(Allowances!A${wrapRow}="","",Allowances!A${wrapRow})`);
}

function name(row: number, wrapRow: number, formula: string): string {
  return `IF(A${row}="","",IF(${isReady(wrapRow)},${formula},""))`;
}

/** A way has no figure for some wraps: the published table ends, and the shop may not have tried it. */
function lengthLine(row: number, wrapRow: number): Line {
  const by = (way: string) =>
    figured(
      name(
        row,
        wrapRow,
        `IFERROR(${ductOf((sizes) => `WRAP.STRETCHOUT(${sizes},A${row},wraps,"${way}",lap,corners)`)},"")`,
      ),
      exactInches,
    );
  return line(
    wrapName(wrapRow),
    ...ways.map(by),
    figured(
      name(row, wrapRow, `IF(COUNT(B${row}:D${row})<2,"",MAX(B${row}:D${row})-MIN(B${row}:D${row}))`),
      exactInches,
    ),
    figured(
      name(
        row,
        wrapRow,
        `TEXTJOIN("; ",TRUE,IF(B${row}="","no published figure",""),IF(D${row}="","no figure of this shop",""))`,
      ),
      onBelow,
    ),
  );
}

function leftLine(row: number, wrapRow: number, lengthRow: number): Line {
  const by = (column: string) =>
    figured(
      name(
        row,
        wrapRow,
        `IF(${column}${lengthRow}="","",IFERROR(${ductOf((sizes) => `WRAP.RLEFT(${sizes},TAPE.ROUND(${column}${lengthRow},fraction,"up"),A${row},wraps,lap,corners)`)},""))`,
      ),
      resistance,
    );
  const squeezed = ['B', 'C', 'D']
    .map((column, index) => `IF(AND(${column}${lengthRow}<>"",${column}${row}=""),"${ways[index]}","")`)
    .join(',');
  return line(
    wrapName(wrapRow),
    by('B'),
    by('C'),
    by('D'),
    figured(name(row, wrapRow, `Allowances!G${wrapRow}`), resistance),
    figured(
      name(
        row,
        wrapRow,
        `IF(TEXTJOIN("",TRUE,${squeezed})="","","squeezed to less than half by: "&TEXTJOIN(", ",TRUE,${squeezed}))`,
      ),
      onBelow,
    ),
  );
}

function boughtLine(row: number, wrapRow: number, lengthRow: number, leftRow: number): Line {
  const chosen = (lines: number) =>
    `IF(wrap_method="published",B${lines},IF(wrap_method="geometry",C${lines},D${lines}))`;
  const cut = (formula: string) => name(row, wrapRow, `IF(B${row}="","",${formula})`);
  const price = `INDEX(roll_prices,${wrapRow - 1})`;
  return line(
    wrapName(wrapRow),
    figured(
      name(row, wrapRow, `IF(${chosen(lengthRow)}="","",TAPE.ROUND(${chosen(lengthRow)},fraction,"up"))`),
      cutInches,
    ),
    figured(cut(`WRAP.PIECES(duct_length,A${row},wraps,wrap_flange)`), count),
    figured(cut(`WRAP.ROLLS(B${row},C${row},A${row},wraps,wrap_waste)`), count),
    figured(cut(`IF(${price}="","",D${row}*${price})`), dollars),
    figured(cut(chosen(leftRow)), resistance),
    figured(
      name(
        row,
        wrapRow,
        verdict(
          [
            `Allowances!G${wrapRow}<needed_r`,
            `"no: it is rated R "&ROUND(Allowances!G${wrapRow},2)&" installed, and R "&ROUND(needed_r,2)&" is needed"`,
          ],
          [`B${row}=""`, '"mind: the way chosen on Job has no figure for this wrap"'],
          [
            `F${row}=""`,
            '"no: cut this way, less than half of the thickness is left, and no R is published for that"',
          ],
          [
            `F${row}<needed_r-r_short`,
            '"mind: by geometry, less R is left than is needed; a longer cut squeezes the wrap less"',
          ],
        ),
      ),
      onBelow,
    ),
  );
}

function wetLine(row: number, wrapRow: number, boughtRow: number): Line {
  const film = 'surface_kind,surface_face';
  const known = (formula: string) => name(row, wrapRow, `IF(${airIsKnown},${formula},"")`);
  const cold = (formula: string) => known(`IF(F${boughtRow}="","",${formula})`);
  return line(
    wrapName(wrapRow),
    figured(cold(`WRAP.SURFACE(air_around,air_inside,F${boughtRow},air_humidity,${film})`), degrees),
    figured(known('WRAP.DEWPOINT(air_around,air_humidity)'), degrees),
    figured(cold(`B${row}-C${row}`), { unit: 'degF', format: { type: 'decimal', places: 1 } }),
    figured(known(`WRAP.SWEATING(air_around,air_humidity,air_inside,${film})`), resistance),
    figured(
      cold(
        verdict(
          [`D${row}<=0`, '"no: its outer face is no warmer than the dew point, so it gets wet; take more R"'],
          [
            `D${row}<dry_margin`,
            '"mind: its outer face is hardly warmer than the dew point; see Allowances"',
          ],
        ),
      ),
      onBelow,
    ),
  );
}

/** What is said of a wrap that may not be the one that is bought, so it is no check: only Job has one. */
function verdict(...cases: readonly (readonly [condition: string, sentence: string])[]): string {
  return cases.reduceRight(
    (otherwise, [condition, sentence]) => `IF(${condition},${sentence},${otherwise})`,
    '"suits"',
  );
}
