import { ductFaces, surfaces } from '../../../src/trade/wrap/film.ts';
import {
  check,
  count,
  degrees,
  dollars,
  feetAndInches,
  figured,
  given,
  heading,
  inches,
  share,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, line, namedLine } from '../form.ts';
import { cautions, jobHead } from '../head.ts';
import { whichR } from '../questions.ts';
import { firstOf } from '../sentences.ts';
import { wholeUp } from '../whole.ts';
import { besideBought, wetChecks } from './compare.ts';
import { airIsKnown, ductIsKnown } from './known.ts';

const size = {
  least: 2,
  most: 120,
  why: 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
};
const temperature = { least: -40, most: 150, why: 'no duct of a house hangs in such air' };
const place = `MATCH(job_wrap,${besideBought('A')},0)`;
const notMeasured = `NOT(${ductIsKnown})`;
const ofChosen = (column: string) => `IFERROR(INDEX(${besideBought(column)},${place}),"")`;
const sweats = `IFERROR(INDEX(${wetChecks},${place}),"")`;
const verdict = `IFERROR(INDEX(${besideBought('G')},${place}),"")`;

const lines = [
  ...jobHead('Before you choose', [
    cautions.fiber,
    'One open seam wets the wrap of a cold duct.',
    'Squeezed wrap has less R: leave it loose.',
    cautions.sealFirst,
    cautions.localCode,
  ]),
  emptyLine,
  line(heading('The duct'), null, heading('Check')),
  namedLine(
    'duct_shape',
    words('Shape'),
    given(
      { asks: 'Is the duct round or rectangular?', choices: ['round', 'rectangular'], usual: 'round' },
      { content: 'round' },
    ),
    check(
      firstOf(
        ['AND(duct_width="",duct_length="")', '""'],
        [
          notMeasured,
          '"stop: still to fill in: "&TEXTJOIN(", ",TRUE,IF(duct_width="","width",""),IF(AND(duct_shape="rectangular",duct_depth=""),"depth",""),IF(duct_length="","length",""))',
        ],
      ),
    ),
  ),
  namedLine(
    'duct_width',
    words('Diameter or width'),
    given({ asks: 'What is its diameter, or its width if it is rectangular?', ...size }, inches),
  ),
  namedLine(
    'duct_depth',
    words('Depth'),
    given({ asks: 'How deep is a rectangular duct? Blank if round.', ...size, mayBeBlank: true }, inches),
  ),
  namedLine(
    'duct_length',
    words('Length'),
    given(
      {
        asks: 'How long is the run that is wrapped?',
        least: 1,
        most: 12_000,
        why: 'a run under 1 in or over 1,000 ft is most likely a slip of the unit',
      },
      feetAndInches,
    ),
  ),
  emptyLine,
  line(heading('The wrap')),
  namedLine('needed_r', words('R needed'), whichR, words('ask the local code; editions differ')),
  namedLine(
    'wrap_method',
    words('Cut by'),
    given(
      {
        asks: 'By the published table, by geometry, or by this shop’s own figures?',
        choices: ['published', 'geometry', 'shop'],
        usual: 'published',
      },
      { content: 'published' },
    ),
    words('Compare shows all three'),
  ),
  namedLine(
    'job_wrap',
    words('Wrap to buy'),
    given(
      { asks: 'Which wrap is bought? Type its name from the wraps on Allowances.', usual: 'R-8 wrap' },
      { content: 'R-8 wrap' },
    ),
    check(
      firstOf(
        [`ISERROR(${place})`, '"stop: no wrap on Allowances has this name"'],
        [notMeasured, '""'],
        [`${verdict}=""`, '"stop: this wrap is not finished on Allowances"'],
        [`LEFT(${verdict},3)="no:"`, '"stop: it cannot be cut so; see Compare"'],
        [`${verdict}<>"suits"`, '"look: see Compare before it is cut"'],
        [`LEFT(${sweats},3)="no:"`, '"stop: it would sweat; see Compare"'],
        [`AND(${sweats}<>"",${sweats}<>"suits")`, '"look: it is near sweating; see Compare"'],
      ),
    ),
  ),
  emptyLine,
  line(heading('The air')),
  namedLine(
    'air_around',
    words('Around the duct'),
    given(
      { asks: 'How warm is the air around the duct on the worst day?', ...temperature, mayBeBlank: true },
      degrees,
    ),
    words('blank for a duct that only heats'),
  ),
  namedLine(
    'air_humidity',
    words('Its humidity'),
    given(
      {
        asks: 'What is the relative humidity of the air around the duct?',
        least: 0.01,
        most: 0.99,
        why: 'it is more than none, and below 100 % or everything is wet',
        mayBeBlank: true,
      },
      share,
    ),
  ),
  namedLine(
    'air_inside',
    words('In the duct'),
    given(
      {
        asks: 'How cold is the air in the duct?',
        least: -40,
        most: 250,
        why: temperature.why,
        mayBeBlank: true,
      },
      degrees,
    ),
    check(
      firstOf(
        ['COUNT(air_around,air_humidity,air_inside)=0', '""'],
        [
          `NOT(${airIsKnown})`,
          '"stop: still to fill in: "&TEXTJOIN(", ",TRUE,IF(air_around="","around the duct",""),IF(air_humidity="","its humidity",""),IF(air_inside="","in the duct",""))',
        ],
      ),
    ),
  ),
  namedLine(
    'surface_kind',
    words('Outer face'),
    given(
      { asks: 'What is the outer face of the wrap?', choices: [...surfaces], usual: 'bright foil' },
      { content: 'bright foil' },
    ),
    words('bright foil stays cooler than a dull jacket'),
  ),
  namedLine(
    'surface_face',
    words('Side of the duct'),
    given(
      {
        asks: 'Which side of the duct is looked at? The underside sweats first.',
        choices: [...ductFaces],
        usual: 'underside',
      },
      { content: 'underside' },
    ),
    words('the underside is the coldest'),
  ),
  emptyLine,
  line(heading('To order'), null, heading('Unit')),
  line(
    words('The whole run'),
    check(
      firstOf(
        [notMeasured, '""'],
        [`NOT(ISNUMBER(${ofChosen('D')}))`, '"stop: the order is without the wrap; see its check above"'],
      ),
    ),
    words('do not order while this says stop'),
  ),
  line(
    figured(`IF(ISNUMBER(${ofChosen('D')}),job_wrap,"Wrap")`),
    figured(`IF(ISNUMBER(${ofChosen('D')}),${ofChosen('D')},0)`, count),
    figured(
      `IFERROR("rolls "&INDEX(Allowances!K2:K9,${place})&" in × "&INDEX(Allowances!L2:L9,${place})&" ft","rolls")`,
    ),
  ),
  line(
    words('Facing tape'),
    figured(`IF(ISNUMBER(${ofChosen('D')}),SEAL.ROLLS(facing_needed,facing_roll,tape_waste),0)`, count),
    figured('"rolls of "&facing_roll&" ft"'),
  ),
  line(
    words('Staples'),
    figured(
      `IF(ISNUMBER(${ofChosen('D')}),${wholeUp('SEAL.STAPLES(duct_length,staple_spacing)/staple_box')},0)`,
      count,
    ),
    figured('"boxes of "&staple_box'),
  ),
  line(
    words('Pins with clips'),
    figured(
      `IF(AND(ISNUMBER(${ofChosen('D')}),duct_shape="rectangular"),${wholeUp('WRAP.PINS(duct_width,duct_length,pin_spacing,pins_from)/pin_box')},0)`,
      count,
    ),
    figured('"boxes of "&pin_box'),
  ),
  emptyLine,
  namedLine(
    'facing_needed',
    words('Facing to close'),
    figured(
      `IF(ISNUMBER(${ofChosen('D')}),IF(duct_shape="round",SEAL.FACING("round",duct_width,,duct_length,job_wrap,wraps,facing_ends),SEAL.FACING("rectangular",duct_width,duct_depth,duct_length,job_wrap,wraps,facing_ends)),"")`,
      feetAndInches,
    ),
    words('its long seam and its rings'),
  ),
  line(words('Price of the wrap'), figured(ofChosen('E'), dollars), words('whole rolls, without tax')),
];

const firstOrderRow = lines.findIndex((one) => one.cells[0]?.content === 'To order') + 1;

export const job: Form = form({
  id: 'job',
  name: 'Job',
  says: 'Say what is wrapped and in which air it hangs, choose on Compare, and read here what to buy.',
  widths: [20, 21, 36],
  lines,
  blocks: { order: `A${firstOrderRow}:C${firstOrderRow + 5}` },
});
