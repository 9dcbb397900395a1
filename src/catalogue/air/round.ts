import { done, type Outcome } from '../../base/outcome.ts';
import type { Inches } from '../../base/quantity.ts';
import { type AirSection, equivalentDiameter, hydraulicDiameter } from '../../trade/air/section.ts';
import { choice } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { figure } from '../say.ts';
import { airSectionOf, roundedByArgument, sizeArgument } from './arguments.ts';
import { openSectionFormulas, roundedFormulas } from './formulas.ts';
import { pairDrawing } from './section-drawing.ts';
import { roundedSteps, sayAirSection } from './steps.ts';

interface RoundedDuct {
  readonly section: AirSection;
  readonly diameter: Inches;
}

export const airRound = defineFunction({
  name: 'AIR.ROUND',
  says: 'The round duct that does the work of a rectangular or flat oval one.',
  words: [
    'equivalent diameter',
    'round equivalent',
    'rectangular to round',
    'oval',
    'huebscher',
    'hydraulic diameter',
  ],
  gives: { label: 'Round diameter', unit: 'in' },
  arguments: {
    shape: choice(['rectangular', 'flat oval'], { says: 'the shape of the duct' }),
    width: sizeArgument('the inside width'),
    depth: sizeArgument('the inside depth'),
    rounded_by: roundedByArgument,
  },
  formula: [...roundedFormulas, ...openSectionFormulas],
  work: (given): Outcome<RoundedDuct, CallFault> => {
    const section = airSectionOf(given);
    if (!section.ok) return section;
    const diameter =
      given.rounded_by === 'hydraulic' ? hydraulicDiameter(section.value) : equivalentDiameter(section.value);
    return done({ section: section.value, diameter });
  },
  result: ({ diameter }) => diameter,
  steps: ({ section }, { rounded_by }) => roundedSteps(section, rounded_by),
  drawing: ({ section, diameter }) =>
    pairDrawing(
      section,
      { shape: 'round', diameter },
      {
        title: 'A duct and the round one that stands for it',
        describes: `A ${sayAirSection(section)} duct does the work of a round one of ${figure(diameter, 2)} in.`,
      },
    ),
  cautions: (_, { rounded_by }) =>
    rounded_by === 'hydraulic'
      ? [
          {
            level: 'look',
            sentence:
              'With the hydraulic diameter goes the true velocity, airflow over the true area, not that of a round duct.',
            source: 'equivalents-criticized',
          },
        ]
      : [
          {
            level: 'look',
            sentence:
              'With this diameter goes the whole airflow. The velocity in it is not the true one: for that use AIR.VELOCITY with the true shape.',
            source: 'huebscher',
          },
        ],
  sources: ['huebscher', 'flat-oval', 'flat-oval-tests', 'hydraulic-diameter', 'equivalents-criticized'],
  examples: [
    {
      says: 'a 20 × 8 in duct',
      given: { shape: 'rectangular', width: 20, depth: 8 },
      gives: 13.481,
      tolerance: 0.0005,
      source: 'huebscher',
    },
    {
      says: 'the same in a printed table of 1956',
      given: { shape: 'rectangular', width: 20, depth: 8 },
      gives: 13.5,
      tolerance: 0.07,
      source: 'equivalents-1956',
    },
    {
      says: 'a 14 × 8 in flat oval',
      given: { shape: 'flat oval', width: 14, depth: 8 },
      gives: 11.044,
      tolerance: 0.0005,
      source: 'flat-oval',
    },
    {
      says: 'a 12 × 8 in duct by its hydraulic diameter',
      given: { shape: 'rectangular', width: 12, depth: 8, rounded_by: 'hydraulic' },
      gives: 9.6,
      tolerance: 0.0005,
      source: 'hydraulic-diameter',
    },
  ],
});
