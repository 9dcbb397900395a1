import { done, type Outcome } from '../../base/outcome.ts';
import { type AvailablePressure, availablePressure, designRate } from '../../trade/air/pressure.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import { design } from './cautions.ts';

const taken = (says: string) =>
  optional(
    quantity('inwg', {
      says,
      least: 0,
      most: 5,
      why: 'parts of duct systems take far less than 5 in. w.g.',
    }),
    0,
    'leave out what is not there, or what the maker has already taken off',
  );

export const airAvailable = defineFunction({
  name: 'AIR.AVAILABLE',
  says: 'The pressure that is left for the duct, once coil, filter, grilles and the rest have taken theirs.',
  words: ['available static pressure', 'asp', 'external static', 'esp', 'static budget', 'blower'],
  gives: { label: 'Available pressure', unit: 'inwg' },
  arguments: {
    external_static: quantity('inwg', {
      says: 'the external static pressure that the fan gives at the airflow, from its table',
      least: 0.01,
      most: 10,
      why: 'fans of duct systems give something in between',
    }),
    coil: taken('what the coil takes, if it is outside of the fan’s table'),
    filter: taken('what the filter takes'),
    outlet: taken('what the supply outlet takes'),
    grille: taken('what the return grille takes'),
    damper: taken('what the damper takes'),
    other: taken('what else takes pressure and is not duct'),
  },
  formula: [
    String.raw`\text{available} = \mathrm{external\_static} - (\mathrm{coil} + \mathrm{filter} + \mathrm{outlet} + \mathrm{grille} + \mathrm{damper} + \mathrm{other})`,
  ],
  work: (given): Outcome<AvailablePressure, CallFault> =>
    fromTrade(
      availablePressure(given.external_static, [
        given.coil,
        given.filter,
        given.outlet,
        given.grille,
        given.damper,
        given.other,
      ]),
    ),
  result: ({ available }) => available,
  steps: ({ losses, available }, given) => [
    {
      label: 'Taken before the duct',
      sum: [given.coil, given.filter, given.outlet, given.grille, given.damper, given.other]
        .map((part) => figure(part, 4))
        .join(' + '),
      value: losses,
      unit: 'inwg',
      source: 'sizing-example',
    },
    {
      label: 'Available pressure',
      sum: `${figure(given.external_static, 4)} − ${figure(losses, 4)}`,
      value: available,
      unit: 'inwg',
      source: 'sizing-example',
    },
  ],
  cautions: () => [
    design,
    {
      level: 'look',
      sentence:
        'Read the fan’s table for which parts it was tested with: a coil or filter that is in it already must not be taken off again.',
    },
  ],
  sources: ['sizing-example'],
  examples: [
    {
      says: '0.50 less coil 0.10, filter 0.15, registers 0.03 and grille 0.03',
      given: { external_static: 0.5, coil: 0.1, filter: 0.15, outlet: 0.03, grille: 0.03 },
      gives: 0.19,
      tolerance: 0.000005,
      source: 'sizing-example',
    },
  ],
});

export const airRate = defineFunction({
  name: 'AIR.RATE',
  says: 'The friction rate to size duct by, from the available pressure and the total effective length.',
  words: ['friction rate', 'tel', 'total effective length', 'design friction', 'asp'],
  gives: { label: 'Friction rate', unit: 'inwgPer100Ft' },
  arguments: {
    available_pressure: quantity('inwg', {
      says: 'the pressure that is left for the duct',
      least: 0.001,
      most: 10,
      why: 'without pressure no air moves, and no duct fan gives more',
    }),
    measured_length: quantity('ft', {
      says: 'the measured length of the longest supply and the longest return together',
      least: 1,
      most: 5000,
      why: 'the longest run of a building lies in between',
    }),
    fitting_length: optional(
      quantity('ft', {
        says: 'the equivalent lengths of all fittings on that way',
        least: 0,
        most: 5000,
        why: 'the fittings of one way add up to less',
      }),
      0,
      'the measured length may hold them already',
    ),
  },
  formula: [
    String.raw`\text{friction rate} = \frac{100 \times \mathrm{available\_pressure}}{\mathrm{measured\_length} + \mathrm{fitting\_length}}`,
  ],
  work: ({ available_pressure, measured_length, fitting_length }) =>
    done(designRate(available_pressure, measured_length, fitting_length)),
  result: ({ rate }) => rate,
  steps: ({ length, rate }, { available_pressure, measured_length, fitting_length }) => [
    {
      label: 'Total effective length',
      sum: `${figure(measured_length)} + ${figure(fitting_length)}`,
      value: length,
      unit: 'ft',
      source: 'sizing-example',
    },
    {
      label: 'Friction rate',
      sum: `100 × ${figure(available_pressure, 4)} ÷ ${figure(length)}`,
      value: rate,
      unit: 'inwgPer100Ft',
      source: 'rate-exercise',
    },
  ],
  cautions: ({ rate }, { fitting_length }) => [
    design,
    ...(rate < 0.06 || rate > 0.18
      ? [
          {
            level: 'look',
            sentence: `A friction rate of ${figure(rate, 4)} is outside of 0.06 to 0.18. Below, a stronger fan or easier fittings serve better than ever larger duct; above, the duct may be heard.`,
            source: 'rate-limits',
          } as const,
        ]
      : []),
    ...(fitting_length === 0
      ? [
          {
            level: 'look',
            sentence:
              'No fittings are counted. They often take more than the straight duct: add their equivalent lengths.',
            source: 'sizing-example',
          } as const,
        ]
      : []),
  ],
  sources: ['rate-exercise', 'sizing-example'],
  examples: [
    {
      says: '0.18 in. w.g. over 285 ft',
      given: { available_pressure: 0.18, measured_length: 285 },
      gives: 0.063158,
      tolerance: 0.00001,
      source: 'rate-exercise',
    },
    {
      says: '0.19 in. w.g. over 65 ft of duct and 190 ft of fittings',
      given: { available_pressure: 0.19, measured_length: 65, fitting_length: 190 },
      gives: 0.075,
      tolerance: 0.0005,
      source: 'sizing-example',
    },
  ],
});
