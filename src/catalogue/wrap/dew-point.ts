import { done } from '../../base/outcome.ts';
import { dewPointOf } from '../../trade/wrap/dew-point.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import { aroundArgument, humidityArgument } from './wall-arguments.ts';

/** Dew point of air. °F. Source: the handbook's equations of saturated vapor, turned round. */
export const wrapDewPoint = defineFunction({
  name: 'WRAP.DEWPOINT',
  says: 'The temperature at which air wets whatever is colder.',
  words: ['dew point', 'condensation', 'sweating', 'humidity', 'wet duct', 'dripping'],
  gives: { label: 'Dew point', unit: 'degF' },
  arguments: {
    temperature: { ...aroundArgument, says: 'the temperature of the air' },
    humidity: { ...humidityArgument(1), says: 'the relative humidity of the air; 80 % is 0.8' },
  },
  formula: [
    String.raw`p_s(\text{dew point}) = \text{humidity} \times p_s(\text{temperature})`,
    String.raw`\ln p_s = -\frac{10440.397}{T} - 11.29465 - 0.027022355\,T + 1.289036 \times 10^{-5}\,T^2 - 2.4780681 \times 10^{-9}\,T^3 + 6.5459673 \ln T, \quad T = {}^\circ\text{F} + 459.67`,
  ],
  work: ({ temperature, humidity }) => done(dewPointOf(temperature, humidity)),
  result: ({ dewPoint }) => dewPoint,
  steps: ({ saturated, vapor, dewPoint }, { humidity }) => [
    {
      label: 'Vapor pressure when saturated, psi',
      sum: '',
      value: saturated,
      unit: 'ratio',
      source: 'saturation-equations',
    },
    {
      label: 'Vapor pressure that is there, psi',
      sum: `${figure(humidity * 100)} % × ${figure(saturated, 5)}`,
      value: vapor,
      unit: 'ratio',
    },
    {
      label: 'Dew point',
      sum: `where ${figure(vapor, 5)} psi saturates the air`,
      value: dewPoint,
      unit: 'degF',
      source: 'saturation-equations',
    },
  ],
  cautions: ({ dewPoint }) =>
    dewPoint <= 32
      ? [
          {
            level: 'look',
            sentence: 'This is below freezing: colder faces take on frost, and drip when they thaw.',
          },
        ]
      : [],
  sources: ['saturation-equations'],
  examples: [
    {
      says: '90 °F at 80 %',
      given: { temperature: 90, humidity: 0.8 },
      gives: 82.989,
      tolerance: 0.1,
      source: 'saturation-equations',
    },
    {
      says: '75 °F at 50 %',
      given: { temperature: 75, humidity: 0.5 },
      gives: 55.12,
      tolerance: 0.1,
      source: 'saturation-equations',
    },
  ],
});
