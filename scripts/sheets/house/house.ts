import { leastTables } from '../../../src/trade/gauge/least.ts';
import { neededCodes } from '../../../src/trade/wrap/needed.ts';
import { stretchOutMethods } from '../../../src/trade/wrap/stretch-out.ts';
import type { Cell } from '../../../src/workbook/document.ts';
import {
  check,
  count,
  cubicFeet,
  dollars,
  factor,
  feetAndInches,
  figured,
  frictionRate,
  gauge,
  given,
  heading,
  hours,
  inches,
  onBelow,
  pounds,
  resistance,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { cautions, lotHead } from '../head.ts';
import { whichPressure } from '../questions.ts';
import { firstOf } from '../sentences.ts';
import { looksIn, saysStop } from '../stops.ts';
import { blanks, branches, flexIsUnderCode, type Plan, rooms, trunk, wraps } from './plan.ts';

export function houseForm(plan: Plan): Form {
  const mayBeMade = firstOf(
    [`COUNTA(${rooms.all('room')})=0`, '"look: no room is filled in yet; begin on Rooms"'],
    [`COUNTA(${trunk.all('mark')})=0`, '"look: no section is filled in yet; go on with Trunk"'],
    [flexIsUnderCode(plan), '"stop: the flex has less R than the code asks for; see Rooms"'],
    [`${saysStop(rooms.all('check'))}`, '"stop: a room cannot be served as it stands; see Rooms"'],
    [`${saysStop(trunk.all('check'))}`, '"stop: a section cannot be made as it stands; see Trunk"'],
    [
      `COUNTIF(${blanks.all('fit')},"holds")<COUNT(${blanks.all('width')})`,
      '"stop: a blank cannot be cut as it stands; see Blanks"',
    ],
    [`${saysStop(wraps.all('check'))}`, '"stop: a wrap has less R than the code asks for; see Wrap"'],
    ['NOT(wrap_is_ready)', '"stop: no wrap of this name is finished on Allowances"'],
  );
  return form({
    id: 'house',
    name: 'House',
    says: 'Say which house it is and how it is built; read here what it comes to. Rooms and trunk follow on their own sheets.',
    widths: [25, 16, 36],
    lines: [
      ...lotHead('Before you begin', [
        cautions.edges,
        cautions.fiber,
        'In attics mind heat, nails, wires, your step.',
        cautions.sealFirst,
        cautions.localCode,
      ]),
      emptyLine,
      line(heading('What the house is'), null, null),
      chosen(
        'hand',
        'Built as drawn',
        'Is the house built as it is drawn, or mirrored?',
        'as drawn',
        ['as drawn', 'mirrored'],
        'mirrored: turn every handed fitting over, and read the plan from its back',
      ),
      chosen(
        'extra_room',
        `With the ${plan.extra}`,
        `Has the house the ${plan.extra}?`,
        'no',
        ['yes', 'no'],
        `its line on Rooms then counts`,
      ),
      namedLine(
        'job_wrap',
        words('Wrap of the trunk'),
        given(
          { asks: 'Which wrap goes on? Type its name from the wraps on Allowances.', usual: 'R-8 wrap' },
          { content: 'R-8 wrap' },
        ),
        words('one of the wraps on Allowances'),
      ),
      namedLine(
        'flex_r',
        words('R of the flex'),
        given(
          {
            asks: 'Which R is printed on the flex?',
            least: 4,
            most: 12,
            why: 'flex is made with R-4.2 to R-12',
            usual: 8,
          },
          { content: 8, unit: 'r', format: { type: 'decimal', places: 0 } },
        ),
        words('flex is made with R-4.2, R-6 and R-8'),
      ),
      chosen(
        'trunk_shape',
        'Shape of the trunk',
        'Is the trunk round or rectangular?',
        'round',
        ['round', 'rectangular'],
        'a section on Trunk may have its own',
      ),
      namedLine(
        'trunk_depth',
        words('Depth of a rectangular trunk'),
        given(
          {
            asks: 'How deep may a rectangular trunk be where it hangs?',
            least: 4,
            most: 36,
            why: 'a trunk of a house is 4 in to 3 ft deep',
            usual: 8,
          },
          { content: 8, ...inches },
        ),
        words('what there is room for'),
      ),
      namedLine(
        'plan_scale',
        words('Scale of the plan'),
        given(
          {
            asks: 'How much larger is this house than the plan? 1 for as drawn, 1.05 for a twentieth longer.',
            least: 0.5,
            most: 2,
            why: 'a house half or twice as long is another plan',
            usual: 1,
          },
          { content: 1, ...factor },
        ),
        words('stretches trunk, branches and longest way'),
      ),
      namedLine(
        'difficulty',
        words('How hard to work there'),
        given(
          {
            asks: 'How much longer does work at the house take than usual? 1 for as usual, 1.2 for a fifth longer.',
            least: 0.5,
            most: 3,
            why: 'work that takes three times as long is another job',
            usual: 1,
          },
          { content: 1, ...factor },
        ),
        words('for the work at the house, not in the shop'),
      ),
      emptyLine,
      line(heading('How it is made'), null, null),
      namedLine(
        'job_gauge',
        words('Gauge'),
        given(
          {
            asks: 'Which gauge is the trunk made of?',
            least: 14,
            most: 30,
            why: 'duct is made of 14 to 30 ga sheet',
            usual: 26,
          },
          { content: 26, ...gauge },
        ),
        words('galvanized; a section may have its own'),
      ),
      chosen(
        'gauge_table',
        'Least gauge by',
        'Which table of least gauges is law here? Ask the local code.',
        'dwelling code',
        [...leastTables, 'not checked'],
        leastTables.join(', '),
      ),
      namedLine(
        'static_pressure',
        words('Static pressure'),
        whichPressure,
        words('decides the least gauge, and whether long seams are sealed'),
      ),
      chosen(
        'wrap_code',
        'Least R by',
        'Which code says how much R the ducts need? Ask the local code.',
        'IECC 2015 homes',
        [...neededCodes.filter((code) => !code.includes('commercial')), 'not checked'],
        'the edition that is law at the place',
      ),
      chosen(
        'wrap_method',
        'How wrap is worked out',
        'By the published table, by geometry, or by this shop’s own figures?',
        'published',
        [...stretchOutMethods],
        'published, geometry or shop',
      ),
      emptyLine,
      line(heading('What it comes to'), null, null),
      namedLine(
        'fittings_hand',
        words('Handed fittings'),
        figured('IF(hand="mirrored","turned over","as drawn")'),
        words('lay their patterns face down where the house is mirrored', onBelow),
      ),
      result('Air to the rooms', `SUM(${rooms.all('airflow')})`, cubicFeet, ''),
      ...plan.systems.map((one) =>
        result(
          plan.systems.length > 1 ? `Friction rate, ${one.name}` : 'Friction rate',
          `${one.prefix}friction_rate`,
          frictionRate,
          'what the blower leaves for 100 ft of duct; see Air',
        ),
      ),
      result('Branches', branches.from('branches', branches.last + 1), count, ''),
      result(
        'Flex',
        branches.from('bought', branches.last + 1),
        { unit: 'ft', format: { type: 'decimal', places: 0 } },
        'at full stretch, without what is lost at the ends',
      ),
      result('Trunk', blanks.from('length', blanks.last + 1), feetAndInches, ''),
      result(
        'Sheet metal',
        blanks.from('weight', blanks.last + 1),
        pounds,
        'blanks of the trunk as cut; fittings are not in it',
      ),
      result('Sheets', blanks.from('sheets', blanks.last + 1), count, 'each section on sheets of its own'),
      result(
        'R left, the least',
        `IF(COUNT(${wraps.all('left')})=0,"",MIN(${wraps.all('left')}))`,
        resistance,
        'by geometry, of all wrapped sections',
      ),
      result('Rolls of wrap', 'wrap_rolls', count, ''),
      result('Hours', 'labor_hours', hours, 'in the shop and at the house'),
      result(
        'Price',
        'price',
        { ...dollars, style: { bold: true } },
        'with the tax that the customer pays; see Price',
      ),
      result(
        'Worth a look',
        `${looksIn(rooms.all('check'))}+${looksIn(trunk.all('check'))}+${looksIn(wraps.all('check'))}`,
        count,
        'rooms, sections and wraps',
      ),
      line(words('The house'), check(mayBeMade), words('do not cut while this says stop')),
    ],
  });
}

function chosen(
  name: string,
  label: string,
  asks: string,
  usual: string,
  choices: readonly string[],
  says: string,
): Line {
  return namedLine(
    name,
    words(label),
    given({ asks, choices, usual }, { content: usual }),
    words(says, onBelow),
  );
}

function result(label: string, formula: string, more: Partial<Cell>, says: string): Line {
  return line(words(label), figured(formula, more), words(says, onBelow));
}
