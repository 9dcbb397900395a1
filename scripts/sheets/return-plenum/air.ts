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
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, line, namedLine } from '../form.ts';
import { firstOf } from '../sentences.ts';
import { returnLines } from './returns.ts';

const isKnown = (...names: readonly string[]) => `COUNT(${names.join(',')})=${names.length}`;
const whenKnown = (names: readonly string[], formula: string) => `IF(${isKnown(...names)},${formula},"")`;
const filters = ['filter_width', 'filter_height', 'filter_count'] as const;
const drop = ['drop_width', 'drop_depth', 'drop_length'] as const;
const brought = `SUM(${returnLines.all('airflow')})`;

const nominal = { least: 8, most: 60, why: 'filters of houses are 8 in to 5 ft' };
const dropSize = {
  least: 4,
  most: 60,
  why: 'a return drop is 4 in to 5 ft wide; leave it blank where there is none',
  mayBeBlank: true,
};

const slower = (size: string) => `"; it takes "&ROUND(${size},0)&" sq in to get down to "&filter_look&" fpm"`;

export const air: Form = form({
  id: 'air',
  name: 'Air',
  says: 'Say how much air the unit moves, its filter and its return drop; see whether the air is too fast.',
  widths: [24, 14, 38, 46],
  lines: [
    line(heading('The air'), null, heading('Check'), heading('What it is')),
    namedLine(
      'unit_airflow',
      words('Airflow of the unit'),
      given(
        {
          asks: 'How much air does the unit move? See its label or its data sheet; cooling takes about 400 cfm a ton.',
          least: 100,
          most: 5000,
          why: 'units of houses move 100 to 5,000 cfm',
        },
        cubicFeet,
      ),
      check(
        `IF(OR(unit_airflow="",${brought}=0),"",IF(ABS(${brought}-unit_airflow)>0.01*unit_airflow,"look: the grilles on Returns bring "&ROUND(${brought},0)&" cfm, and the unit moves "&ROUND(unit_airflow,0),"holds"))`,
      ),
      words('at the highest speed that is used'),
    ),
    emptyLine,
    line(heading('Filter')),
    namedLine(
      'filter_width',
      words('Width of a filter'),
      given({ asks: 'How wide is one filter, as it is sold?', ...nominal }, inches),
      null,
      words('nominal: the filter itself is a little smaller'),
    ),
    namedLine(
      'filter_height',
      words('Height of a filter'),
      given({ asks: 'How high is one filter, as it is sold?', ...nominal }, inches),
    ),
    namedLine(
      'filter_count',
      words('Filters side by side'),
      given(
        {
          asks: 'How many of these filters does the air pass side by side?',
          least: 1,
          most: 6,
          why: 'more than six filters belong to a larger unit',
          usual: 1,
        },
        { content: 1, ...count },
      ),
    ),
    namedLine(
      'filter_drop',
      words('Drop of the clean filter'),
      given(
        {
          asks: 'What pressure does a clean filter take at this airflow? See its package; blank if it does not say.',
          least: 0.01,
          most: 2,
          why: 'filters of houses take 0.01 to 1 in. w.g.',
          mayBeBlank: true,
        },
        inchesOfWater,
      ),
      check(
        'IF(filter_drop="","",IF(filter_drop>filter_drop_look,"look: this filter takes more pressure than Allowances allows; a thicker or a larger one takes less","holds"))',
      ),
      words('from its package, at this airflow'),
    ),
    namedLine(
      'filter_face',
      words('Velocity at its face'),
      figured(
        whenKnown(['unit_airflow', ...filters], 'unit_airflow*144/(filter_width*filter_height*filter_count)'),
        feetAMinute,
      ),
      check(
        `IF(filter_face="","",${firstOf(
          ['filter_face>filter_stop', `"stop: air is too fast for a filter"&${slower('filter_needed')}`],
          ['filter_face>filter_look', `"look: air is fast for a filter"&${slower('filter_needed')}`],
        )})`,
      ),
      words('airflow over the whole face'),
    ),
    namedLine(
      'filter_needed',
      words('Face that it should have'),
      figured('IF(unit_airflow="","",unit_airflow*144/filter_look)', {
        unit: 'ratio',
        format: { type: 'decimal', places: 0 },
      }),
      null,
      words('square inches, at the velocity on Allowances'),
    ),
    emptyLine,
    line(heading('Return drop')),
    namedLine(
      'drop_width',
      words('Width'),
      given({ asks: 'How wide is the return drop, if there is one?', ...dropSize }, inches),
      null,
      words('blank where flex alone brings the air', onBelow),
    ),
    namedLine(
      'drop_depth',
      words('Depth'),
      given({ asks: 'How deep is the return drop?', ...dropSize }, inches),
    ),
    namedLine(
      'drop_length',
      words('Length'),
      given(
        {
          asks: 'How long is the return drop, joint to joint?',
          least: 4,
          most: 600,
          why: 'a drop under 4 in or over 50 ft is most likely a slip of the unit',
          mayBeBlank: true,
        },
        inches,
      ),
    ),
    namedLine(
      'drop_wall',
      words('Opens into'),
      given({
        asks: 'Which wall of the plenum does the drop open into? Blank means its open end.',
        choices: ['front', 'right', 'back', 'left', 'top'],
        mayBeBlank: true,
      }),
      null,
      words('a wall of the box, or blank for its end'),
    ),
    namedLine(
      'drop_velocity',
      words('Velocity in the drop'),
      figured(
        whenKnown(
          ['unit_airflow', ...drop],
          'AIR.VELOCITY(unit_airflow,"rectangular",drop_width,drop_depth)',
        ),
        feetAMinute,
      ),
      check(
        firstOf(
          ['COUNT(drop_width,drop_depth,drop_length)=0', '""'],
          [
            `NOT(${isKnown(...drop)})`,
            '"stop: the drop needs its width, its depth and its length; leave all blank where there is none"',
          ],
          ['drop_velocity=""', '""'],
          ['drop_velocity>drop_stop', '"stop: air is too fast in the drop; make it wider or deeper"'],
          ['drop_velocity>drop_look', '"look: air is fast in the drop and may be heard"'],
        ),
      ),
      words('all the air of the unit'),
    ),
  ],
});
