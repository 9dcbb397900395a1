import type { Fahrenheit, Quantity } from '../../base/quantity.ts';
import { ductDuties, ductPlaces, type NeededCode, neededCodes, neededR } from '../../trade/wrap/needed.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import type { SourceId } from '../sources.ts';
import type { Caution } from '../working.ts';

const sourceOf: Readonly<Record<NeededCode, SourceId>> = {
  'IECC 2009 homes': 'needed-iecc-2009',
  'IECC 2015 homes': 'needed-iecc-2015',
  'IRC 2018 homes': 'needed-irc-2018',
  'IRC 2018 buried duct': 'needed-buried-2018',
  'Washington 2021 homes': 'needed-washington-2021',
  'Minnesota homes': 'needed-minnesota',
  'Wisconsin homes': 'needed-wisconsin',
  'Ontario homes': 'needed-ontario',
  'federal guidance homes': 'needed-federal-guidance',
  'weatherization 2020': 'needed-weatherization-2020',
  'IECC 2015 commercial': 'needed-commercial-2015',
  'Washington 2015 commercial': 'needed-washington-2015',
};

const whichIsLaw: Caution = {
  level: 'care',
  sentence:
    'The place where the duct hangs decides which edition is law, and states and cities change it. No code was read whole for these rows: the local code and whoever is licensed there decide.',
  source: 'safety-from-memory',
};

const flatAndInstalled: Caution = {
  level: 'care',
  sentence:
    'Codes mean flat R of the wrap as installed, without air films or facing. Compare it with the R that is left on the duct, not with the package.',
  source: 'wrap-r-table',
};

/** Least R that a code asks for around a duct. h·ft²·°F/Btu, flat. Faults: `no_code_row`, `needs_for_table`. */
export const wrapNeeded = defineFunction({
  name: 'WRAP.NEEDED',
  says: 'The least R that a code asks for around a duct, by the place where it hangs.',
  words: [
    'required r',
    'minimum r-value',
    'code insulation',
    'how much insulation',
    'attic duct',
    'r-6 or r-8',
    'iecc',
    'energy code',
  ],
  gives: { label: 'Needed R', unit: 'r' },
  arguments: {
    code: choice(neededCodes, {
      says: 'the document and its edition; homes and commercial buildings have tables of their own',
    }),
    place: choice(ductPlaces, {
      says: 'where the duct hangs: "inside" is wholly within the thermal envelope, "attic insulation" buried in it',
    }),
    size: optional(
      quantity('in', {
        says: 'the diameter, or the larger side; some tables ask less of a duct under 3 in',
        least: 1,
        most: 120,
        why: 'ducts under 1 in or over 10 ft are most likely a slip of the unit',
      }),
      6,
      'nearly all duct is 3 in and larger, where more R is asked for',
    ),
    duty: optional(
      choice(ductDuties, { says: 'supply or return; "return" also stands for any other duct' }),
      'supply',
      'where tables differ, the supply needs more',
    ),
    zone: optional<Quantity<'count'> | null>(
      quantity('count', {
        says: 'the climate zone, 1 to 8; commercial tables ask for it',
        least: 1,
        most: 8,
        why: 'the energy code has these zones',
        whole: true,
      }),
      null,
      'the tables for homes do not ask',
    ),
    difference: optional<Fahrenheit | null>(
      quantity('degF', {
        says: 'the difference at design between the air in the duct and its surroundings',
        least: 0,
        most: 200,
        why: 'no duct carries air that much colder or hotter than its surroundings',
      }),
      null,
      'only one table asks',
    ),
  },
  formula: [String.raw`R = \text{row of the code for (place, size, duty, zone, difference)}`],
  work: ({ code, place, size, duty, zone, difference }) =>
    fromTrade(neededR(code, { place, size, duty, zone, difference })),
  result: ({ r }) => r,
  steps: ({ row, r }, { code }) => [
    { label: 'Document', sum: '', value: code, unit: 'count', source: sourceOf[code] },
    { label: 'Row', sum: '', value: row, unit: 'count', source: sourceOf[code] },
    {
      label: 'Needed R',
      sum: r === 0 ? 'none is asked for' : '',
      value: r,
      unit: 'r',
      source: sourceOf[code],
    },
  ],
  cautions: ({ also, r }, { code, place }) => [
    whichIsLaw,
    flatAndInstalled,
    ...(also === null ? [] : [{ level: 'look', sentence: also, source: sourceOf[code] } as const]),
    ...(r === 0
      ? [
          {
            level: 'look',
            sentence:
              'No R is asked for here, but cold duct in humid air sweats all the same: WRAP.SWEATING tells what that takes.',
          } as const,
        ]
      : []),
    ...(code === 'IRC 2018 homes' && place === 'attic'
      ? [
          {
            level: 'look',
            sentence:
              'This is one state’s summary. The text of 2015 asks for R 8 of returns as well; see which one your inspector holds to.',
            source: 'needed-iecc-2015',
          } as const,
        ]
      : []),
  ],
  sources: [],
  examples: [
    {
      says: 'an 8 in duct in an attic by the code of 2015',
      given: { code: 'IECC 2015 homes', place: 'attic', size: 8 },
      gives: 8,
      source: 'needed-iecc-2015',
    },
    {
      says: 'an 8 in duct in a crawl space by the same',
      given: { code: 'IECC 2015 homes', place: 'crawl space', size: 8 },
      gives: 6,
      source: 'needed-iecc-2015',
    },
    {
      says: 'a duct on the roof of a shop in zone 5',
      given: { code: 'IECC 2015 commercial', place: 'outdoors', size: 14, zone: 5 },
      gives: 12,
      source: 'needed-commercial-2015',
    },
    {
      says: 'a duct in a basement with air 50 °F off, where the code goes by the difference',
      given: { code: 'Minnesota homes', place: 'basement', difference: 50 },
      gives: 5,
      source: 'needed-minnesota',
    },
    {
      says: 'the return in an attic by the code of 2009',
      given: { code: 'IECC 2009 homes', place: 'attic', duty: 'return' },
      gives: 6,
      source: 'needed-iecc-2009',
    },
    {
      says: 'the same by one summary of the code of 2018',
      given: { code: 'IRC 2018 homes', place: 'attic', duty: 'return' },
      gives: 6,
      source: 'needed-irc-2018',
    },
    {
      says: 'a duct buried in attic insulation',
      given: { code: 'IRC 2018 buried duct', place: 'attic insulation' },
      gives: 8,
      source: 'needed-buried-2018',
    },
    {
      says: 'a duct in the ground, by a state text on the code of 2021',
      given: { code: 'Washington 2021 homes', place: 'slab or ground' },
      gives: 10,
      source: 'needed-washington-2021',
    },
    {
      says: 'a heating duct in a crawl space',
      given: { code: 'Wisconsin homes', place: 'crawl space' },
      gives: 8,
      source: 'needed-wisconsin',
    },
    {
      says: '2.1 m²·K/W against unheated space',
      given: { code: 'Ontario homes', place: 'garage' },
      gives: 11.924,
      tolerance: 0.001,
      source: 'needed-ontario',
    },
    {
      says: 'a return in unconditioned space',
      given: { code: 'federal guidance homes', place: 'basement', duty: 'return' },
      gives: 6,
      source: 'needed-federal-guidance',
    },
    {
      says: 'a duct outdoors in a house that is weatherized',
      given: { code: 'weatherization 2020', place: 'outdoors' },
      gives: 12,
      source: 'needed-weatherization-2020',
    },
    {
      says: 'a duct on the roof in zone 4, by a state text on the code of 2015',
      given: { code: 'Washington 2015 commercial', place: 'outdoors', zone: 4 },
      gives: 8,
      source: 'needed-washington-2015',
    },
  ],
});
