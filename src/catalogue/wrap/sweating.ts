import { done } from '../../base/outcome.ts';
import { type DryR, dryR, surfaceTemperature } from '../../trade/wrap/sweating.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import type { Step } from '../working.ts';
import { bareMinimum, wholeRetarder, worstHour } from './sweating-cautions.ts';
import {
  aroundArgument,
  filmArguments,
  filmSteps,
  humidityArgument,
  insideArgument,
  type OuterFilm,
  outerFilmOf,
} from './wall-arguments.ts';
import { wallDrawing } from './wall-drawing.ts';

/** What every question about sweating asks of the air on both sides of the duct wall. */
export const sweatingArguments = {
  around: aroundArgument,
  humidity: humidityArgument(0.99),
  inside: insideArgument,
};

/** R that keeps the outer face of cold duct dry. h·ft²·°F/Btu. Source: maker bulletin on condensation. */
export const wrapSweating = defineFunction({
  name: 'WRAP.SWEATING',
  says: 'The least R that keeps the outer face of cold duct from sweating.',
  words: ['sweating', 'condensation', 'dripping duct', 'wet ceiling', 'dew point', 'r against sweating'],
  gives: { label: 'R against sweating', unit: 'r' },
  arguments: { ...sweatingArguments, ...filmArguments },
  formula: [
    String.raw`R = \text{film} \times \frac{\text{dew point} - \text{inside}}{\text{around} - \text{dew point}} - \text{inner film} \quad \text{(never below 0)}`,
    String.raw`p_s(\text{dew point}) = \text{humidity} \times p_s(\text{around}), \quad p_s \text{ as in WRAP.DEWPOINT}`,
  ],
  work: (given) => {
    const film = outerFilmOf(given);
    const wall = {
      around: given.around,
      inside: given.inside,
      outerFilm: film.r,
      innerFilm: given.inner_film,
    };
    const needed = dryR(wall, given.humidity);
    return done({ film, needed, ...surfaceTemperature(wall, needed.r) });
  },
  result: ({ needed }) => needed.r,
  steps: ({ film, needed }, given) => drySteps(film, needed, given),
  drawing: ({ needed, surface, total }, { around, inside, inner_film }) =>
    wallDrawing({
      title: 'Wrap that just keeps the face dry',
      describes: `${figure(inside, 1)} °F in the duct and ${figure(around, 1)} °F around it, dew point ${figure(needed.dewPoint, 1)} °F: R ${figure(needed.r, 2)} keeps the face from sweating.`,
      inside,
      metal: inside + ((around - inside) * inner_film) / total,
      surface,
      around,
      dewPoint: needed.dewPoint,
      wrap: `R ${figure(needed.r, 2)}`,
    }),
  cautions: ({ needed }) => [wholeRetarder, worstHour, ...(needed.r > 0 ? [bareMinimum] : [])],
  sources: ['sweating-bulletin', 'saturation-equations'],
  examples: [
    {
      says: '55 °F air in 85 °F at 70 %, dull jacket, side',
      given: { around: 85, humidity: 0.7, inside: 55, surface: 'dull' },
      gives: 1.194,
      tolerance: 0.02,
      source: 'sweating-bulletin',
    },
    {
      says: '55 °F air in 90 °F at 80 %, under bright foil, underside',
      given: { around: 90, humidity: 0.8, inside: 55, face: 'underside' },
      gives: 5.27,
      tolerance: 0.08,
      source: 'sweating-bulletin',
    },
    {
      says: 'air that is no colder than the dew point needs none',
      given: { around: 75, humidity: 0.5, inside: 60 },
      gives: 0,
      source: 'sweating-bulletin',
    },
  ],
});

/** From the air to the R that is needed, which is the last step. */
export function drySteps(
  film: OuterFilm,
  needed: DryR,
  given: {
    readonly around: number;
    readonly inside: number;
    readonly humidity: number;
    readonly inner_film: DryR['r'];
  },
): readonly Step[] {
  const { around, inside, humidity, inner_film: inner } = given;
  return [
    {
      label: 'Dew point around the duct',
      sum: `air of ${figure(around)} °F at ${figure(humidity * 100)} %`,
      value: needed.dewPoint,
      unit: 'degF',
      source: 'saturation-equations',
    },
    ...filmSteps(film, inner),
    {
      label: 'R against sweating',
      sum: needed.isNeverWet
        ? `the duct is ${figure(-needed.below, 2)} °F over the dew point`
        : `${figure(film.r)} × (${figure(needed.dewPoint)} − ${figure(inside)}) ÷ (${figure(around)} − ${figure(needed.dewPoint)})${inner === 0 ? '' : ` − ${figure(inner)}`}${needed.r === 0 ? ', not below 0' : ''}`,
      value: needed.r,
      unit: 'r',
      source: 'sweating-bulletin',
    },
  ];
}
