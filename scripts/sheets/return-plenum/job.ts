import { leastTables } from '../../../src/trade/gauge/least.ts';
import {
  check,
  count,
  cubicFeet,
  feetAMinute,
  figured,
  given,
  heading,
  inches,
  inchesOfWater,
  onBelow,
  pounds,
  squareFeet,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { cautions, jobHead } from '../head.ts';
import { whichGaugeTable } from '../questions.ts';
import { firstOf, rowsFrom } from '../sentences.ts';
import { saysStop } from '../stops.ts';
import { wholeUp } from '../whole.ts';
import { boxIsKnown } from './known.ts';
import { blanksTotalRow, lastBlankRow } from './plenum.ts';
import { returnLines } from './returns.ts';
import { sealTotalRow } from './seal.ts';

/** Room for so many sizes of flex in one order. */
const flexSizes = 6;
const notCounted = `TEXTJOIN(", ",TRUE,${returnLines.all('not counted')})`;
const airChecks = 'Air!C2:C30';
const boxChecks = `Plenum!E2:E${lastBlankRow}`;

const mayBeMade = firstOf(
  [`NOT(${boxIsKnown})`, '"look: the box on Plenum is not measured yet"'],
  [saysStop(airChecks), '"stop: the air is too fast; see Air"'],
  [saysStop(boxChecks), '"stop: a blank cannot be made as it stands; see Plenum"'],
);
const isWhole = firstOf(
  [`AND(NOT(${boxIsKnown}),${notCounted}="")`, '""'],
  [`NOT(${boxIsKnown})`, '"stop: the order is without the box; measure it on Plenum"'],
  [
    saysStop(`Plenum!E13:E${lastBlankRow}`),
    '"stop: the order is without a blank that no sheet holds; see Plenum"',
  ],
  [
    'AND(COUNT(drop_width,drop_depth,drop_length)>0,COUNT(drop_width,drop_depth,drop_length)<3)',
    '"stop: the order is without the drop; see Air"',
  ],
  [`${notCounted}<>""`, `"stop: the order is without "&${notCounted}&"; their checks say why"`],
  ['flex_left>0', '"stop: the order has no room for so many sizes of flex"'],
);

const before: readonly Line[] = [
  ...jobHead('Before you cut', [
    cautions.edges,
    cautions.fan,
    cautions.tryFirst,
    'A return draws fumes: have burners checked.',
    cautions.localCode,
  ]),
  emptyLine,
  line(heading('How it is made')),
  namedLine(
    'job_pressure',
    words('Static pressure'),
    given(
      {
        asks: 'Which static pressure is the return made for?',
        least: 0.01,
        most: 10,
        why: 'duct is made for at most 10 in. w.g.',
        usual: 0.5,
      },
      { content: 0.5, ...inchesOfWater },
    ),
    words('decides the least gauge'),
  ),
  namedLine('job_table', words('Least gauge by'), whichGaugeTable, words(leastTables.join(', '), onBelow)),
  emptyLine,
  line(heading('How it stands')),
  line(words('Airflow of the unit'), figured('IF(unit_airflow="","",unit_airflow)', cubicFeet)),
  line(words('Velocity at the filter'), figured('filter_face', feetAMinute), words('see Air')),
  namedLine(
    'returns_counted',
    words('Flex returns'),
    figured(`COUNT(${returnLines.all('sheets')})`, count),
    words('each with its boot, its flex and its collar'),
  ),
  line(
    words('Sheet metal'),
    figured(`Plenum!G${blanksTotalRow}`, squareFeet),
    words('blanks as cut, without waste'),
  ),
  line(words('Weight of the metal'), figured(`Plenum!H${blanksTotalRow}`, pounds)),
  line(words('Box and air'), check(mayBeMade), words('do not cut while this says stop')),
  emptyLine,
  line(heading('To order'), null, heading('Unit'), heading('Size')),
];

const firstOrderRow = before.length + 1;
const flexRows = rowsFrom(firstOrderRow + 2, flexSizes);
const lastFlexRow = firstOrderRow + 1 + flexSizes;

const orders: readonly Line[] = [
  line(words('The whole job'), check(isWhole), words('do not order while this says stop')),
  line(
    figured('"Sheet metal, "&box_gauge&" ga"'),
    figured(`Plenum!F${blanksTotalRow}`, count),
    figured('"sheets "&sheet_width&" × "&sheet_length&" in, each piece on its own"', onBelow),
  ),
  ...flexRows.map(flexLine),
  line(
    words('Filters'),
    figured('IF(COUNT(filter_width,filter_height)=2,filter_count,0)', count),
    figured(
      'IF(COUNT(filter_width,filter_height)=2,"filters "&filter_width&" × "&filter_height&" in","filters")',
    ),
  ),
  line(words('Return grilles'), figured('returns_counted', count), words('grilles, of the sizes on Returns')),
  line(words('Collars'), figured('returns_counted*2', count), words('collars: one at each end of a flex')),
  ...sealOrders(),
];

export const job: Form = form({
  id: 'job',
  name: 'Job',
  says: 'Say what the job is; read here how the air and the box stand, and what to buy.',
  widths: [20, 21, 36, 7],
  lines: [
    ...before,
    ...orders,
    line(
      words('Flex not ordered'),
      figured(flexLeft(), inches),
      words('nothing, unless there are too many sizes'),
    ),
  ].map((one, index, all) => (index === all.length - 1 ? { ...one, name: { is: 'flex_left', at: 1 } } : one)),
  blocks: { order: `A${before.length}:C${before.length + orders.length}` },
});

/** The sizes of flex that the returns take, the smallest first; blank where there is no further one. The size is read
 *  from the line above it. */
function flexLine(row: number, index: number): Line {
  const all = returnLines.all('flex counted');
  const above = `D${row - 1}`;
  const size =
    index === 0
      ? `IF(COUNT(${all})=0,"",MIN(${all}))`
      : `IF(${above}="","",IF(COUNTIF(${all},">"&${above})=0,"",MINIFS(${all},${all},">"&${above})))`;
  const unless = (formula: string) => `IF(D${row}="","",${formula})`;
  return line(
    figured(unless(`"Flex, "&D${row}&" in"`)),
    figured(unless(wholeUp(`SUMIF(${all},D${row},${returnLines.all('length')})/12/flex_box`)), count),
    figured(unless('"boxes of "&flex_box&" ft, insulated"')),
    figured(size, inches),
  );
}

function flexLeft(): string {
  const all = returnLines.all('flex counted');
  return `IF(D${lastFlexRow}="",0,SUMIF(${all},">"&D${lastFlexRow},${returnLines.all('length')}))`;
}

function sealOrders(): readonly Line[] {
  const units = [
    '"rolls of "&tape_roll&" ft"',
    '"pails of "&mastic_pail&" gal"',
    '"boxes of "&screw_box',
    '"bags of "&tie_bag',
  ];
  return ['Joint tape', 'Mastic', 'Screws', 'Ties of flex'].map((label, index) =>
    line(
      words(label),
      figured(`'Seal and fasten'!B${sealTotalRow + 3 + index}`, count),
      figured(units[index] ?? '""'),
    ),
  );
}
