import { leastTables } from '../../../src/trade/gauge/least.ts';
import {
  check,
  count,
  feetAndInches,
  figured,
  gauge,
  given,
  heading,
  pounds,
  resistance,
  squareFeet,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { cautions, jobHead } from '../head.ts';
import { whichGaugeTable, whichMethod, whichPressure, whichR } from '../questions.ts';
import { firstOf } from '../sentences.ts';
import { gaugeRows, sheetsByGauge } from './gauges.ts';
import { pastTheTable, veryShort } from './piece-check.ts';
import { type BlankColumns, besidePieces, totalRow } from './piece-rows.ts';
import { byGeometryInstead, lessByGeometry, wrapOrderRows } from './wrap.ts';

const wrapped = { style: { wraps: true } } as const;

const saysOneOf = (cells: string, sentences: readonly string[]) =>
  sentences.map((sentence) => `COUNTIF(${cells},"${sentence}")`).join('+');

const lineChecks = `Pieces!${besidePieces('H')}`;
const wrapChecks = `Wrap!${besidePieces('F')}`;
const piecesMet = saysOneOf(lineChecks, ['holds', veryShort, pastTheTable]);
const wrapLooks = saysOneOf(wrapChecks, [lessByGeometry, byGeometryInstead]);
const wrapsMet = saysOneOf(wrapChecks, ['holds', lessByGeometry, byGeometryInstead]);
const nothingMeasured = `TEXTJOIN("",TRUE,${lineChecks})=""`;

/** What sets one trunk apart from another. */
interface Trunk {
  readonly blanks: BlankColumns;
  /** The column of Taps that names what is not counted. */
  readonly tapsNotCounted: string;
  /** Further lines on how it is made. */
  readonly made?: readonly Line[];
  /** Further lines to order. */
  readonly orders?: readonly Line[];
}

export function jobSheet({ blanks, tapsNotCounted, made = [], orders = [] }: Trunk): Form {
  /** Pieces whose line is finished: each of them has a gauge. */
  const pieceTotal = `COUNT(Blanks!${besidePieces(blanks.gauge)})`;
  /** Pieces and taps that are not counted stop the order below; these stop the work. */
  const mayBeCut = firstOf(
    [nothingMeasured, '"look: no piece is measured yet"'],
    [`${piecesMet}<${pieceTotal}`, '"stop: a piece cannot be made as it stands; see Pieces"'],
    [`${wrapsMet}<${pieceTotal}`, '"stop: a wrap cannot be cut as it stands; see Wrap"'],
  );
  /** A number that is short of a piece would be ordered unseen, so the order names what it is without. */
  const notCounted = `TEXTJOIN(", ",TRUE,Blanks!${besidePieces(blanks.notCounted)},Taps!${besidePieces(tapsNotCounted)})`;
  const isWhole = firstOf(
    [nothingMeasured, '""'],
    [`${notCounted}<>""`, `"stop: the order is without "&${notCounted}&"; their checks say why"`],
    [
      `SUM(Blanks!${sheetsByGauge})<Blanks!${blanks.sheets}${totalRow}`,
      '"stop: the order has no room for so many gauges"',
    ],
  );
  const orderLines = [
    line(words('The whole job'), check(isWhole), words('do not order while this says stop')),
    ...gaugeRows.map(sheetOrderLine),
    orderLine('Joint tape', 'joint_tape_rolls', '"rolls of "&tape_roll&" ft"'),
    orderLine('Mastic', 'mastic_pails', '"pails of "&mastic_pail&" gal"'),
    orderLine('Facing tape', 'facing_tape_rolls', '"rolls of "&facing_roll&" ft"'),
    orderLine('Screws', 'screw_boxes', '"boxes of "&screw_box'),
    orderLine('Staples', 'staple_boxes', '"boxes of "&staple_box'),
    orderLine('Pins with clips', 'pin_boxes', '"boxes of "&pin_box'),
    orderLine('End caps', 'end_caps', '"caps, of the sizes on Pieces"'),
    ...orders,
    ...wrapOrderRows.map((row, index) => wrapOrderLine(index + 2, row)),
  ];
  const before: readonly Line[] = [
    ...jobHead('Before you cut', [
      cautions.edges,
      cautions.fiber,
      cautions.tryFirst,
      cautions.sealFirst,
      cautions.localCode,
    ]),
    emptyLine,
    line(heading('How it is made')),
    namedLine(
      'job_gauge',
      words('Gauge'),
      given(
        {
          asks: 'Which gauge is the job made of?',
          least: 14,
          most: 30,
          why: 'duct is made of 14 to 30 ga sheet',
          usual: 26,
        },
        { content: 26, ...gauge },
      ),
      words('galvanized; a piece may have its own'),
    ),
    namedLine(
      'job_wrap',
      words('Wrap'),
      given(
        { asks: 'Which wrap goes on? Type its name from the wraps on Allowances.', usual: 'R-8 wrap' },
        { content: 'R-8 wrap' },
      ),
      words('one of the wraps on Allowances'),
    ),
    namedLine('needed_r', words('R needed'), whichR, words('ask the local code; editions differ')),
    namedLine(
      'wrap_method',
      words('How wrap is worked out'),
      whichMethod,
      words('published, geometry or shop'),
    ),
    namedLine(
      'static_pressure',
      words('Static pressure'),
      whichPressure,
      words('decides the least gauge, and long seams'),
    ),
    namedLine(
      'gauge_table',
      words('Least gauge by'),
      whichGaugeTable,
      words(leastTables.join(', '), wrapped),
    ),
    ...made,
    emptyLine,
    line(heading('How it stands')),
    line(words('Pieces'), figured(pieceTotal, count), words('runs of duct, each on its own line')),
    line(words('Duct in all'), figured(`SUM(Pieces!${besidePieces('E')})`, feetAndInches)),
    line(
      words('Sheet metal'),
      figured(`Blanks!${blanks.area}${totalRow}`, squareFeet),
      words('blanks as cut, without waste'),
    ),
    line(words('Weight of the metal'), figured(`Blanks!${blanks.weight}${totalRow}`, pounds)),
    line(
      words('R left, the least'),
      figured(`IF(COUNT(Wrap!${besidePieces('G')})=0,"",MIN(Wrap!${besidePieces('G')}))`, resistance),
      words('by geometry, of all wrapped pieces'),
    ),
    line(words('Worth a look'), figured(wrapLooks, count), words('wraps to look at before they are cut')),
    line(words('Pieces and wraps'), check(mayBeCut), words('do not cut while this says stop')),
    emptyLine,
    line(heading('To order'), null, heading('Unit'), heading('Each'), heading('Cost')),
  ];
  const lastOrderRow = before.length + orderLines.length;
  const priced = orderLines.map((one, index) => pricedLine(one, before.length + index + 1));
  return form({
    id: 'job',
    name: 'Job',
    says: 'Say what the job is; read here what it takes, what to watch and what to buy.',
    widths: [20, 21, 36, 12, 14],
    lines: [...before, ...priced, emptyLine, ...costLines(before.length + 2, lastOrderRow)],
    blocks: { order: `A${before.length}:C${lastOrderRow}` },
  });
}

const noPrice = 'no price';

/** An order line with what one of it costs, by the words of the order, and what all of it does; blank without a price. */
function pricedLine({ cells, ...rest }: Line, row: number): Line {
  if (cells[1]?.role === 'check') return { cells, ...rest };
  const price = `IFERROR(VLOOKUP(A${row},prices,2,FALSE()),0)`;
  return {
    ...rest,
    cells: [
      ...cells,
      figured(`IF(OR(A${row}="",B${row}="",B${row}=0),"",IF(${price}=0,"${noPrice}",${price}))`, {
        unit: 'money',
      }),
      figured(`IF(ISNUMBER(D${row}),B${row}*D${row},"")`, { unit: 'money' }),
    ],
  };
}

/** What the order comes to, and what in it has no price yet. */
function costLines(first: number, last: number): readonly Line[] {
  const isPriced = firstOf(
    [`COUNT(E${first}:E${last})=0`, '""'],
    [
      `COUNTIF(D${first}:D${last},"${noPrice}")>0`,
      '"look: a line has no price on Allowances, so the sum is short of it"',
    ],
  );
  return [
    line(heading('What it costs')),
    namedLine(
      'material_cost',
      words('Material'),
      figured(`IF(COUNT(E${first}:E${last})=0,"",SUM(E${first}:E${last}))`, { unit: 'money' }),
      words('to order, by the prices on Allowances; without tax and labor'),
    ),
    line(words('Every line has a price'), check(isPriced)),
  ];
}

export function orderLine(item: string, name: string, unit: string): Line {
  return line(words(item), figured(name, count), figured(unit));
}

/** Blank where the job has no further gauge. */
function sheetOrderLine(row: number): Line {
  const unless = (formula: string) => `IF(Blanks!B${row}="","",${formula})`;
  return line(
    figured(unless(`"Sheet metal, "&Blanks!B${row}&" ga"`)),
    figured(unless(`Blanks!C${row}`), count),
    figured(unless('"sheets "&sheet_width&" × "&sheet_length&" in, each piece on its own"'), wrapped),
  );
}

/** Blank where the job has none of that wrap, so that only what is needed stands on the order. */
function wrapOrderLine(wrapRow: number, rollRow: number): Line {
  const unless = (formula: string) => `IF(Wrap!B${rollRow}="","",${formula})`;
  return line(
    figured(unless(`Wrap!A${rollRow}`)),
    figured(unless(`Wrap!B${rollRow}`), count),
    figured(unless(`"rolls "&Allowances!K${wrapRow}&" in × "&Allowances!L${wrapRow}&" ft"`)),
  );
}
