import { done } from '../../base/outcome.ts';
import { velocityAtOneInch, velocityOfPressure, velocityPressure } from '../../trade/air/velocity.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import { airArguments, airOf, velocityArgument } from './arguments.ts';
import { relativeDensityFormula } from './formulas.ts';
import { densityStep, velocityPressureStep } from './steps.ts';

const atOneInch = optional(
  quantity('fpm', {
    says: 'the velocity whose pressure is one inch of water in standard air',
    least: 4000,
    most: 4010,
    why: 'the figures in use lie between 4005 and 4009',
  }),
  velocityAtOneInch,
  'the trade’s figure; density × (V ÷ 1097)² makes it 4005.7, 0.03 % away in pressure',
);

export const airVelocityPressure = defineFunction({
  name: 'AIR.VP',
  says: 'The pressure of moving air: what a pitot tube shows at a velocity.',
  words: ['velocity pressure', 'pitot', 'dynamic pressure', '4005', '1097'],
  gives: { label: 'Velocity pressure', unit: 'inwg' },
  arguments: {
    velocity: velocityArgument('how fast the air moves'),
    ...airArguments,
    one_inch_velocity: atOneInch,
  },
  formula: [
    String.raw`\text{velocity pressure} = \left(\frac{\mathrm{velocity}}{\mathrm{one\_inch\_velocity}}\right)^2 \times \sigma`,
    relativeDensityFormula,
  ],
  work: (given) => {
    const air = airOf(given);
    return done({ air, pressure: velocityPressure(given.velocity, air, given.one_inch_velocity) });
  },
  result: ({ pressure }) => pressure,
  steps: ({ air, pressure }, { velocity, one_inch_velocity }) => [
    densityStep(air),
    velocityPressureStep(velocity, air, pressure, one_inch_velocity),
  ],
  sources: ['velocity-pressure'],
  examples: [
    {
      says: '600 fpm in standard air',
      given: { velocity: 600 },
      gives: 0.022444,
      tolerance: 0.000005,
      source: 'velocity-pressure',
    },
    {
      says: '900 fpm by the rule with 1097',
      given: { velocity: 900, one_inch_velocity: 4005.68 },
      gives: 0.050482,
      tolerance: 0.000005,
      source: 'darcy-weisbach',
    },
  ],
});

export const airPitot = defineFunction({
  name: 'AIR.PITOT',
  says: 'How fast air moves, from the velocity pressure that a pitot tube reads.',
  words: ['pitot tube', 'traverse', 'velocity from pressure', 'manometer', 'test and balance'],
  gives: { label: 'Velocity', unit: 'fpm' },
  arguments: {
    velocity_pressure: quantity('inwg', {
      says: 'the velocity pressure that was read',
      least: 0.0001,
      most: 10,
      why: 'air in duct gives readings in between',
    }),
    ...airArguments,
    one_inch_velocity: atOneInch,
  },
  formula: [
    String.raw`\text{velocity} = \mathrm{one\_inch\_velocity} \times \sqrt{\frac{\mathrm{velocity\_pressure}}{\sigma}}`,
    relativeDensityFormula,
  ],
  work: (given) => {
    const air = airOf(given);
    return done({ air, velocity: velocityOfPressure(given.velocity_pressure, air, given.one_inch_velocity) });
  },
  result: ({ velocity }) => velocity,
  steps: ({ air, velocity }, { velocity_pressure, one_inch_velocity }) => [
    densityStep(air),
    {
      label: 'Velocity',
      sum: `${figure(one_inch_velocity, 1)} × √(${figure(velocity_pressure, 5)} × 0.075 ÷ ${figure(air.density, 5)})`,
      value: velocity,
      unit: 'fpm',
      source: 'velocity-pressure',
    },
  ],
  cautions: () => [
    {
      level: 'look',
      sentence:
        'One reading is not the mean: traverse the duct, take the velocity of each reading, and average the velocities.',
    },
  ],
  sources: ['velocity-pressure'],
  examples: [
    {
      says: '0.05 in. w.g. in standard air',
      given: { velocity_pressure: 0.05 },
      gives: 895.55,
      tolerance: 0.1,
      source: 'velocity-pressure',
    },
  ],
});
