import {
  check,
  count,
  cubicFeet,
  feetAMinute,
  feetAndInches,
  figured,
  given,
  heading,
  heat,
  inches,
  noted,
  words,
} from '../cells.ts';
import { type Form, form, type Line } from '../form.ts';
import { allBlank, firstOf, missing } from '../sentences.ts';
import { ofSystem, type Plan, rooms, trunk, unlessBlank } from './plan.ts';

export function roomsForm(plan: Plan): Form {
  return form({
    id: 'rooms',
    name: 'Rooms',
    says: 'Fill in a line for each room: its load, or the air it gets, how long its branches are, and which section they leave.',
    widths: [16, 10, 8, 8, 7, 8, 5, 18, 9, 9, 9, 12, 11, 12],
    lines: [
      rooms.line({
        room: heading('Room'),
        load: heading('Load'),
        branches: noted(
          heading('Branches'),
          'Two branches of 6 in are often quieter than one of 8 in, and each gets its own outlet.',
        ),
        length: heading('Long'),
        section: heading('Leaves'),
        airflow: heading('Air'),
        flex: noted(
          heading('Flex'),
          'The next stocked size that carries the air of a branch at the friction rate from Air, at the slack on Allowances and no faster than there; never under the smallest branch that the shop hangs.',
        ),
        check: heading('Check'),
        each: heading('Each'),
        velocity: heading('Speed'),
        own: heading('Own cfm'),
        only: heading('Only with'),
        counts: heading('Counts'),
        system: plan.systems.length > 1 ? heading('System') : null,
      }),
      ...rooms.rows.map((row) => roomLine(plan, row)),
      rooms.line({
        room: words('Total'),
        airflow: figured(`SUM(${rooms.beside('airflow')})`, cubicFeet),
      }),
    ],
  });
}

function roomLine(plan: Plan, row: number): Line {
  const at = (column: Parameters<typeof rooms.at>[0]) => rooms.at(column, row);
  const open = row === rooms.rows[0] ? {} : { mayBeBlank: true };
  const left = ofSystem(plan, at('system'), 'airflow_left');
  const load = ofSystem(plan, at('system'), 'load_by_share');
  const rate = ofSystem(plan, at('system'), 'friction_rate');
  const needed = ofSystem(plan, at('system'), 'needed_r');
  const inTrunk = `MATCH(${at('section')},${trunk.all('mark')},0)`;
  const several = plan.systems.length > 1;
  return rooms.line({
    room: given({ asks: 'What is this room called?', ...open }),
    load: given(
      {
        asks: 'What is the load of this room that decides its air, by the load calculation?',
        least: 100,
        most: 60_000,
        why: 'a room of a house has a few hundred to some ten thousand Btu/h',
        ...open,
      },
      heat,
    ),
    own: given(
      {
        asks: 'Does it get a fixed airflow in place of its share? Leave it blank for the share.',
        least: 10,
        most: 1000,
        why: 'less than 10 cfm is no supply, and more than 1,000 is another system',
        mayBeBlank: true,
      },
      cubicFeet,
    ),
    branches: given(
      {
        asks: 'How many branches carry its air? Blank means one.',
        least: 1,
        most: 8,
        why: 'more than 8 branches to a room is most likely a slip',
        usual: 1,
        mayBeBlank: true,
      },
      count,
    ),
    length: given(
      {
        asks: 'How long is each of its branches on the plan, from the trunk to the boot?',
        least: 12,
        most: 720,
        why: 'a branch under 1 ft or over 60 ft is most likely a slip of the unit',
        ...open,
      },
      feetAndInches,
    ),
    section: given({ asks: 'Which section of the trunk do they leave? Type its mark from Trunk.', ...open }),
    only: given({
      asks: `Is this room only there in a house with a ${plan.extra}? Leave it blank for every house.`,
      choices: [plan.extra],
      mayBeBlank: true,
    }),
    airflow: figured(
      `${several ? `IF(${at('system')}="","",` : ''}IF(${at('counts')}="by own cfm",${at('own')},IF(${at('counts')}="by load",IF(${left}>=1,AIR.SHARE(${at('load')},${load},${left}),""),""))${several ? ')' : ''}`,
      cubicFeet,
    ),
    each: figured(
      unlessBlank(at('airflow'), `${at('airflow')}/IF(${at('branches')}="",1,${at('branches')})`),
      cubicFeet,
    ),
    flex: figured(
      `IF(OR(${at('each')}="",${rate}=""),"",MAX(smallest_flex,AIR.DIAMETER(${at('each')},${rate},flex_speed,flex_step,flex_roughness,flex_slack)))`,
      inches,
    ),
    velocity: figured(
      unlessBlank(at('flex'), `AIR.VELOCITY(${at('each')},"round",${at('flex')})`),
      feetAMinute,
    ),
    check: check(
      firstOf(
        [`${at('counts')}=""`, '""'],
        [`${at('counts')}="unfinished"`, `"stop: still to fill in: "&${absent(row)}`],
        [`${at('counts')}="not here"`, '"holds"'],
        [`ISERROR(${inTrunk})`, '"stop: no section on Trunk has this mark"'],
        ...(several
          ? ([[`${at('system')}=""`, '"stop: no system feeds this section; see Trunk"']] as const)
          : []),
        [`${left}<0`, '"stop: the rooms with air of their own take more than the system has; see Air"'],
        [
          `flex_r<${needed}`,
          `"stop: the flex is R "&ROUND(flex_r,2)&", and the code asks for R "&ROUND(${needed},2)&" where it hangs; choose another on House"`,
        ],
        [`${at('airflow')}=""`, '"stop: no air is left for this room; see Air"'],
        [`${at('flex')}=""`, '"stop: there is no friction rate to size it by; see Air"'],
        [
          `IFERROR(${at('flex')}>INDEX(${trunk.all('made_width')},${inTrunk}),FALSE)`,
          '"stop: the branch is wider than its trunk; give the room more branches"',
        ],
        [
          `${at('length')}*plan_scale>flex_bag*12`,
          '"look: longer than one bag of flex; see whether the trunk should come nearer"',
        ],
      ),
    ),
    counts: figured(
      firstOfWords(
        [allBlank(row, ['A', 'B', 'C', 'D', 'E', 'K', 'L']), ''],
        [`AND(${at('only')}="${plan.extra}",extra_room<>"yes",${at('room')}<>"")`, 'not here'],
        [`${absent(row)}<>""`, 'unfinished'],
        [`${at('own')}<>""`, 'by own cfm'],
        ['TRUE', 'by load'],
      ),
    ),
    system: several
      ? figured(
          `IFERROR(IF(INDEX(${trunk.all('system')},${inTrunk})="","",INDEX(${trunk.all('system')},${inTrunk})),"")`,
        )
      : null,
  });
}

function absent(row: number): string {
  const at = (column: Parameters<typeof rooms.at>[0]) => rooms.at(column, row);
  return missing(
    [`${at('room')}=""`, 'room'],
    [`AND(${at('load')}="",${at('own')}="")`, 'load or own cfm'],
    [`${at('length')}=""`, 'branch length'],
    [`${at('section')}=""`, 'section that it leaves'],
  );
}

function firstOfWords(...cases: readonly (readonly [condition: string, word: string])[]): string {
  return cases.reduceRight((otherwise, [condition, word]) => `IF(${condition},"${word}",${otherwise})`, '""');
}
