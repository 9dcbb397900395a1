import { ductDuties, ductPlaces } from '../../../src/trade/wrap/needed.ts';
import {
  check,
  feetAndInches,
  figured,
  gauge,
  given,
  heading,
  inches,
  resistance,
  squareFeet,
  words,
} from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { allBlank, firstOf, missing } from '../sentences.ts';
import { table } from '../table.ts';

export const runLines = table({
  sheet: 'Runs',
  columns: [
    'mark',
    'shape',
    'width',
    'depth',
    'length',
    'place',
    'duty',
    'r',
    'gauge',
    'check',
    'needed',
    'least',
    'surface',
    'class',
    'leakage',
    'not counted',
  ],
  first: 2,
  count: 20,
});

const { at, beside, last } = runLines;
export const runsTotalRow = last + 1;

const size = {
  least: 2,
  most: 120,
  why: 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
};

export const runs: Form = form({
  id: 'runs',
  name: 'Runs',
  says: 'Fill in a line for each run of duct: where it hangs, its wrap and its gauge; see what the code asks of it.',
  widths: [6, 11, 7, 6, 9, 13, 8, 7, 7, 22, 9, 8, 10, 7, 10, 12],
  lines: [
    line(
      ...[
        'Run',
        'Shape',
        'Width',
        'Depth',
        'Length',
        'Hangs in',
        'Duty',
        'Wrap R',
        'Gauge',
        'Check',
        'R needed',
        'Least',
        'Surface',
        'Class',
        'Leaks',
        'Not counted',
      ].map(heading),
    ),
    ...runLines.rows.map(runLine),
    line(
      words('Total'),
      ...Array.from({ length: 11 }, () => null),
      figured(`SUM(${beside('surface')})`, squareFeet),
      null,
      figured(`SUM(${beside('leakage')})`, cfm()),
    ),
  ],
});

function cfm() {
  return { unit: 'cfm', format: { type: 'decimal', places: 1 } } as const;
}

/** The first line must be filled in, so that a new job says what it waits for. */
function runLine(row: number): Line {
  const open = row === 2 ? {} : { mayBeBlank: true };
  const cell = (column: Parameters<typeof at>[0]) => at(column, row);
  const absent = missing(
    [`${cell('mark')}=""`, 'mark'],
    [`${cell('shape')}=""`, 'shape'],
    [`${cell('width')}=""`, 'width'],
    [`AND(${cell('shape')}="rectangular",${cell('depth')}="")`, 'depth'],
    [`${cell('length')}=""`, 'length'],
    [`${cell('place')}=""`, 'where it hangs'],
    [`${cell('duty')}=""`, 'duty'],
  );
  const untouched = allBlank(row, ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'I']);
  const whole = (formula: string) => `IF(OR(${untouched},${absent}<>""),"",${formula})`;
  const byShape = (name: string, ...more: readonly string[]) =>
    `IF(${cell('shape')}="round",${name}(${['"round"', cell('width'), '', ...more].join(',')}),${name}(${['"rectangular"', cell('width'), cell('depth'), ...more].join(',')}))`;
  const largest = `IF(${cell('shape')}="round",${cell('width')},MAX(${cell('width')},${cell('depth')}))`;
  const least = `GAUGE.LEAST(${cell('shape')},${largest},duct_pressure,,gauge_table)`;
  const counted = (formula: string) =>
    whole(`IF(COUNTIF(${beside('mark')},${cell('mark')})>1,"",${formula})`);
  return line(
    given({ asks: 'What mark goes on this run, such as S1?', ...open }),
    given({
      asks: 'Is it round or rectangular?',
      choices: ['round', 'rectangular'],
      usual: 'round',
      ...open,
    }),
    given({ asks: 'What is its diameter, or its width if it is rectangular?', ...size, ...open }, inches),
    given({ asks: 'How deep is it? Blank if it is round.', ...size, mayBeBlank: true }, inches),
    given(
      {
        asks: 'How long is the run?',
        least: 1,
        most: 12_000,
        why: 'a run under 1 in or over 1,000 ft is most likely a slip of the unit',
        ...open,
      },
      feetAndInches,
    ),
    given({ asks: 'Where does it hang?', choices: [...ductPlaces], ...open }),
    given({ asks: 'Does it supply or return?', choices: [...ductDuties], usual: 'supply', ...open }),
    given(
      {
        asks: 'What installed R has its wrap? Blank where it has none.',
        least: 0,
        most: 40,
        why: 'no wrap of a duct has more',
        mayBeBlank: true,
      },
      resistance,
    ),
    given(
      {
        asks: 'What gauge is it? Blank where that is not checked.',
        least: 14,
        most: 30,
        why: 'duct is made of 14 to 30 ga sheet',
        mayBeBlank: true,
      },
      gauge,
    ),
    check(
      firstOf(
        [untouched, '""'],
        [`${absent}<>""`, `"stop: still to fill in: "&${absent}`],
        [
          `COUNTIF(${beside('mark')},${cell('mark')})>1`,
          '"stop: another line has this mark too; give each run its own"',
        ],
        [
          `ISERROR(${cell('needed')})`,
          '"stop: this code tells no R for such a run; the cell under R needed says why"',
        ],
        [
          `SUM(${cell('r')})<${cell('needed')}`,
          `"stop: the code asks for R "&${cell('needed')}&", and the wrap has R "&SUM(${cell('r')})`,
        ],
        [
          `IF(OR(${cell('gauge')}="",gauge_table="not checked"),FALSE,IFERROR(${cell('gauge')}>${least},FALSE))`,
          `"stop: "&${cell('gauge')}&" ga is too light; the "&gauge_table&" asks for "&${least}&" ga at least"`,
        ],
        [
          `ISERROR(${cell('class')})`,
          '"look: the manual tells no leakage class for this shape and seal, so its leakage is not counted"',
        ],
        [
          `IF(OR(${cell('gauge')}="",gauge_table="not checked"),FALSE,ISERROR(${least}))`,
          '"look: the table of least gauges ends before this duct; the construction standard of the job decides"',
        ],
        [`${cell('gauge')}=""`, '"look: its gauge is not told, so it is not checked"'],
      ),
    ),
    figured(
      whole(
        `WRAP.NEEDED(code_r,${cell('place')},${largest},${cell('duty')},IF(code_zone="","",code_zone),IF(code_difference="","",code_difference))`,
      ),
      resistance,
    ),
    figured(whole(`IF(gauge_table="not checked","",IFERROR(${least},""))`), gauge),
    figured(counted(byShape('AREA.DUCT', cell('length'))), squareFeet),
    figured(whole(`AIR.CLASS(seal_class,${cell('shape')},class_edition)`), {
      unit: 'ratio',
      format: { type: 'decimal', places: 0 },
    }),
    figured(
      counted(
        `IF(ISERROR(${cell('class')}),"",AIR.LEAKAGE(${cell('class')},duct_pressure,${cell('surface')}))`,
      ),
      cfm(),
    ),
    figured(
      `IF(${untouched},"",IF(IFERROR(COUNT(${cell('leakage')})=1,FALSE),"",IF(${cell('mark')}="","an unmarked run",${cell('mark')})))`,
    ),
  );
}
