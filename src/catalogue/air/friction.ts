import { done, type Outcome } from '../../base/outcome.ts';
import type { Air } from '../../trade/air/density.ts';
import { ductFriction, type Friction } from '../../trade/air/friction.ts';
import { openArea } from '../../trade/air/section.ts';
import { type Capacity, ductCapacity } from '../../trade/air/sizing.ts';
import { ductVelocity } from '../../trade/air/velocity.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import {
  airArguments,
  airflowArgument,
  airOf,
  airSectionArguments,
  airSectionOf,
  rateArgument,
  roughnessArgument,
  roundedByArgument,
} from './arguments.ts';
import { betweenFlows, design, straightDuct } from './cautions.ts';
import { fine } from './fine.ts';
import { darcyRate, ductFormulas } from './formulas.ts';
import { sectionDrawing } from './section-drawing.ts';
import { frictionSteps, sayAirSection } from './steps.ts';

interface FrictionOfDuct {
  readonly air: Air;
  readonly friction: Friction;
}

export const airFriction = defineFunction({
  name: 'AIR.FRICTION',
  says: 'What straight duct takes from the pressure of the fan, in inches of water for each 100 ft.',
  words: [
    'friction rate',
    'pressure drop',
    'static',
    'ductulator',
    'friction chart',
    'per 100 feet',
    'resistance',
  ],
  gives: { label: 'Friction rate', unit: 'inwgPer100Ft' },
  arguments: {
    airflow: airflowArgument('the airflow in the duct'),
    ...airSectionArguments,
    roughness: roughnessArgument,
    ...airArguments,
    rounded_by: roundedByArgument,
  },
  formula: [String.raw`\text{friction rate} = ${darcyRate}`, ...ductFormulas],
  work: (given): Outcome<FrictionOfDuct, CallFault> => {
    const section = airSectionOf(given);
    if (!section.ok) return section;
    const possible = fromTrade(ductVelocity(given.airflow, openArea(section.value)));
    if (!possible.ok) return possible;
    const air = airOf(given);
    const friction = ductFriction(given.airflow, section.value, given.roughness, air, given.rounded_by);
    return done({ air, friction });
  },
  result: ({ friction }) => friction.rate,
  steps: ({ air, friction }, { airflow, rounded_by }) => frictionSteps(airflow, friction, rounded_by, air),
  drawing: ({ friction }, { airflow }) =>
    sectionDrawing(friction.section, {
      title: `Friction of a ${sayAirSection(friction.section)} duct`,
      describes: `${figure(airflow)} cfm in a ${sayAirSection(friction.section)} duct takes ${fine(friction.rate, 3)} in. w.g. for each 100 ft.`,
      notes: [`${figure(airflow)} cfm`, `${fine(friction.rate, 3)} in. w.g.`, 'for each 100 ft'],
    }),
  cautions: ({ friction }) => [design, straightDuct, ...betweenFlows(friction)],
  sources: ['darcy-weisbach', 'colebrook', 'roughness-table', 'velocity-pressure'],
  examples: [
    {
      says: '400 cfm in 10 in galvanized pipe',
      given: { airflow: 400, shape: 'round', width: 10 },
      gives: 0.085507,
      tolerance: 0.00001,
      source: 'darcy-weisbach',
    },
    {
      says: 'the same with the rougher wall of older charts',
      given: { airflow: 400, shape: 'round', width: 10, roughness: 0.0005 },
      gives: 0.088827,
      tolerance: 0.00001,
      source: 'darcy-weisbach',
    },
    {
      says: '400 cfm in a 12 × 8 in duct',
      given: { airflow: 400, shape: 'rectangular', width: 12, depth: 8 },
      gives: 0.062686,
      tolerance: 0.00001,
      source: 'huebscher',
    },
    {
      says: '4000 cfm in 20 in pipe: a printed chart reads about 0.23',
      given: { airflow: 4000, shape: 'round', width: 20 },
      gives: 0.23,
      tolerance: 0.03,
      source: 'friction-chart',
    },
  ],
});

interface CapacityOfDuct extends Capacity {
  readonly air: Air;
}

export const airCapacity = defineFunction({
  name: 'AIR.CAPACITY',
  says: 'The most air that a duct carries without going past a friction rate.',
  words: ['how much air', 'how many cfm', 'what will it carry', 'duct chart', 'airflow of a size'],
  gives: { label: 'Airflow', unit: 'cfm' },
  arguments: {
    ...airSectionArguments,
    friction_rate: rateArgument('the friction rate to keep'),
    roughness: roughnessArgument,
    ...airArguments,
    rounded_by: roundedByArgument,
  },
  formula: [
    String.raw`\mathrm{airflow} = \text{the most with } ${darcyRate} \le \mathrm{friction\_rate}`,
    ...ductFormulas,
  ],
  work: (given): Outcome<CapacityOfDuct, CallFault> => {
    const section = airSectionOf(given);
    if (!section.ok) return section;
    const air = airOf(given);
    const capacity = ductCapacity(section.value, given.friction_rate, given.roughness, air, given.rounded_by);
    const possible = fromTrade(ductVelocity(capacity.airflow, openArea(section.value)));
    return possible.ok ? done({ air, ...capacity }) : possible;
  },
  result: ({ airflow }) => airflow,
  steps: ({ air, airflow, friction }, given) => [
    ...frictionSteps(airflow, friction, given.rounded_by, air),
    {
      label: 'Airflow',
      sum: `the most that stays within ${figure(given.friction_rate, 4)} in. w.g. per 100 ft`,
      value: airflow,
      unit: 'cfm',
      source: 'darcy-weisbach',
    },
  ],
  drawing: ({ airflow, friction }, given) =>
    sectionDrawing(friction.section, {
      title: `What a ${sayAirSection(friction.section)} duct carries`,
      describes: `A ${sayAirSection(friction.section)} duct carries ${figure(airflow, 0)} cfm at ${figure(given.friction_rate, 4)} in. w.g. for each 100 ft.`,
      notes: [`${figure(airflow, 0)} cfm`, `${figure(given.friction_rate, 4)} in. w.g.`, 'for each 100 ft'],
    }),
  cautions: ({ friction }) => [design, straightDuct, ...betweenFlows(friction)],
  sources: ['darcy-weisbach', 'colebrook', 'roughness-table', 'velocity-pressure'],
  examples: [
    {
      says: '6 in pipe at 0.10',
      given: { shape: 'round', width: 6, friction_rate: 0.1 },
      gives: 110.78,
      tolerance: 0.01,
      source: 'darcy-weisbach',
    },
    {
      says: '8 in pipe at 0.08',
      given: { shape: 'round', width: 8, friction_rate: 0.08 },
      gives: 212.16,
      tolerance: 0.01,
      source: 'darcy-weisbach',
    },
  ],
});
