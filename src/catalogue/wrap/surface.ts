import { done } from '../../base/outcome.ts';
import type { Quantity } from '../../base/quantity.ts';
import { dewPointOf } from '../../trade/wrap/dew-point.ts';
import { surfaceTemperature } from '../../trade/wrap/sweating.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import type { Caution, Step } from '../working.ts';
import { wholeRetarder } from './sweating-cautions.ts';
import {
  aroundArgument,
  filmArguments,
  filmSteps,
  humidityArgument,
  insideArgument,
  outerFilmOf,
} from './wall-arguments.ts';
import { wallDrawing } from './wall-drawing.ts';

/** Below this much to spare, a little more humidity makes the face wet. */
const littleToSpare = 2;

/** Temperature of the outer face of wrapped duct. °F. Source: films and wrap in series. */
export const wrapSurface = defineFunction({
  name: 'WRAP.SURFACE',
  says: 'How warm or cold the outer face of the wrap gets, and whether it sweats.',
  words: [
    'surface temperature',
    'facing temperature',
    'sweating',
    'condensation',
    'dripping duct',
    'hot to touch',
  ],
  gives: { label: 'Outer face', unit: 'degF' },
  arguments: {
    around: aroundArgument,
    inside: insideArgument,
    r: quantity('r', {
      says: 'the R of the wrap on the duct; for round duct that on its outer face, from WRAP.ROUNDR',
      least: 0,
      most: 80,
      why: 'duct wrap and board stay well under R 80, and bare duct has 0',
    }),
    humidity: optional<Quantity<'percent'> | null>(
      humidityArgument(1),
      null,
      'the temperature of the face does not need it; with it the working tells whether the face is wet',
    ),
    ...filmArguments,
  },
  formula: [
    String.raw`\text{face} = \text{around} - (\text{around} - \text{inside}) \times \frac{\text{film}}{\text{inner film} + R + \text{film}}`,
  ],
  work: (given) => {
    const film = outerFilmOf(given);
    const wall = {
      around: given.around,
      inside: given.inside,
      outerFilm: film.r,
      innerFilm: given.inner_film,
    };
    const dewPoint = given.humidity === null ? null : dewPointOf(given.around, given.humidity).dewPoint;
    return done({ film, dewPoint, ...surfaceTemperature(wall, given.r) });
  },
  result: ({ surface }) => surface,
  steps: ({ film, total, share, surface, dewPoint }, { around, inside, r, inner_film }): readonly Step[] => [
    ...filmSteps(film, inner_film),
    {
      label: 'Films and wrap together',
      sum: `${figure(inner_film)} + ${figure(r)} + ${figure(film.r)}`,
      value: total,
      unit: 'r',
    },
    {
      label: 'Share of the difference at the face',
      sum: `${figure(film.r)} ÷ ${figure(total)}`,
      value: share,
      unit: 'percent',
    },
    ...(dewPoint === null
      ? []
      : [
          {
            label: 'Dew point, to compare',
            sum: '',
            value: dewPoint,
            unit: 'degF',
            source: 'saturation-equations',
          } as const,
        ]),
    {
      label: 'Outer face',
      sum: `${figure(around)} − (${figure(around)} − ${figure(inside)}) × ${figure(share, 5)}`,
      value: surface,
      unit: 'degF',
      source: 'sweating-bulletin',
    },
  ],
  drawing: ({ surface, dewPoint, total }, { around, inside, r, inner_film }) =>
    wallDrawing({
      title: 'Temperature through the wall of the duct',
      describes: `${figure(inside, 1)} °F in the duct and ${figure(around, 1)} °F around it: with R ${figure(r, 2)} the outer face is at ${figure(surface, 1)} °F.`,
      inside,
      metal: inside + ((around - inside) * inner_film) / total,
      surface,
      around,
      dewPoint,
      wrap: `R ${figure(r, 2)}`,
    }),
  cautions: ({ surface, dewPoint }, { r }): readonly Caution[] => [
    wholeRetarder,
    ...(dewPoint === null
      ? []
      : surface <= dewPoint
        ? [
            {
              level: 'look',
              sentence: `The face is ${figure(dewPoint - surface, 2)} °F under the dew point, so it sweats. WRAP.SWEATING tells what R keeps it dry.`,
              source: 'sweating-bulletin',
            } as const,
          ]
        : surface - dewPoint < littleToSpare
          ? [
              {
                level: 'look',
                sentence: `The face is dry with only ${figure(surface - dewPoint, 2)} °F to spare: a little more humidity, or wrap squeezed thinner at a hanger, makes it sweat.`,
              } as const,
            ]
          : []),
    ...(r > 0 && surface >= 140
      ? [
          {
            level: 'look',
            sentence: `At ${figure(surface, 0)} °F the face burns a hand that stays on it, and many jackets and tapes are not made for it: read their data sheets.`,
            source: 'safety-from-memory',
          } as const,
        ]
      : []),
  ],
  sources: ['sweating-bulletin'],
  examples: [
    {
      says: '55 °F air in a 90 °F crawl space, R 4.2 under bright foil, underside',
      given: { around: 90, inside: 55, r: 4.2, humidity: 0.8, face: 'underside' },
      gives: 81.63,
      tolerance: 0.01,
      source: 'sweating-bulletin',
    },
    {
      says: 'the same in R 5.6',
      given: { around: 90, inside: 55, r: 5.6, humidity: 0.8, face: 'underside' },
      gives: 83.32,
      tolerance: 0.01,
      source: 'sweating-bulletin',
    },
    {
      says: 'the films of a British guide, 1.00 outside and 0.37 inside',
      given: { around: 90, inside: 55, r: 4.2, film: 1, inner_film: 0.37 },
      gives: 90 - 35 / 5.57,
      tolerance: 1e-9,
      source: 'inner-film-guide',
    },
  ],
});
