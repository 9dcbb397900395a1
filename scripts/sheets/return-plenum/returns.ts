import {
  check,
  count,
  cubicFeet,
  cutInches,
  feetAMinute,
  feetAndInches,
  figured,
  given,
  heading,
  inches,
  squareFeet,
  wholeFeet,
  words,
} from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { allBlank, firstOf, ifFilled, missing } from '../sentences.ts';
import { table } from '../table.ts';
import { wholeDown, wholeUp } from '../whole.ts';
import { boxIsKnown } from './known.ts';

export const returnLines = table({
  sheet: 'Returns',
  columns: [
    'mark',
    'airflow',
    'grille width',
    'grille height',
    'flex',
    'length',
    'wall',
    'check',
    'grille velocity',
    'flex velocity',
    'hole',
    'boot wide',
    'boot long',
    'halves',
    'sheets',
    'seal',
    'screws',
    'not counted',
    'boot area',
    'flex counted',
  ],
  first: 2,
  count: 12,
});

export const walls = ['front', 'right', 'back', 'left', 'top'] as const;

const grille = {
  least: 4,
  most: 60,
  why: 'return grilles are 4 in to 5 ft',
  mayBeBlank: true,
};

const { at, beside, last } = returnLines;

export const returns: Form = form({
  id: 'returns',
  name: 'Returns',
  says: 'Fill in a line for each grille that a flex brings to the plenum; each gets a boot, a flex and a collar.',
  widths: [7, 9, 9, 9, 6, 10, 7, 20, 9, 9, 8, 11, 11, 8, 8, 9, 8, 12, 9, 9],
  lines: [
    line(
      ...[
        'Return',
        'Airflow',
        'Grille wide',
        'Grille high',
        'Flex',
        'Length',
        'Wall',
        'Check',
        'At grille',
        'In flex',
        'Hole',
        'Boot blank',
        'Length',
        'Halves',
        'Sheets',
        'To seal',
        'Screws',
        'Not counted',
        'Boot area',
        'Flex to buy',
      ].map(heading),
    ),
    ...returnLines.rows.map(returnLine),
    line(
      words('Total'),
      figured(`SUM(${beside('airflow')})`, cubicFeet),
      ...Array.from({ length: 11 }, () => null),
      figured(`SUM(${beside('halves')})`, count),
      figured(`SUM(${beside('sheets')})`, count),
      figured(`SUM(${beside('seal')})`, wholeFeet),
      figured(`SUM(${beside('screws')})`, count),
    ),
  ],
});

export const returnsTotalRow = last + 1;

function returnLine(row: number): Line {
  const cell = (column: Parameters<typeof at>[0]) => at(column, row);
  const [mark, airflow, width, height] = [
    cell('mark'),
    cell('airflow'),
    cell('grille width'),
    cell('grille height'),
  ];
  const [flex, length, wall] = [cell('flex'), cell('length'), cell('wall')];
  const absent = missing(
    [`${mark}=""`, 'mark'],
    [`${airflow}=""`, 'airflow'],
    [`${width}=""`, 'grille width'],
    [`${height}=""`, 'grille height'],
    [`${flex}=""`, 'flex'],
    [`${length}=""`, 'length'],
    [`${wall}=""`, 'wall'],
  );
  const across = `IF(OR(${wall}="right",${wall}="left"),box_depth,box_width)`;
  const up = `IF(${wall}="top",box_depth,box_height)`;
  const onWall = `SUMIF(${beside('wall')},${wall},${beside('flex')})+2*tap_edge*COUNTIF(${beside('wall')},${wall})`;
  const taken = `${onWall}+IF(drop_wall=${wall},drop_width,0)`;
  const counted = (formula: string) =>
    ifFilled(cell('check'), `IF(LEFT(${cell('check')},4)="stop","",${formula})`);
  const boot = (what: string, station = '') =>
    `BLANK.BOOT(${width},${height},${flex},boot_height,,,,1,"${what}",${station},"two halves",,,boot_seam)`;
  const side = (one: string, other: string) =>
    `${wholeDown(`sheet_width/${one}`)}*${wholeDown(`sheet_length/${other}`)}`;
  const onOneSheet = `MAX(${side(cell('boot wide'), cell('boot long'))},${side(cell('boot long'), cell('boot wide'))})`;
  return line(
    given({ asks: 'What mark goes on this return, such as R1?', mayBeBlank: true }),
    given(
      {
        asks: 'How much air comes in through its grille?',
        least: 20,
        most: 3000,
        why: 'one grille of a house brings 20 to 3,000 cfm',
        mayBeBlank: true,
      },
      cubicFeet,
    ),
    given({ asks: 'How wide is the grille, in the clear?', ...grille }, inches),
    given({ asks: 'How high is the grille, in the clear?', ...grille }, inches),
    given(
      {
        asks: 'What is the inside diameter of its flex?',
        least: 4,
        most: 24,
        why: 'flex is made from 4 to 24 in',
        mayBeBlank: true,
      },
      inches,
    ),
    given(
      {
        asks: 'How long does its flex run, pulled straight?',
        least: 6,
        most: 1200,
        why: 'a flex under 6 in or over 100 ft is most likely a slip of the unit',
        mayBeBlank: true,
      },
      feetAndInches,
    ),
    given({
      asks: 'Which wall of the plenum does its collar stand on?',
      choices: [...walls],
      mayBeBlank: true,
    }),
    check(
      firstOf(
        [allBlank(row, ['A', 'B', 'C', 'D', 'E', 'F', 'G']), '""'],
        [`${absent}<>""`, `"stop: still to fill in: "&${absent}`],
        [
          `COUNTIF(${beside('mark')},${mark})>1`,
          '"stop: another line has this mark too; give each return its own"',
        ],
        [`NOT(${boxIsKnown})`, '"stop: the box on Plenum is not measured yet"'],
        [
          `AND(${wall}="top",box_top="open")`,
          '"stop: the plenum has no top, so nothing can stand on it; choose a wall"',
        ],
        [
          `${flex}+2*tap_edge>MIN(${across},${up})`,
          '"stop: the collar is too large for this wall; choose another wall or a smaller flex"',
        ],
        [
          `${airflow}*144/(${width}*${height})>grille_look`,
          '"look: air is fast at this grille and may be heard; a larger grille slows it"',
        ],
        [
          `AIR.VELOCITY(${airflow},"round",${flex})>flex_look`,
          '"look: air is fast in this flex; a larger flex takes less pressure"',
        ],
        [
          `${taken}>MAX(${across},${up})`,
          '"look: side by side the openings are wider than this wall; lay them out on it before you cut"',
        ],
      ),
    ),
    figured(
      ifFilled(
        cell('check'),
        `IF(COUNT(${airflow},${width},${height})=3,${airflow}*144/(${width}*${height}),"")`,
      ),
      feetAMinute,
    ),
    figured(
      ifFilled(cell('check'), `IF(COUNT(${airflow},${flex})=2,AIR.VELOCITY(${airflow},"round",${flex}),"")`),
      feetAMinute,
    ),
    figured(counted(`${flex}+hole_ease`), cutInches),
    figured(counted(boot('width')), cutInches),
    figured(counted(boot('length')), cutInches),
    figured(counted('2'), count),
    figured(counted(wholeUp(`2/${onOneSheet}`)), count),
    figured(counted(`SEAL.TAP("round",${flex},,,1)+2*${boot('side', '2')}`), wholeFeet),
    figured(
      counted(
        `SEAL.SCREWS("round",${flex},,tap_screw_spacing,tap_joints)+SEAL.SCREWS("round",${flex},,tap_screw_spacing,1)`,
      ),
      count,
    ),
    figured(
      ifFilled(
        cell('check'),
        `IF(COUNT(${cell('sheets')})=1,"",IF(${mark}="","an unmarked return",${mark}))`,
      ),
    ),
    figured(counted(`2*${cell('boot wide')}*${cell('boot long')}/144`), squareFeet),
    figured(counted(flex), inches),
  );
}
