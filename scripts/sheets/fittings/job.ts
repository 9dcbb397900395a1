import {
  check,
  count,
  figured,
  gauge,
  given,
  heading,
  onBelow,
  pounds,
  squareFeet,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { cautions, jobHead } from '../head.ts';
import { firstOf } from '../sentences.ts';
import { saysStop } from '../stops.ts';
import { wholeUp } from '../whole.ts';
import type { Kind } from './kind.ts';
import { kinds } from './kinds.ts';
import { besideKind, kindTotalRow, layoutOf } from './sheet.ts';

const totalOf = (kind: Kind, column: string) =>
  `${/^\w+$/.test(kind.sheet) ? kind.sheet : `'${kind.sheet}'`}!${column}${kindTotalRow}`;
const all = (pick: (kind: Kind) => string) => kinds.map(pick);
const notCounted = `TEXTJOIN(", ",TRUE,${all((kind) => besideKind(kind, layoutOf(kind).notCounted)).join(',')})`;
const saidAnything = `TEXTJOIN("",TRUE,${all((kind) => besideKind(kind, layoutOf(kind).check)).join(',')})`;
const alone = all((kind) => totalOf(kind, layoutOf(kind).sheets)).join('+');
const areas = all((kind) => totalOf(kind, layoutOf(kind).area)).join('+');

const isWhole = firstOf(
  [`${saidAnything}=""`, '""'],
  [`${notCounted}<>""`, `"stop: the order is without "&${notCounted}&"; their checks say why"`],
);

const before: readonly Line[] = [
  ...jobHead('Before you cut', [
    cautions.edges,
    'Keep hands clear of the shear; guard on.',
    cautions.tryFirst,
    'Fold the pattern from paper first, where unsure.',
    cautions.localCode,
  ]),
  emptyLine,
  line(heading('How it is made')),
  namedLine(
    'job_gauge',
    words('Gauge'),
    given(
      {
        asks: 'Which gauge are the fittings made of?',
        least: 14,
        most: 30,
        why: 'duct is made of 14 to 30 ga sheet',
        usual: 26,
      },
      { content: 26, ...gauge },
    ),
    words('as the duct that they join; the local code has the say', onBelow),
  ),
  emptyLine,
  line(heading('The fittings'), heading('Lines'), heading('Check')),
  ...kinds.map(kindLine),
  line(words('Blanks to cut'), figured('SUM(cuts)', count), words('see Cut list')),
  line(
    words('Metal of the blanks'),
    figured(areas, squareFeet),
    words('the rectangles that they are cut from'),
  ),
  line(words('Weight of it'), figured(`(${areas})*GAUGE.WEIGHT(job_gauge)`, pounds), words('drop included')),
  line(
    words('Sheets, at most'),
    figured(alone, count),
    words('if the blanks of each line had sheets of their own', onBelow),
  ),
  emptyLine,
  line(heading('To order'), null, heading('Unit')),
];

const orders: readonly Line[] = [
  line(words('The whole job'), check(isWhole), words('do not order while this says stop')),
  line(
    figured('"Sheet metal, "&job_gauge&" ga"'),
    figured(wholeUp(`(${areas})*144*(1+fitting_waste)/(sheet_width*sheet_length)`), count),
    figured(
      '"sheets "&sheet_width&" × "&sheet_length&" in, by area and "&ROUND(100*fitting_waste,0)&" % of drop: lay the blanks out before you order"',
      onBelow,
    ),
  ),
];

export const job: Form = form({
  id: 'job',
  name: 'Job',
  says: 'Say what the job is; each kind of fitting has a sheet of its own, and all blanks stand on Cut list.',
  widths: [20, 21, 36],
  lines: [...before, ...orders],
  blocks: { order: `A${before.length}:C${before.length + orders.length}` },
});

function kindLine(kind: Kind): Line {
  const checks = besideKind(kind, layoutOf(kind).check);
  return line(
    words(kind.sheet),
    figured(`COUNT(${besideKind(kind, layoutOf(kind).parts[0]?.count ?? 'A')})`, count),
    check(`IF(TEXTJOIN("",TRUE,${checks})="","",IF(${saysStop(checks)},"stop: see ${kind.sheet}","holds"))`),
  );
}
