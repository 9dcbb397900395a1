import { done } from '../../base/outcome.ts';
import { airAt } from '../../trade/air/density.ts';
import { optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import { altitude, temperatureArgument } from './arguments.ts';
import { relativeDensityFormula } from './formulas.ts';

/** Density of dry air by altitude and temperature. Feet and °F in, lb/cu ft out. Source: gas law. */
export const airDensity = defineFunction({
  name: 'AIR.DENSITY',
  says: 'How heavy air is at a height and a temperature; standard air is 0.075 lb/cu ft.',
  words: ['altitude', 'elevation', 'thin air', 'mountain', 'mile high', 'hot air', 'weight of air'],
  gives: { label: 'Air density', unit: 'lbPerCuFt' },
  arguments: {
    altitude,
    temperature: optional(temperatureArgument('the temperature of the air'), 70, 'standard air is 70 °F'),
  },
  formula: [String.raw`\text{density} = 0.075 \times \sigma`, relativeDensityFormula],
  work: (given) => done(airAt(given.altitude, given.temperature)),
  result: ({ density }) => density,
  steps: ({ altitude: height, temperature, pressureRatio, density, relativeDensity }) => [
    {
      label: 'Pressure over that at sea level',
      sum: `(1 − 6.8754e-6 × ${figure(height)})^5.2559`,
      value: pressureRatio,
      unit: 'ratio',
      source: 'pressure-with-height',
    },
    {
      label: 'Density over that of standard air',
      sum: `530 ÷ (${figure(temperature)} + 460) × ${figure(pressureRatio, 4)}`,
      value: relativeDensity,
      unit: 'ratio',
      source: 'gas-law',
    },
    {
      label: 'Air density',
      sum: `0.075 × ${figure(relativeDensity, 4)}`,
      value: density,
      unit: 'lbPerCuFt',
      source: 'gas-law',
    },
  ],
  cautions: () => [
    {
      level: 'look',
      sentence:
        'Height takes off pressure only; the air is as warm as you say. Tables of the standard atmosphere also let it cool with height, and so give 0.838 in place of 0.801 at 6000 ft.',
      source: 'altitude-table',
    },
  ],
  sources: ['gas-law', 'pressure-with-height', 'altitude-table'],
  examples: [
    { says: 'standard air', given: { altitude: 0 }, gives: 0.075, tolerance: 1e-9, source: 'gas-law' },
    {
      says: '120 °F at sea level',
      given: { altitude: 0, temperature: 120 },
      gives: 0.068534,
      tolerance: 0.00001,
      source: 'gas-law',
    },
    {
      says: '70 °F at 6000 ft: 0.801 of standard',
      given: { altitude: 6000 },
      gives: 0.060075,
      tolerance: 0.000075,
      source: 'altitude-table',
    },
  ],
});
