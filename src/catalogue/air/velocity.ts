import { done, type Outcome } from '../../base/outcome.ts';
import type { FeetPerMinute, SquareFeet } from '../../base/quantity.ts';
import { type AirSection, openArea } from '../../trade/air/section.ts';
import { ductVelocity } from '../../trade/air/velocity.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import { airflowArgument, airSectionArguments, airSectionOf } from './arguments.ts';
import { openAreaFormulas } from './formulas.ts';
import { sectionDrawing } from './section-drawing.ts';
import { areaStep, sayAirSection, velocityStep } from './steps.ts';

interface VelocityInDuct {
  readonly section: AirSection;
  readonly area: SquareFeet;
  readonly velocity: FeetPerMinute;
}

export const airVelocityInDuct = defineFunction({
  name: 'AIR.VELOCITY',
  says: 'How fast an airflow moves in a duct.',
  words: ['fpm', 'feet per minute', 'speed', 'how fast', 'noise', 'air speed'],
  gives: { label: 'Velocity', unit: 'fpm' },
  arguments: { airflow: airflowArgument('the airflow in the duct'), ...airSectionArguments },
  formula: [String.raw`\text{velocity} = \frac{144 \times \mathrm{airflow}}{A}`, ...openAreaFormulas],
  work: (given): Outcome<VelocityInDuct, CallFault> => {
    const section = airSectionOf(given);
    if (!section.ok) return section;
    const area = openArea(section.value);
    const velocity = fromTrade(ductVelocity(given.airflow, area));
    if (!velocity.ok) return velocity;
    return done({ section: section.value, area, velocity: velocity.value });
  },
  result: ({ velocity }) => velocity,
  steps: ({ section, area, velocity }, { airflow }) => [
    areaStep(section),
    velocityStep(airflow, area, velocity),
  ],
  drawing: ({ section, velocity }, { airflow }) =>
    sectionDrawing(section, {
      title: `Air in a ${sayAirSection(section)} duct`,
      describes: `${figure(airflow)} cfm through a ${sayAirSection(section)} duct moves at ${figure(velocity, 0)} fpm.`,
      notes: [`${figure(airflow)} cfm`, `${figure(velocity, 0)} fpm`],
    }),
  cautions: ({ velocity }) =>
    velocity > 1200
      ? [
          {
            level: 'look',
            sentence: `${figure(velocity, 0)} fpm is more than a design manual of 1993 allows in homes (1200 in mains, 1000 in branches); it may be heard.`,
            source: 'velocities-1993',
          },
        ]
      : [],
  sources: ['air-velocity'],
  examples: [
    {
      says: '400 cfm in 10 in pipe',
      given: { airflow: 400, shape: 'round', width: 10 },
      gives: 733.39,
      tolerance: 0.01,
      source: 'air-velocity',
    },
    {
      says: '400 cfm in a 12 × 8 in duct',
      given: { airflow: 400, shape: 'rectangular', width: 12, depth: 8 },
      gives: 600,
      source: 'air-velocity',
    },
  ],
});
