import { done, type Outcome } from '../../base/outcome.ts';
import {
  type ElbowCoefficient,
  elbowAngles,
  elbowCoefficient,
  elbowMakes,
  elbowRatios,
  leastMiterReynolds,
  miterAngles,
  miterCoefficient,
} from '../../trade/air/elbow.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import type { Caution } from '../working.ts';

const tablesDiffer: Caution = {
  level: 'look',
  sentence:
    'Tables differ: for a radius of 1.5 diameters they list 0.11 for a die-stamped 8 in elbow, 0.15 here, and 0.12 to 0.51 for gored ones by diameter. Prefer the figure of the maker.',
  source: 'elbow-table',
};

export const airElbow = defineFunction({
  name: 'AIR.ELBOW',
  says: 'The loss coefficient of a round elbow, smooth or in pieces.',
  words: ['elbow', 'c factor', 'gored elbow', 'ell', 'turn', 'long radius', 'loss coefficient'],
  gives: { label: 'Loss coefficient', unit: 'ratio' },
  arguments: {
    made: choice(elbowMakes, { says: 'how the elbow is made: smooth, or of how many pieces' }),
    radius_ratio: choice(elbowRatios, {
      says: 'the radius of its middle line over its diameter',
    }),
    angle: optional(
      choice(elbowAngles, { says: 'how far it turns the air, in degrees' }),
      90,
      'most elbows turn a right angle',
    ),
  },
  formula: [
    String.raw`C = \text{table}(\mathrm{made}, \mathrm{radius\_ratio}) \times \text{factor}(\mathrm{angle}) \quad \text{(rows of the tables only)}`,
  ],
  work: ({ made, radius_ratio, angle }): Outcome<ElbowCoefficient, CallFault> =>
    fromTrade(elbowCoefficient(made, radius_ratio, angle)),
  result: ({ coefficient }) => coefficient,
  steps: ({ rightAngled, angleFactor, coefficient }, { made, radius_ratio, angle }) => [
    {
      label: 'At 90°',
      sum: `${made}, radius ${radius_ratio} diameters`,
      value: rightAngled,
      unit: 'ratio',
      source: 'elbow-table',
    },
    {
      label: 'Factor for the angle',
      sum: `${angle}°`,
      value: angleFactor,
      unit: 'ratio',
      source: 'elbow-table',
    },
    {
      label: 'Loss coefficient',
      sum: `${figure(rightAngled)} × ${figure(angleFactor)}`,
      value: coefficient,
      unit: 'ratio',
      source: 'fitting-coefficient',
    },
  ],
  cautions: (_, { made, angle }) => [
    tablesDiffer,
    ...(made !== 'smooth' && angle !== 90
      ? [
          {
            level: 'look',
            sentence:
              'The factor for the angle stands in a note to the whole table; an elbow that turns less usually has fewer pieces too, and then it fits less well.',
            source: 'elbow-table',
          } as const,
        ]
      : []),
  ],
  sources: ['elbow-table'],
  examples: [
    {
      says: 'five pieces, radius 1.5 diameters',
      given: { made: '5 pieces', radius_ratio: 1.5 },
      gives: 0.24,
      source: 'elbow-table',
    },
    {
      says: 'smooth, radius one diameter, 45°',
      given: { made: 'smooth', radius_ratio: 1, angle: 45 },
      gives: 0.132,
      tolerance: 0.0005,
      source: 'elbow-table',
    },
  ],
});

export const airMiter = defineFunction({
  name: 'AIR.MITER',
  says: 'The loss coefficient of a round elbow cut in one miter, without vanes.',
  words: ['mitered elbow', 'square elbow', 'two piece elbow', 'c factor', 'loss coefficient'],
  gives: { label: 'Loss coefficient', unit: 'ratio' },
  arguments: {
    angle: choice(miterAngles, { says: 'how far it turns the air, in degrees' }),
    reynolds_number: quantity('ratio', {
      says: 'the Reynolds number of the air, as AIR.REYNOLDS gives it',
      least: leastMiterReynolds,
      most: 1e8,
      why: 'the table begins there, and slower air than that is rare in duct',
    }),
  },
  formula: [
    String.raw`C = \text{table}(\mathrm{angle}) \times k(\mathrm{reynolds\_number}) \quad \text{(} k \text{ straight between the rows of its table, 1 from 140,000 up)}`,
  ],
  work: ({ angle, reynolds_number }) => done(miterCoefficient(angle, reynolds_number)),
  result: ({ coefficient }) => coefficient,
  steps: ({ plain, reynoldsFactor, coefficient }, { angle, reynolds_number }) => [
    {
      label: 'For fast air',
      sum: `mitered, ${angle}°`,
      value: plain,
      unit: 'ratio',
      source: 'elbow-table',
    },
    {
      label: 'Factor for slower air',
      sum: `straight between the rows of the table, at Re ${figure(reynolds_number, 0)}`,
      value: reynoldsFactor,
      unit: 'ratio',
      source: 'elbow-table',
    },
    {
      label: 'Loss coefficient',
      sum: `${figure(plain)} × ${figure(reynoldsFactor, 4)}`,
      value: coefficient,
      unit: 'ratio',
      source: 'fitting-coefficient',
    },
  ],
  cautions: () => [
    {
      level: 'look',
      sentence: 'Without vanes. Vanes take much of this away; use the figure of their maker.',
    },
  ],
  sources: ['elbow-table'],
  examples: [
    {
      says: '90° at Re 40,000',
      given: { angle: 90, reynolds_number: 40_000 },
      gives: 1.368,
      tolerance: 0.0005,
      source: 'elbow-table',
    },
    {
      says: '90° in fast air',
      given: { angle: 90, reynolds_number: 200_000 },
      gives: 1.2,
      source: 'elbow-table',
    },
  ],
});
