import { done, type Outcome } from '../../base/outcome.ts';
import { airflowForLoad, type RoomAirflow, roomAirflow } from '../../trade/air/load.ts';
import { quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import { airArguments, airflowArgument, airOf, constantArgument } from './arguments.ts';
import { design } from './cautions.ts';
import { relativeDensityFormula } from './formulas.ts';
import { densityStep } from './steps.ts';

const load = (says: string) =>
  quantity('btuh', {
    says,
    least: 100,
    most: 5_000_000,
    why: 'a single room takes more and a shop’s largest job less',
  });

export const airCfm = defineFunction({
  name: 'AIR.CFM',
  says: 'The airflow that carries a sensible heating or cooling load, corrected for height.',
  words: ['cfm', 'airflow', 'btu', 'sensible load', '1.08', 'temperature rise', 'how much air', 'heat load'],
  gives: { label: 'Airflow', unit: 'cfm' },
  arguments: {
    load: load('the sensible load, or the heat that a furnace gives out'),
    difference: quantity('degF', {
      says: 'the difference between supply air and room air',
      least: 1,
      most: 150,
      why: 'cooling works with about 20 °F and heating with less than 100 °F',
    }),
    ...airArguments,
    constant: constantArgument,
  },
  formula: [
    String.raw`\text{airflow} = \frac{\mathrm{load}}{\mathrm{constant} \times \sigma \times \mathrm{difference}}`,
    relativeDensityFormula,
  ],
  work: (given) => {
    const air = airOf(given);
    return done({ air, ...airflowForLoad(given.load, given.difference, air, given.constant) });
  },
  result: ({ airflow }) => airflow,
  steps: ({ air, perDegree, airflow }, given) => [
    densityStep(air),
    {
      label: 'Btu/h carried by one cfm for each degree',
      sum: `${figure(given.constant, 4)} × ${figure(air.density, 5)} ÷ 0.075`,
      value: perDegree,
      unit: 'ratio',
      source: 'sensible-constants',
    },
    {
      label: 'Airflow',
      sum: `${figure(given.load)} ÷ (${figure(perDegree, 4)} × ${figure(given.difference)})`,
      value: airflow,
      unit: 'cfm',
      source: 'airflow-from-load',
    },
  ],
  cautions: () => [
    design,
    {
      level: 'look',
      sentence:
        'Sensible load only. Air also gains or loses heat on its way through the duct: see AIR.TEMPERATURE, and use the difference at the outlet.',
    },
  ],
  sources: ['airflow-from-load', 'sensible-constants'],
  examples: [
    {
      says: '24,000 Btu/h over 20 °F',
      given: { load: 24_000, difference: 20 },
      gives: 1111.1,
      tolerance: 0.05,
      source: 'airflow-from-load',
    },
    {
      says: 'the same at 5000 ft',
      given: { load: 24_000, difference: 20, altitude: 5000 },
      gives: 1335.5,
      tolerance: 0.5,
      source: 'pressure-with-height',
    },
  ],
});

export const airShare = defineFunction({
  name: 'AIR.SHARE',
  says: 'A room’s part of the airflow, by its part of the load.',
  words: ['room cfm', 'room airflow', 'branch cfm', 'load share', 'split the air'],
  gives: { label: 'Room airflow', unit: 'cfm' },
  arguments: {
    room_load: load('the load of the room'),
    house_load: load('the load of all rooms on the system together'),
    airflow: airflowArgument('the airflow of the whole system'),
  },
  formula: [
    String.raw`\text{room airflow} = \frac{\mathrm{room\_load}}{\mathrm{house\_load}} \times \mathrm{airflow}`,
  ],
  work: ({ room_load, house_load, airflow }): Outcome<RoomAirflow, CallFault> =>
    fromTrade(roomAirflow(room_load, house_load, airflow)),
  result: ({ airflow }) => airflow,
  steps: ({ share, airflow: found }, { room_load, house_load, airflow }) => [
    {
      label: 'Share of the load',
      sum: `${figure(room_load)} ÷ ${figure(house_load)}`,
      value: share,
      unit: 'percent',
      source: 'room-share',
    },
    {
      label: 'Room airflow',
      sum: `${figure(room_load)} ÷ ${figure(house_load)} × ${figure(airflow)}`,
      value: found,
      unit: 'cfm',
      source: 'room-share',
    },
  ],
  cautions: () => [
    design,
    {
      level: 'look',
      sentence:
        'Heating and cooling loads split differently: work out both and size the branch for the larger airflow.',
    },
  ],
  sources: ['room-share'],
  examples: [
    {
      says: '3000 of 28,000 Btu/h on 1000 cfm',
      given: { room_load: 3000, house_load: 28_000, airflow: 1000 },
      gives: 107.14,
      tolerance: 0.005,
      source: 'room-share',
    },
  ],
});
