import {
  check,
  cubicFeet,
  exactInches,
  feetAMinute,
  feetAndInches,
  figured,
  gauge,
  given,
  heading,
  inches,
} from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { allBlank, firstOf, missing } from '../sentences.ts';
import { blanks, ofSystem, type Plan, rooms, trunk, unlessBlank } from './plan.ts';

const side = {
  least: 4,
  most: 60,
  why: 'a trunk of a house is 4 in to 5 ft wide, so it is most likely a slip of the unit',
  mayBeBlank: true,
};

export function trunkForm(plan: Plan): Form {
  const several = plan.systems.length > 1;
  return form({
    id: 'trunk',
    name: 'Trunk',
    says: 'Fill in a line for each section between two steps, from the plenum outward; leave its size blank and it is sized for its air.',
    widths: [9, 8, 10, 13, 8, 8, 7, 8, 9, 7, 7, 8, 24, ...(several ? [13] : [])],
    lines: [
      line(
        ...[
          'Section',
          'Fed by',
          'Length',
          'Shape',
          'Width',
          'Depth',
          'Gauge',
          'Air',
          'By the rate',
          'Made',
          'by',
          'Speed',
          'Check',
          ...(several ? ['System'] : []),
        ].map(heading),
      ),
      ...trunk.rows.map((row) => sectionLine(plan, row)),
    ],
  });
}

function sectionLine(plan: Plan, row: number): Line {
  const at = (column: Parameters<typeof trunk.at>[0]) => trunk.at(column, row);
  const several = plan.systems.length > 1;
  const open = row === trunk.rows[0] ? {} : { mayBeBlank: true };
  const rate = ofSystem(plan, at('system'), 'friction_rate');
  const shape = `IF(${at('shape')}="",trunk_shape,${at('shape')})`;
  const depth = `IF(${at('depth')}="",trunk_depth,${at('depth')})`;
  const isSized = (formula: string) => unlessBlank(at('round'), formula);
  const whole = `AND(${at('mark')}<>"",${at('length')}<>"")`;
  const step = (size: string, by: string) => `ROUNDUP(ROUND(${size}/${by},6),0)*${by}`;
  const before = row === trunk.rows[0] ? null : `A${trunk.rows[0]}:A${row - 1}`;
  const systemsBefore = row === trunk.rows[0] ? null : `N${trunk.rows[0]}:N${row - 1}`;
  const absent = missing(
    [`${at('mark')}=""`, 'mark'],
    [`${at('length')}=""`, 'length'],
    ...(several ? ([[`${at('system')}=""`, 'system']] as const) : []),
  );
  const size = `IF(${shape}="round",${at('made_width')},MAX(${at('made_width')},${at('made_depth')}))`;
  const least = `GAUGE.LEAST(${shape},${size},static_pressure,,gauge_table)`;
  const sheet = blanks.from('gauge', row);
  const takes = `AIR.FRICTION(${at('airflow')},${shape},${at('made_width')},IF(${shape}="round","",${at('made_depth')}))`;
  return line(
    given({ asks: 'What mark goes on this section, such as T1?', ...open }),
    given({
      asks: 'Which section feeds it? Blank means the plenum. The feeding section stands on a line above.',
      mayBeBlank: true,
    }),
    given(
      {
        asks: 'How long is it on the plan, step to step?',
        least: 6,
        most: 1200,
        why: 'a section under 6 in or over 100 ft is most likely a slip of the unit',
        ...open,
      },
      feetAndInches,
    ),
    given({
      asks: 'Is this section round or rectangular? Blank means as the house.',
      choices: ['round', 'rectangular'],
      mayBeBlank: true,
    }),
    given(
      { asks: 'Which diameter or width is it made with? Blank means as its air needs.', ...side },
      inches,
    ),
    given({ asks: 'How deep is it? Blank means the depth of the house; round has none.', ...side }, inches),
    given(
      {
        asks: 'What gauge is it? Blank means the gauge of the house.',
        least: 14,
        most: 30,
        why: 'duct is made of 14 to 30 ga sheet',
        mayBeBlank: true,
      },
      gauge,
    ),
    figured(
      `IF(${whole},SUMIF(${rooms.all('section')},${at('mark')},${rooms.all('airflow')})+SUMIF(${trunk.below('fed', row)},${at('mark')},${trunk.below('airflow', row)}),"")`,
      cubicFeet,
    ),
    figured(
      `IF(OR(${at('airflow')}="",${rate}=""),"",IF(${at('airflow')}<1,"",AIR.DIAMETER(${at('airflow')},${rate},trunk_speed)))`,
      exactInches,
    ),
    figured(
      isSized(
        `IF(${at('width')}<>"",${at('width')},IF(${shape}="round",${step(at('round'), 'round_step')},${step(`MAX(smallest_side,AIR.WIDTH(${at('round')},${depth},12))`, 'width_step')}))`,
      ),
      inches,
    ),
    figured(isSized(`IF(${shape}="round","",${depth})`), inches),
    figured(
      isSized(`AIR.VELOCITY(${at('airflow')},${shape},${at('made_width')},${at('made_depth')})`),
      feetAMinute,
    ),
    check(
      firstOf(
        [allBlank(row, ['A', 'B', 'C', 'D', 'E', 'F', 'G']), '""'],
        [`${absent}<>""`, `"stop: still to fill in: "&${absent}`],
        [`COUNTIF(${trunk.beside('mark')},${at('mark')})>1`, '"stop: another section has this mark too"'],
        [
          before ? `IF(${at('fed')}="",FALSE,COUNTIF(${before},${at('fed')})=0)` : `${at('fed')}<>""`,
          '"stop: the section that feeds it must stand on a line above"',
        ],
        ...(several && before
          ? ([
              [
                `IF(${at('fed')}="",FALSE,INDEX(${systemsBefore},MATCH(${at('fed')},${before},0))<>${at('system')})`,
                '"stop: it is fed by a section of the other system"',
              ],
            ] as const)
          : []),
        [`${at('airflow')}=0`, '"look: no room hangs on this section, so it is not made"'],
        [`${at('round')}=""`, '"stop: there is no friction rate to size it by; see Air"'],
        [
          `IF(gauge_table="not checked",FALSE,IFERROR(${sheet}>${least},FALSE))`,
          `"stop: "&${sheet}&" ga is too light; the "&gauge_table&" asks for "&${least}&" ga at least"`,
        ],
        [
          `IF(${at('width')}="",FALSE,${takes}>${rate})`,
          '"look: at this size it takes more than the friction rate; it is sized for less air"',
        ],
        [
          `AND(${shape}="rectangular",MAX(${at('made_width')},${at('made_depth')})>aspect_most*MIN(${at('made_width')},${at('made_depth')}))`,
          '"look: very flat; a deeper trunk takes less metal and less pressure"',
        ],
        [`${at('velocity')}>trunk_speed`, '"look: the air is faster than Allowances let it be in a trunk"'],
      ),
    ),
    ...(several
      ? [
          given({
            asks: 'Which system does it belong to?',
            choices: plan.systems.map((one) => one.name),
            ...open,
          }),
        ]
      : []),
  );
}
