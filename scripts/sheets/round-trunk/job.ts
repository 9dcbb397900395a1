import { stretchOutMethods } from '../../../src/trade/wrap/stretch-out.ts';
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
import { measured } from './piece-rows.ts';
import { notFinished } from './pieces.ts';
import { lessByGeometry } from './wrap.ts';

const cautions = [
  'Edges cut: wear cut-resistant gloves, sleeves.',
  'Glass fiber: sleeves, goggles and a dust mask.',
  'Cut one and try it on before you cut the rest.',
  'Seal every metal joint before the wrap goes on.',
  'Local code and licensed practice have the say.',
] as const;

const looks = `COUNTIF(Wrap!H2:H9,"${lessByGeometry}")`;

/** Sheets for the lines with a gauge of their own, and for those of them that name the gauge of the job. */
const ownGauge = 'SUMIF(Pieces!F2:F9,">0",Pieces!H12:H19)';
const jobGaugeOfItsOwn = 'SUMIF(Pieces!F2:F9,job_gauge,Pieces!H12:H19)';

const caution = (index: number) => words(cautions[index] ?? '');

export const job: Form = form({
  id: 'job',
  name: 'Job',
  says: 'Say what the job is; read here what it takes, what to watch and what to buy.',
  widths: [23, 19, 37],
  lines: [
    line(heading('This job'), null, heading('Before you cut')),
    line(words('Job'), given({ asks: 'What is this job called, such as the street and lot?' }), caution(0)),
    line(words('Address'), given({ asks: 'Where is the house?', mayBeBlank: true }), caution(1)),
    line(words('Shop'), given({ asks: 'Which shop makes it?', mayBeBlank: true }), caution(2)),
    line(
      words('Date'),
      given({ asks: 'Which day is it cut? Any way of writing it will do.', mayBeBlank: true }),
      caution(3),
    ),
    line(words('Who cuts'), given({ asks: 'Who cuts the metal and the wrap?' }), caution(4)),
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
    namedLine(
      'needed_r',
      words('R needed'),
      given(
        {
          asks: 'Which installed R does the local code or the customer ask for?',
          least: 0,
          most: 40,
          why: 'no code asks for more on a duct',
          usual: 8,
        },
        { content: 8, ...resistance },
      ),
      words('ask the local code; editions differ'),
    ),
    namedLine(
      'wrap_method',
      words('How wrap is worked out'),
      given(
        {
          asks: 'By the published table, by geometry, or by this shop’s own figures?',
          choices: [...stretchOutMethods],
          usual: 'published',
        },
        { content: 'published' },
      ),
      words('published, geometry or shop'),
    ),
    emptyLine,
    line(heading('How it stands')),
    line(
      words('Pieces'),
      figured('COUNTA(Pieces!A2:A9)', count),
      words('runs of duct, each on its own line'),
    ),
    line(words('Duct in all'), figured('SUM(Pieces!E2:E9)', feetAndInches)),
    line(words('Sheet metal'), figured('Pieces!F20', squareFeet), words('blanks as cut, without waste')),
    line(words('Weight of the metal'), figured('Pieces!G20', pounds)),
    line(
      words('R left, the least'),
      figured('IF(COUNT(Wrap!G2:G9)=0,"",MIN(Wrap!G2:G9))', resistance),
      words('by geometry, of all wrapped pieces'),
    ),
    line(words('Worth a look'), figured(looks, count), words('wraps to look at before they are cut')),
    line(
      words('Blanks and wraps'),
      check(
        `IF(OR(COUNTIF(Pieces!I12:I19,"holds")<B15,COUNTIF(Pieces!I12:I19,"${notFinished}")>0),` +
          '"stop: a blank cannot be cut as it stands; see Pieces",' +
          'IF(COUNTIF(Wrap!H2:H9,"holds")+B20<B15,"stop: a wrap cannot be cut as it stands; see Wrap",' +
          'IF(B15=0,"look: no piece is measured yet","holds")))',
      ),
      words('do not cut while this says stop'),
    ),
    emptyLine,
    line(heading('To order'), heading('How many'), heading('Of what')),
    line(
      figured('"Sheet metal, "&job_gauge&" ga"'),
      figured(`Pieces!H20-${ownGauge}+${jobGaugeOfItsOwn}`, count),
      figured('"sheets "&sheet_width&" × "&sheet_length&" in"'),
    ),
    line(
      figured(`IF(${ownGauge}-${jobGaugeOfItsOwn}=0,"","Sheet metal, other gauge")`),
      figured(`IF(${ownGauge}-${jobGaugeOfItsOwn}=0,"",${ownGauge}-${jobGaugeOfItsOwn})`, count),
      figured(`IF(${ownGauge}-${jobGaugeOfItsOwn}=0,"","sheets; the gauge stands on Pieces")`),
    ),
    line(words('Joint tape'), figured('joint_tape_rolls', count), figured('"rolls of "&tape_roll&" ft"')),
    line(words('Facing tape'), figured('facing_tape_rolls', count), figured('"rolls of "&facing_roll&" ft"')),
    line(words('Screws'), figured('screw_boxes', count), figured('"boxes of "&screw_box')),
    line(words('Staples'), figured('staple_boxes', count), figured('"boxes of "&staple_box')),
    ...measured.map((row, index) => wrapOrderLine(row, index + 12)),
  ],
  blocks: { order: 'A23:C37' },
});

/** Blank where the job has none of that wrap, so that only what is needed stands on the order. */
function wrapOrderLine(wrapRow: number, rollRow: number): Line {
  const unless = (formula: string) => `IF(Wrap!B${rollRow}="","",${formula})`;
  return line(
    figured(unless(`Wrap!A${rollRow}`)),
    figured(unless(`Wrap!B${rollRow}`), count),
    figured(unless(`"rolls "&Allowances!J${wrapRow}&" in × "&Allowances!K${wrapRow}&" ft"`)),
  );
}
