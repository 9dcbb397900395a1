import { done } from '../../base/outcome.ts';
import { coefficientOfLength, equivalentLength, fittingLoss } from '../../trade/air/fitting.ts';
import { quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import type { Caution } from '../working.ts';
import { airArguments, airOf, rateArgument, velocityArgument } from './arguments.ts';
import { design } from './cautions.ts';
import { fine } from './fine.ts';
import { relativeDensityFormula, velocityPressureFormula } from './formulas.ts';
import { densityStep, velocityPressureStep } from './steps.ts';

const coefficient = quantity('ratio', {
  says: 'the loss coefficient C of the fitting',
  least: 0,
  most: 200,
  why: 'even a nearly closed damper stays under 200',
});

const whichVelocity: Caution = {
  level: 'look',
  sentence:
    'A coefficient belongs to one velocity: of a branch it may be that of the branch or of the main before it. See which one its table names. Tables also differ by make and size: an elbow of r/D 1.5 is listed from 0.11 to 0.28.',
};

const sameAir: Caution = {
  level: 'look',
  sentence:
    'A length in feet holds for one velocity and friction rate. At others the same fitting is longer or shorter.',
};

const fittingVelocity = velocityArgument('the velocity that the coefficient belongs to');

export const airLoss = defineFunction({
  name: 'AIR.LOSS',
  says: 'The pressure that a fitting takes, from its loss coefficient.',
  words: [
    'fitting loss',
    'elbow loss',
    'dynamic loss',
    'c factor',
    'coefficient',
    'pressure drop of a fitting',
  ],
  gives: { label: 'Loss', unit: 'inwg' },
  arguments: {
    coefficient: quantity('ratio', {
      says: 'the loss coefficient C of the fitting',
      least: -1,
      most: 200,
      why: 'air that passes a branch may win a little pressure, and even a nearly closed damper stays under 200',
    }),
    velocity: fittingVelocity,
    ...airArguments,
  },
  formula: [
    String.raw`\text{loss} = \mathrm{coefficient} \times p`,
    velocityPressureFormula,
    relativeDensityFormula,
  ],
  work: (given) => {
    const air = airOf(given);
    return done({ air, ...fittingLoss(given.coefficient, given.velocity, air) });
  },
  result: ({ loss }) => loss,
  steps: ({ air, velocityPressure, loss }, given) => [
    densityStep(air),
    velocityPressureStep(given.velocity, air, velocityPressure),
    {
      label: 'Loss',
      sum: `${figure(given.coefficient, 4)} × ${fine(velocityPressure)}`,
      value: loss,
      unit: 'inwg',
      source: 'fitting-coefficient',
    },
  ],
  cautions: () => [design, whichVelocity],
  sources: ['fitting-coefficient', 'velocity-pressure'],
  examples: [
    {
      says: 'C 0.24 at 900 fpm',
      given: { coefficient: 0.24, velocity: 900 },
      gives: 0.01212,
      tolerance: 0.00005,
      source: 'fitting-coefficient',
    },
  ],
});

export const airLength = defineFunction({
  name: 'AIR.LENGTH',
  says: 'How many feet of straight duct take as much pressure as a fitting.',
  words: ['equivalent length', 'fitting length', 'effective length', 'elbow in feet', 'tel'],
  gives: { label: 'Equivalent length', unit: 'ft' },
  arguments: {
    coefficient,
    velocity: fittingVelocity,
    friction_rate: rateArgument('the friction rate of the straight duct at that airflow'),
    ...airArguments,
  },
  formula: [
    String.raw`\text{equivalent length} = \frac{100 \times \mathrm{coefficient} \times p}{\mathrm{friction\_rate}}`,
    velocityPressureFormula,
    relativeDensityFormula,
  ],
  work: (given) => {
    const air = airOf(given);
    return done({ air, ...equivalentLength(given.coefficient, given.velocity, given.friction_rate, air) });
  },
  result: ({ length }) => length,
  steps: ({ air, velocityPressure, loss, length }, given) => [
    densityStep(air),
    velocityPressureStep(given.velocity, air, velocityPressure),
    {
      label: 'Loss',
      sum: `${figure(given.coefficient, 4)} × ${fine(velocityPressure)}`,
      value: loss,
      unit: 'inwg',
      source: 'fitting-coefficient',
    },
    {
      label: 'Equivalent length',
      sum: `100 × ${fine(loss)} ÷ ${figure(given.friction_rate, 5)}`,
      value: length,
      unit: 'ft',
      source: 'equivalent-length',
    },
  ],
  cautions: () => [design, whichVelocity, sameAir],
  sources: ['equivalent-length', 'fitting-coefficient', 'velocity-pressure'],
  examples: [
    {
      says: 'C 0.28 in 6 in pipe at 499 fpm and 0.08',
      given: { coefficient: 0.28, velocity: 499, friction_rate: 0.08 },
      gives: 5.4,
      tolerance: 0.05,
      source: 'equivalent-length',
    },
  ],
});

export const airCoefficient = defineFunction({
  name: 'AIR.COEFFICIENT',
  says: 'The loss coefficient behind an equivalent length that was given for one velocity and friction rate.',
  words: ['coefficient from length', 'convert equivalent length', 'elbow in feet', 'c factor'],
  gives: { label: 'Loss coefficient', unit: 'ratio' },
  arguments: {
    length: quantity('ft', {
      says: 'the equivalent length of the fitting',
      least: 0,
      most: 1000,
      why: 'listed fittings stay under 100 ft, so a longer one is most likely a slip',
    }),
    velocity: velocityArgument('the velocity that the length was given for'),
    friction_rate: rateArgument('the friction rate that the length was given for'),
    ...airArguments,
  },
  formula: [
    String.raw`\text{coefficient} = \frac{\mathrm{length} \times \mathrm{friction\_rate}}{100 \times p}`,
    velocityPressureFormula,
    relativeDensityFormula,
  ],
  work: (given) => {
    const air = airOf(given);
    return done({ air, ...coefficientOfLength(given.length, given.velocity, given.friction_rate, air) });
  },
  result: ({ coefficient: found }) => found,
  steps: ({ air, velocityPressure, loss, coefficient: found }, given) => [
    densityStep(air),
    velocityPressureStep(given.velocity, air, velocityPressure),
    {
      label: 'Loss',
      sum: `${figure(given.length)} × ${figure(given.friction_rate, 5)} ÷ 100`,
      value: loss,
      unit: 'inwg',
      source: 'equivalent-length',
    },
    {
      label: 'Loss coefficient',
      sum: `${fine(loss)} ÷ ${fine(velocityPressure)}`,
      value: found,
      unit: 'ratio',
      source: 'fitting-coefficient',
    },
  ],
  cautions: () => [design, sameAir],
  sources: ['equivalent-length', 'fitting-coefficient', 'velocity-pressure'],
  examples: [
    {
      says: '35 ft at 900 fpm and 0.08',
      given: { length: 35, velocity: 900, friction_rate: 0.08 },
      gives: 0.5545,
      tolerance: 0.0005,
      source: 'equivalent-length',
    },
  ],
});
