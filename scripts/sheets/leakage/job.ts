import { leakageEditions, sealClasses } from '../../../src/trade/air/leakage.ts';
import { leastTables } from '../../../src/trade/gauge/least.ts';
import { limitCodes, testStages } from '../../../src/trade/seal/limit.ts';
import { neededCodes } from '../../../src/trade/wrap/needed.ts';
import {
  check,
  cubicFeet,
  degrees,
  figured,
  given,
  heading,
  inchesOfWater,
  onBelow,
  squareFeet,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, line, namedLine } from '../form.ts';
import { cautions, jobHead } from '../head.ts';
import { whichGaugeTable } from '../questions.ts';
import { firstOf } from '../sentences.ts';
import { saysStop } from '../stops.ts';
import { runLines, runsTotalRow } from './runs.ts';

const notCounted = `TEXTJOIN(", ",TRUE,${runLines.all('not counted')})`;
const said = runLines.all('check');
const hasRuns = `TEXTJOIN("",TRUE,${said})<>""`;
const oneDecimal = { unit: 'cfm', format: { type: 'decimal', places: 1 } } as const;
const aShare = { unit: 'percent', format: { type: 'percent', places: 1 } } as const;

const shareSays = (share: string, what: string) =>
  firstOf(
    [`${share}=""`, '""'],
    [`${share}>leak_stop`, `"stop: ${what} more than Allowances allows; seal the duct and test it again"`],
    [`${share}>leak_look`, `"look: ${what} much of its air; see what is not sealed yet"`],
  );

export const job: Form = form({
  id: 'job',
  name: 'Job',
  says: 'Say which codes are law here and how the duct is sealed; see what leaks, and whether each run is as asked.',
  widths: [22, 20, 36],
  lines: [
    ...jobHead(
      'Before you rely on it',
      [
        cautions.localCode,
        'Editions differ, and places change them: ask.',
        'An estimate is no test: have the duct tested.',
        'Sealing a return: have burners checked.',
        cautions.fiber,
      ],
      { label: 'Who checks', asks: 'Who checks the duct?' },
    ),
    emptyLine,
    line(heading('The law here')),
    namedLine(
      'code_r',
      words('R needed by'),
      given(
        {
          asks: 'Which document and edition tells the R of a duct here? Ask the local code.',
          choices: [...neededCodes],
          usual: 'IECC 2015 homes',
        },
        { content: 'IECC 2015 homes' },
      ),
      words('homes and commercial buildings have tables of their own', onBelow),
    ),
    namedLine(
      'code_zone',
      words('Climate zone'),
      given(
        {
          asks: 'Which climate zone is it? Only the commercial tables ask for it.',
          least: 1,
          most: 8,
          why: 'there are eight zones',
          mayBeBlank: true,
        },
        { unit: 'count' },
      ),
      words('only where the table asks for it'),
    ),
    namedLine(
      'code_difference',
      words('Difference at design'),
      given(
        {
          asks: 'How far is the air in the duct from its surroundings? Only some codes ask for it.',
          least: 0,
          most: 200,
          why: 'no duct of a building differs more',
          mayBeBlank: true,
        },
        degrees,
      ),
      words('only where the table asks for it'),
    ),
    namedLine(
      'gauge_table',
      words('Least gauge by'),
      whichGaugeTable,
      words(leastTables.join(', '), onBelow),
    ),
    namedLine(
      'code_test',
      words('Test limit by'),
      given(
        {
          asks: 'Which code and edition limits the leakage that is tested?',
          choices: [...limitCodes],
          usual: 'IRC 2018',
        },
        { content: 'IRC 2018' },
      ),
      words(limitCodes.join(', '), onBelow),
    ),
    emptyLine,
    line(heading('The duct'), null, heading('Check')),
    namedLine(
      'duct_airflow',
      words('Airflow of the fan'),
      given(
        {
          asks: 'How much air does the fan move?',
          least: 50,
          most: 100_000,
          why: 'no fan of a duct system moves less or more',
        },
        cubicFeet,
      ),
    ),
    namedLine(
      'duct_pressure',
      words('Pressure in the duct'),
      given(
        {
          asks: 'Which static pressure has the duct when it runs, as a mean of its length?',
          least: 0.01,
          most: 10,
          why: 'duct is made for at most 10 in. w.g.',
          usual: 0.5,
        },
        { content: 0.5, ...inchesOfWater },
      ),
    ),
    namedLine(
      'seal_class',
      words('Seal class'),
      given(
        {
          asks: 'What is sealed: C cross joints, B seams too, A what goes through the walls too?',
          choices: [...sealClasses],
          usual: 'C',
        },
        { content: 'C' },
      ),
      check(
        firstOf(
          [
            'AND(duct_pressure>=seal_a_from,seal_class<>"A")',
            '"stop: from "&seal_a_from&" in. w.g. on, seal class A is asked for"',
          ],
          [
            'AND(duct_pressure>=seal_b_from,seal_class<>"A",seal_class<>"B")',
            '"stop: from "&seal_b_from&" in. w.g. on, seal class B is asked for"',
          ],
          [
            'AND(duct_pressure>=seal_c_from,seal_class="unsealed")',
            '"stop: from "&seal_c_from&" in. w.g. on, seal class C is asked for"',
          ],
          ['seal_class="unsealed"', '"look: energy codes ask for sealed duct at every pressure"'],
        ),
      ),
    ),
    namedLine(
      'class_edition',
      words('Manual of leakage, edition'),
      given(
        {
          asks: 'Which edition of the leakage test manual tells the class that a seal keeps?',
          choices: leakageEditions.map(String),
          usual: '2012',
        },
        { content: '2012' },
      ),
      words('1985 and 2012 differ'),
    ),
    emptyLine,
    line(heading('What is thought to leak'), null, heading('Check')),
    namedLine(
      'duct_surface',
      words('Surface of the duct'),
      figured(`Runs!M${runsTotalRow}`, squareFeet),
      check(
        firstOf(
          [`NOT(${hasRuns})`, '""'],
          [`${notCounted}<>""`, `"stop: it is without "&${notCounted}&"; their checks say why"`],
        ),
      ),
    ),
    namedLine('leakage', words('Leakage'), figured(`Runs!O${runsTotalRow}`, oneDecimal)),
    namedLine(
      'leak_share',
      words('Share of the airflow'),
      figured('IF(OR(duct_airflow="",leakage=0),"",SEAL.SHARE(leakage,duct_airflow))', aShare),
      check(shareSays('leak_share', 'the duct is thought to lose')),
    ),
    emptyLine,
    line(heading('What the test says'), null, heading('Check')),
    namedLine(
      'test_leakage',
      words('Leakage at 25 Pa'),
      given(
        {
          asks: 'How much leaked in the test at 25 Pa? Blank before the test.',
          least: 0.01,
          most: 100_000,
          why: 'a test that reads less has lost its hose',
          mayBeBlank: true,
        },
        oneDecimal,
      ),
    ),
    namedLine(
      'test_floor',
      words('Floor area'),
      given(
        {
          asks: 'How many square feet of conditioned floor does the system serve?',
          least: 50,
          most: 100_000,
          why: 'no system of a house serves less or more',
          mayBeBlank: true,
        },
        squareFeet,
      ),
    ),
    namedLine(
      'test_stage',
      words('When it is tested'),
      given(
        { asks: 'When is it tested?', choices: [...testStages], usual: 'rough-in' },
        { content: 'rough-in' },
      ),
    ),
    namedLine(
      'test_limit',
      words('Limit'),
      figured('IF(test_floor="","",SEAL.LIMIT(code_test,test_floor,test_stage))', oneDecimal),
      check(
        firstOf(
          ['AND(test_leakage="",test_floor="")', '""'],
          ['test_floor=""', '"stop: still to fill in: floor area"'],
          [
            'ISERROR(test_limit)',
            '"stop: this code tells no limit for such a test; the cell beside says why"',
          ],
          ['test_leakage=""', '""'],
          [
            'test_leakage>test_limit',
            '"stop: more leaks than the code allows; seal the duct and test it again"',
          ],
        ),
      ),
    ),
    namedLine(
      'test_running',
      words('At the pressure of the duct'),
      figured(
        'IF(test_leakage="","",AIR.ATPRESSURE(test_leakage,25/249.08891,duct_pressure,test_exponent))',
        oneDecimal,
      ),
      words('as if all of it had the pressure of the duct', onBelow),
    ),
    namedLine(
      'test_share',
      words('Share of the airflow'),
      figured('IF(OR(test_running="",duct_airflow=""),"",SEAL.SHARE(test_running,duct_airflow))', aShare),
      check(shareSays('test_share', 'as it runs the duct loses')),
    ),
    namedLine(
      'test_class',
      words('Leakage class it shows'),
      figured(
        'IF(OR(test_leakage="",duct_surface=0),"",AIR.TESTCLASS(test_leakage,duct_surface,25/249.08891))',
        { unit: 'ratio', format: { type: 'decimal', places: 1 } },
      ),
      words('cfm for 100 sq ft at 1 in. w.g.', onBelow),
    ),
    emptyLine,
    line(heading('The runs')),
    line(
      words('Wrap and gauge'),
      check(
        firstOf(
          [`NOT(${hasRuns})`, '"look: no run is filled in yet"'],
          [saysStop(said), '"stop: a run is not as the code asks; see Runs"'],
        ),
      ),
      words('do not pass it on while this says stop'),
    ),
  ],
});
