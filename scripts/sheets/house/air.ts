import { columnName } from '../../../src/base/address.ts';
import { ductPlaces } from '../../../src/trade/wrap/needed.ts';
import type { Cell, Question } from '../../../src/workbook/document.ts';
import {
  check,
  count,
  cubicFeet,
  degrees,
  feet,
  figured,
  frictionRate,
  given,
  heading,
  heat,
  inchesOfWater,
  onBelow,
  resistance,
  words,
} from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { firstOf } from '../sentences.ts';
import { type Plan, rooms, type System } from './plan.ts';

type Of = (name: string) => string;
interface AirLine {
  readonly label: string;
  readonly name?: string;
  readonly cell: (system: System, of: Of) => Cell;
  readonly says: string;
}

export function airForm(plan: Plan): Form {
  const lines = airLines(plan);
  const names = lines.flatMap((one, index) =>
    plan.systems.flatMap((system, at) => {
      const place = `${columnName(at + 1)}${index + 2}`;
      return one.name ? [[system.prefix + one.name, `${place}:${place}`] as const] : [];
    }),
  );
  return form({
    id: 'air',
    name: 'Air',
    says: 'Say what the blower gives and what takes it away before the duct; read here the friction rate that is left to size by.',
    widths: [24, ...plan.systems.map(() => 13), plan.systems.length > 1 ? 30 : 34],
    lines: [
      line(heading('Air'), ...plan.systems.map((one) => heading(one.name)), heading('Where to find it')),
      ...lines.map((one): Line => {
        const cells = plan.systems.map((system) => one.cell(system, (name) => system.prefix + name));
        return line(words(one.label), ...cells, words(one.says, onBelow));
      }),
    ],
    blocks: Object.fromEntries(names),
  });
}

function airLines(plan: Plan): readonly AirLine[] {
  const pressure = (asks: string, least: number, usual: number, why: string): AirLine['cell'] =>
    ask({ asks, least, most: 5, why, usual }, usual, {
      ...inchesOfWater,
      format: { type: 'decimal', places: 2 },
    });
  const ofRooms = (system: System, how: string, column: 'own' | 'load' | 'airflow') =>
    plan.systems.length > 1
      ? `SUMIFS(${rooms.all(column)},${rooms.all('counts')},"${how}",${rooms.all('system')},"${system.name}")`
      : `SUMIFS(${rooms.all(column)},${rooms.all('counts')},"${how}")`;
  const counted = (system: System, how: string) =>
    plan.systems.length > 1
      ? `COUNTIFS(${rooms.all('counts')},"${how}",${rooms.all('system')},"${system.name}")`
      : `COUNTIF(${rooms.all('counts')},"${how}")`;
  return [
    {
      label: 'Ducts hang in',
      name: 'duct_place',
      cell: (system) =>
        ask(
          { asks: 'Where do its ducts hang?', choices: [...ductPlaces], usual: system.place },
          system.place,
          {},
        )(system, (name) => name),
      says: 'where most of the trunk and branches lie',
    },
    {
      label: 'R needed there',
      name: 'needed_r',
      cell: (_, of) =>
        figured(`IF(wrap_code="not checked",0,WRAP.NEEDED(wrap_code,${of('duct_place')},6))`, resistance),
      says: 'by the code chosen on House; ask the local code, since editions differ',
    },
    {
      label: 'Air of the system',
      name: 'airflow',
      cell: (system) =>
        ask(
          {
            asks: 'How much air does the blower move at the pressure below, by its table?',
            least: 200,
            most: 4000,
            why: 'a blower of a house moves 200 to 4,000 cfm',
            usual: system.airflow,
          },
          system.airflow,
          cubicFeet,
        )(system, (name) => name),
      says: 'from the table of the blower, at the speed that it is set to',
    },
    {
      label: 'Supply to room, difference',
      name: 'difference',
      cell: ask(
        {
          asks: 'How far is the supply air from the room air in temperature?',
          least: 5,
          most: 80,
          why: 'cooling air is some 15 to 25 °F colder, heating air up to 80 °F warmer',
          usual: 20,
        },
        20,
        degrees,
      ),
      says: 'about 20 °F for cooling (common practice, no source)',
    },
    {
      label: 'Air that the loads ask for',
      name: 'air_by_load',
      cell: (system, of) =>
        figured(
          `IF(${of('load_by_share')}<100,"",AIR.CFM(${of('load_by_share')},${of('difference')})+${ofRooms(system, 'by own cfm', 'own')})`,
          cubicFeet,
        ),
      says: 'the loads over that difference, and the rooms with air of their own',
    },
    {
      label: 'Do they agree?',
      cell: (_, of) =>
        check(
          firstOf(
            [`${of('air_by_load')}=""`, '"look: no room with a load hangs on this system yet"'],
            [
              `ABS(${of('airflow')}-${of('air_by_load')})>air_apart*${of('air_by_load')}`,
              `"look: the loads ask for "&ROUND(${of('air_by_load')},0)&" cfm at this difference"`,
            ],
          ),
        ),
      says: 'the share that they may lie apart stands on Allowances',
    },
    {
      label: 'External static pressure',
      name: 'external_static',
      cell: pressure(
        'Which external static pressure does the blower give at that airflow?',
        0.05,
        0.5,
        'blowers of houses give 0.05 to 5 in. w.g.',
      ),
      says: 'from the table of the blower; read what it was tested with',
    },
    {
      label: 'Coil',
      name: 'coil_takes',
      cell: pressure('What does the coil take? 0 if the table has it already.', 0, 0.1, noPart),
      says: 'from the sheet of the coil, wet, at that airflow',
    },
    {
      label: 'Filter',
      name: 'filter_takes',
      cell: pressure('What does the filter take?', 0, 0.15, noPart),
      says: 'from the sheet of the filter, half loaded',
    },
    {
      label: 'Supply outlet',
      name: 'outlet_takes',
      cell: pressure('What does the supply outlet take?', 0, 0.03, noPart),
      says: '0.03 in a published sizing example',
    },
    {
      label: 'Return grille',
      name: 'grille_takes',
      cell: pressure('What does the return grille take?', 0, 0.03, noPart),
      says: '0.03 in a published sizing example',
    },
    {
      label: 'Whatever else',
      name: 'other_takes',
      cell: pressure('What else takes pressure and is not duct: a damper, a heater?', 0, 0, noPart),
      says: 'dampers, electric heat, a second coil',
    },
    {
      label: 'Left for the duct',
      name: 'available',
      cell: (_, of) =>
        figured(
          `AIR.AVAILABLE(${['external_static', 'coil_takes', 'filter_takes', 'outlet_takes', 'grille_takes', 'other_takes'].map((one, at) => (at === 5 ? `,${of(one)}` : of(one))).join(',')})`,
          { ...inchesOfWater, format: { type: 'decimal', places: 2 } },
        ),
      says: 'the pressure that supply and return duct may take together',
    },
    {
      label: 'Longest way, measured',
      name: 'measured_way',
      cell: (system) =>
        ask(
          {
            asks: 'How long are the longest supply and the longest return together, on the plan?',
            least: 5,
            most: 500,
            why: 'less than 5 ft or more than 500 ft is no way through a house',
            usual: system.measured,
          },
          system.measured,
          feet,
        )(system, (name) => name),
      says: 'it grows and shrinks with the scale of the plan on House',
    },
    {
      label: 'Its fittings',
      name: 'fitting_way',
      cell: (system) =>
        ask(
          {
            asks: 'How many feet of straight duct are its fittings worth?',
            least: 0,
            most: 1000,
            why: 'more than 1,000 ft of fittings is most likely a slip',
            usual: system.fittings,
          },
          system.fittings,
          feet,
        )(system, (name) => name),
      says: 'the sum of the equivalent lengths on that way',
    },
    {
      label: 'Total effective length',
      name: 'effective_length',
      cell: (_, of) =>
        figured(`${of('measured_way')}*plan_scale+${of('fitting_way')}`, {
          ...feet,
          format: { type: 'decimal', places: 0 },
        }),
      says: 'measured and fittings together',
    },
    {
      label: 'Friction rate',
      name: 'friction_rate',
      cell: (_, of) =>
        figured(
          `IF(${of('available')}<=0,"",AIR.RATE(${of('available')},${of('measured_way')}*plan_scale,${of('fitting_way')}))`,
          frictionRate,
        ),
      says: 'trunk and branches are sized by this rate',
    },
    {
      label: 'Is it a usual rate?',
      cell: (_, of) =>
        check(
          firstOf(
            [
              `${of('available')}<=0`,
              '"stop: nothing is left for the duct; a stronger blower or a wider filter"',
            ],
            [
              `OR(${of('friction_rate')}<rate_low,${of('friction_rate')}>rate_high)`,
              '"look: an unusual friction rate; measure the pressures and the way again"',
            ],
          ),
        ),
      says: 'the limits stand on Allowances',
    },
    {
      label: 'Loads that share the air',
      name: 'load_by_share',
      cell: (system) => figured(ofRooms(system, 'by load', 'load'), heat),
      says: 'of the rooms without air of their own',
    },
    {
      label: 'Air that they share',
      name: 'airflow_left',
      cell: (system, of) => figured(`${of('airflow')}-${ofRooms(system, 'by own cfm', 'own')}`, cubicFeet),
      says: 'what the rooms with air of their own leave',
    },
    {
      label: 'Rooms',
      name: 'rooms_served',
      cell: (system) =>
        figured(['by load', 'by own cfm'].map((how) => counted(system, how)).join('+'), count),
      says: 'rooms that hang on this system',
    },
  ];
}

const noPart = 'no part of a house takes more than 5 in. w.g.';

function ask(
  question: Question,
  content: number | string,
  more: Partial<Omit<Cell, 'content'>>,
): AirLine['cell'] {
  return () => given(question, { content, ...more });
}
