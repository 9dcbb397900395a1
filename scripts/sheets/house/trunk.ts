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
  noted,
} from '../cells.ts';
import { type Form, form, type Line } from '../form.ts';
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
    widths: [9, several ? 12 : 8, 9, 9, 7, 6, 24, 9, 11, 12, 10, 10, 10, 12],
    lines: [
      trunk.line({
        mark: heading('Section'),
        fed: heading('Fed by'),
        length: heading('Long'),
        airflow: noted(
          heading('Air'),
          'The air of all rooms on this section and on every section that it feeds.',
        ),
        made_width: noted(
          heading('Made'),
          'The next size up that keeps the friction rate and the speed on Allowances, never narrower than its widest branch; or the size under Own width, whose check then tells when it is too small.',
        ),
        made_depth: heading('by'),
        check: heading('Check'),
        velocity: heading('Speed'),
        round: heading('By the rate'),
        shape: heading('Own shape'),
        width: heading('Own width'),
        depth: heading('Own depth'),
        gauge: heading('Own gauge'),
        system: several ? heading('System') : null,
      }),
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
  const plenums = plan.systems.map((one) => one.name);
  const whole = `AND(${at('mark')}<>"",${at('length')}<>""${several ? `,${at('system')}<>""` : ''})`;
  const step = (size: string, by: string) => `ROUNDUP(ROUND(${size}/${by},6),0)*${by}`;
  const before = row === trunk.rows[0] ? null : `A${trunk.rows[0]}:A${row - 1}`;
  const systemsBefore = row === trunk.rows[0] ? null : `N${trunk.rows[0]}:N${row - 1}`;
  const absent = missing(
    [`${at('mark')}=""`, 'mark'],
    [`${at('length')}=""`, 'length'],
    ...(several ? ([[`${at('fed')}=""`, 'what feeds it']] as const) : []),
  );
  const isUnfed = several
    ? `${at('system')}=""`
    : before
      ? `IF(${at('fed')}="",FALSE,COUNTIF(${before},${at('fed')})=0)`
      : `${at('fed')}<>""`;
  const size = `IF(${shape}="round",${at('made_width')},MAX(${at('made_width')},${at('made_depth')}))`;
  const least = `GAUGE.LEAST(${shape},${size},static_pressure,,gauge_table)`;
  const sheet = blanks.from('gauge', row);
  const takes = `AIR.FRICTION(${at('airflow')},${shape},${at('made_width')},IF(${shape}="round","",${at('made_depth')}))`;
  return trunk.line({
    mark: given({ asks: 'What mark goes on this section, such as T1?', ...open }),
    fed: given(
      several
        ? {
            asks: `What feeds it: the plenum of a system (${plenums.join(' or ')}), or a section on a line above?`,
            ...open,
          }
        : {
            asks: 'Which section feeds it? Blank means the plenum. The feeding section stands on a line above.',
            mayBeBlank: true,
          },
    ),
    length: given(
      {
        asks: 'How long is it on the plan, step to step?',
        least: 6,
        most: 1200,
        why: 'a section under 6 in or over 100 ft is most likely a slip of the unit',
        ...open,
      },
      feetAndInches,
    ),
    shape: given({
      asks: 'Is this section round or rectangular? Blank means as the house.',
      choices: ['round', 'rectangular'],
      mayBeBlank: true,
    }),
    width: given(
      { asks: 'Which diameter or width is it made with? Blank means as its air needs.', ...side },
      inches,
    ),
    depth: given(
      { asks: 'How deep is it? Blank means the depth of the house; round has none.', ...side },
      inches,
    ),
    gauge: given(
      {
        asks: 'What gauge is it? Blank means the gauge of the house.',
        least: 14,
        most: 30,
        why: 'duct is made of 14 to 30 ga sheet',
        mayBeBlank: true,
      },
      gauge,
    ),
    airflow: figured(
      `IF(${whole},SUMIF(${rooms.all('section')},${at('mark')},${rooms.all('airflow')})+SUMIF(${trunk.below('fed', row)},${at('mark')},${trunk.below('airflow', row)}),"")`,
      cubicFeet,
    ),
    round: figured(
      `IF(OR(${at('airflow')}="",${rate}=""),"",IF(${at('airflow')}<1,"",AIR.DIAMETER(${at('airflow')},${rate},trunk_speed)))`,
      exactInches,
    ),
    made_width: figured(
      isSized(
        `IF(${at('width')}<>"",${at('width')},IF(${shape}="round",MAX(${step(at('round'), 'round_step')},MAXIFS(${rooms.all('flex')},${rooms.all('section')},${at('mark')})),${step(`MAX(smallest_side,AIR.WIDTH(${at('round')},${depth},12))`, 'width_step')}))`,
      ),
      inches,
    ),
    made_depth: figured(isSized(`IF(${shape}="round","",${depth})`), inches),
    velocity: figured(
      isSized(`AIR.VELOCITY(${at('airflow')},${shape},${at('made_width')},${at('made_depth')})`),
      feetAMinute,
    ),
    check: check(
      firstOf(
        [allBlank(row, ['A', 'B', 'C', 'J', 'K', 'L', 'M']), '""'],
        [`${absent}<>""`, `"stop: still to fill in: "&${absent}`],
        [`COUNTIF(${trunk.beside('mark')},${at('mark')})>1`, '"stop: another section has this mark too"'],
        [isUnfed, '"stop: the section that feeds it must stand on a line above"'],
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
    system: several
      ? figured(
          `IF(OR(${plenums.map((one) => `${at('fed')}="${one}"`).join(',')}),${at('fed')},${before ? `IFERROR(INDEX(${systemsBefore},MATCH(${at('fed')},${before},0)),"")` : '""'})`,
        )
      : null,
  });
}
