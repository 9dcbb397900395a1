import { done, type Outcome } from '../../base/outcome.ts';
import { type Air, airAt, standardTemperature } from '../../trade/air/density.ts';
import { type AirSection, insidePerimeter } from '../../trade/air/section.ts';
import { type DuctHeat, leavingAir } from '../../trade/air/temperature.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Drawing, Mark, Point } from '../drawing.ts';
import type { CallFault } from '../fault.ts';
import { figure } from '../say.ts';
import {
  airArguments,
  airflowArgument,
  airSectionArguments,
  airSectionOf,
  constantArgument,
  temperatureArgument,
} from './arguments.ts';
import { design } from './cautions.ts';
import { heightFormula, insidePerimeterFormulas } from './formulas.ts';
import { sayAirSection } from './steps.ts';

interface HeatOfRun extends DuctHeat {
  readonly section: AirSection;
  readonly air: Air;
}

export const airTemperature = defineFunction({
  name: 'AIR.TEMPERATURE',
  says: 'How warm air is at the end of an insulated run, and so what the run gains or loses.',
  words: ['heat gain', 'heat loss', 'attic duct', 'supply temperature', 'temperature drop', 'leaving air'],
  gives: { label: 'Air at the end', unit: 'degF' },
  arguments: {
    entering_air: temperatureArgument('the temperature of the air at the start of the run'),
    surroundings: temperatureArgument('the temperature around the duct'),
    airflow: airflowArgument('the airflow in the run'),
    ...airSectionArguments,
    length: quantity('ft', {
      says: 'the length of the run',
      least: 0.5,
      most: 1000,
      why: 'a straight run under 6 in or over 1000 ft is most likely a slip of the unit',
    }),
    installed_r: quantity('r', {
      says: 'the installed R of the wrap; 0 for bare duct',
      least: 0,
      most: 60,
      why: 'duct wrap and board stay well under R 60',
    }),
    films: optional(
      quantity('r', {
        says: 'the R of the air films inside and outside together',
        least: 0.1,
        most: 3,
        why: 'still and moving air lie in between',
      }),
      0.85,
      'an assumption, from memory; moving air outside lowers it',
    ),
    altitude: airArguments.altitude,
    constant: constantArgument,
  },
  formula: [
    String.raw`\text{leaving} = \mathrm{surroundings} + (\mathrm{entering\_air} - \mathrm{surroundings}) \times \exp\left(-\frac{P \times \mathrm{length} / 12}{(\mathrm{installed\_r} + \mathrm{films}) \times \mathrm{constant} \times \sigma \times \mathrm{airflow}}\right)`,
    heightFormula,
    ...insidePerimeterFormulas,
  ],
  work: (given): Outcome<HeatOfRun, CallFault> => {
    const section = airSectionOf(given);
    if (!section.ok) return section;
    const air = airAt(given.altitude, standardTemperature);
    const { airflow, length, films, constant } = given;
    return done({
      section: section.value,
      air,
      ...leavingAir(
        given.entering_air,
        given.surroundings,
        airflow,
        section.value,
        length,
        given.installed_r,
        films,
        air,
        constant,
      ),
    });
  },
  result: ({ leaving }) => leaving,
  steps: (heat, given) => [
    {
      label: 'Surface of the duct',
      sum: `${figure(insidePerimeter(heat.section), 3)} ÷ 12 × ${figure(given.length)}`,
      value: heat.surface,
      unit: 'sqft',
      source: 'geometry',
    },
    {
      label: 'R of the wall and its air films',
      sum: `${figure(given.installed_r)} + ${figure(given.films)}`,
      value: given.installed_r + given.films,
      unit: 'r',
      source: 'air-films',
    },
    {
      label: 'Btu/h carried for each degree',
      sum: `${figure(given.constant, 4)} × ${figure(heat.air.relativeDensity, 4)} × ${figure(given.airflow)}`,
      value: heat.carried,
      unit: 'ratio',
      source: 'sensible-constants',
    },
    {
      label: 'Share of the difference that is left',
      sum: `e^(−${figure(heat.surface, 3)} ÷ ${figure(given.installed_r + given.films)} ÷ ${figure(heat.carried, 2)})`,
      value: heat.kept,
      unit: 'percent',
      source: 'heat-of-run',
    },
    {
      label: heat.gain >= 0 ? 'Heat gained' : 'Heat lost',
      sum: `${figure(heat.carried, 2)} × ${figure(Math.abs(heat.leaving - given.entering_air), 4)}`,
      value: Math.abs(heat.gain),
      unit: 'btuh',
      source: 'heat-of-run',
    },
    {
      label: 'Air at the end',
      sum: `${figure(given.surroundings)} + (${figure(given.entering_air)} − ${figure(given.surroundings)}) × ${figure(heat.kept, 5)}`,
      value: heat.leaving,
      unit: 'degF',
      source: 'outlet-temperature',
    },
  ],
  drawing: (heat, given) => runDrawing(heat, given),
  cautions: (_, { surroundings, entering_air }) => [
    design,
    ...(entering_air < surroundings
      ? [
          {
            level: 'look',
            sentence:
              'Air colder than its surroundings can make the duct sweat. Keep the vapor retarder whole and check the surface against the dew point.',
          } as const,
        ]
      : []),
  ],
  sources: ['outlet-temperature', 'heat-of-run', 'sensible-constants', 'air-films'],
  examples: [
    {
      says: '400 cfm at 55 °F through 30 ft of 10 in pipe with R 6 in a 130 °F attic',
      given: {
        entering_air: 55,
        surroundings: 130,
        airflow: 400,
        shape: 'round',
        width: 10,
        length: 30,
        installed_r: 6,
      },
      gives: 56.964,
      tolerance: 0.005,
      source: 'heat-of-run',
    },
    {
      says: '80 cfm at 120 °F through 25 ft of 6 in pipe in a 30 °F crawl space, R 8 with its films',
      given: {
        entering_air: 120,
        surroundings: 30,
        airflow: 80,
        shape: 'round',
        width: 6,
        length: 25,
        installed_r: 7.15,
      },
      gives: 115.03,
      tolerance: 0.005,
      source: 'outlet-temperature',
    },
  ],
});

/** The run from the side, in its wrap, with the temperatures at both ends and around it. */
function runDrawing(
  { section, leaving }: HeatOfRun,
  given: {
    readonly entering_air: number;
    readonly surroundings: number;
    readonly length: number;
    readonly installed_r: number;
  },
): Drawing {
  const [left, right, top, bottom] = [60, 300, 62, 102];
  const band = (from: number, to: number): readonly Point[] => [
    { x: left, y: from },
    { x: right, y: from },
    { x: right, y: to },
    { x: left, y: to },
  ];
  const label = (x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end'): Mark => ({
    type: 'label',
    at: { x, y },
    text,
    anchor,
  });
  const wrap: readonly Mark[] =
    given.installed_r > 0
      ? [
          { type: 'outline', points: band(top - 10, top), closed: true, role: 'wrap' },
          { type: 'outline', points: band(bottom, bottom + 10), closed: true, role: 'wrap' },
        ]
      : [];
  return {
    title: `Air along a ${sayAirSection(section)} run`,
    describes: `Over ${figure(given.length)} ft the air goes from ${figure(given.entering_air, 1)} to ${figure(leaving, 1)} °F, with ${figure(given.surroundings, 1)} °F around the duct.`,
    height: 156,
    marks: [
      ...wrap,
      { type: 'outline', points: band(top, bottom), closed: true, role: 'metal' },
      label(180, 36, `around it ${figure(given.surroundings, 1)} °F`, 'middle'),
      label(52, 86, `${figure(given.entering_air, 1)} °F`, 'end'),
      label(308, 86, `${figure(leaving, 1)} °F`, 'start'),
      {
        type: 'measure',
        from: { x: left, y: 138 },
        to: { x: right, y: 138 },
        text: `${figure(given.length)} ft`,
      },
    ],
  };
}
