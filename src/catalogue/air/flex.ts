import { done, type Outcome } from '../../base/outcome.ts';
import type { Air } from '../../trade/air/density.ts';
import { type FlexFriction, flexCompression, flexFriction, flexRules } from '../../trade/air/flex.ts';
import { openArea } from '../../trade/air/section.ts';
import { ductVelocity } from '../../trade/air/velocity.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import type { Caution } from '../working.ts';
import { airArguments, airflowArgument, airOf, flexRoughnessArgument, sizeArgument } from './arguments.ts';
import { betweenFlows, design, straightDuct } from './cautions.ts';
import { fine } from './fine.ts';
import { darcyRate, factorFormulas, slackFormula } from './formulas.ts';
import { frictionSteps } from './steps.ts';

const mostSlack = 0.15;

const pullTight: Caution = {
  level: 'look',
  sentence:
    'This is slack flex: its loss is several times that of metal pipe, and one size up does not make up for it. Pull it tight and cut off what is too long.',
  source: 'flex-journal-2010',
};

interface FlexInAir extends FlexFriction {
  readonly air: Air;
}

export const airFlex = defineFunction({
  name: 'AIR.FLEX',
  says: 'What flexible duct takes from the pressure of the fan, by how slack it lies.',
  words: ['flex', 'flexible duct', 'flex friction', 'slack', 'compression', 'sagging flex'],
  gives: { label: 'Friction rate', unit: 'inwgPer100Ft' },
  arguments: {
    airflow: airflowArgument('the airflow in the flex'),
    diameter: sizeArgument('the inside diameter of the flex'),
    compression: optional(
      quantity('percent', {
        says: 'how far short of full stretch it lies: 15 % is 0.15',
        least: 0,
        most: 0.45,
        why: 'flex was tested up to 45 %',
      }),
      0.15,
      'flex let go after stretching shortens about 15 % by itself (trade journal, 2010)',
    ),
    rule: optional(
      choice(flexRules, {
        says: 'what slack does: the handbook equation after laboratory tests, or what the makers’ guide tells',
      }),
      'equation',
      'it follows the tests; the makers’ guide says 2 times at 15 %, where tests found about 4',
    ),
    roughness: flexRoughnessArgument,
    ...airArguments,
  },
  formula: [
    String.raw`\text{friction rate} = s \times ${darcyRate}, \quad D = \mathrm{diameter}, \quad V = \frac{576 \times \mathrm{airflow}}{\pi D^2}`,
    slackFormula,
    String.raw`\text{maker guide:}\quad s = 1, 2, 4 \text{ at } \mathrm{compression} = 0, 0.15, 0.30`,
    ...factorFormulas,
  ],
  work: (given): Outcome<FlexInAir, CallFault> => {
    const air = airOf(given);
    const { airflow, diameter, compression, rule, roughness } = given;
    const possible = fromTrade(ductVelocity(airflow, openArea({ shape: 'round', diameter })));
    if (!possible.ok) return possible;
    const friction = fromTrade(flexFriction(airflow, diameter, compression, rule, roughness, air));
    return friction.ok ? done({ air, ...friction.value }) : friction;
  },
  result: ({ rate }) => rate,
  steps: ({ air, stretched, factor, rate }, { airflow, diameter, compression, rule }) => [
    ...frictionSteps(airflow, stretched, 'equal friction', air).map((step) =>
      step.label === 'Friction rate' ? { ...step, label: 'Friction rate at full stretch' } : step,
    ),
    {
      label: 'What slack multiplies it by',
      sum:
        rule === 'equation'
          ? `1 + 0.58 × ${figure(100 * compression, 2)} × e^(−0.126 × ${figure(diameter, 3)})`
          : `from the makers’ guide, at ${figure(100 * compression, 2)} %`,
      value: factor,
      unit: 'ratio',
      source: rule === 'equation' ? 'flex-equation' : 'flex-maker-guide',
    },
    {
      label: 'Friction rate',
      sum: `${figure(factor, 4)} × ${fine(stretched.rate)}`,
      value: rate,
      unit: 'inwgPer100Ft',
      source: 'darcy-weisbach',
    },
  ],
  cautions: ({ stretched }, { compression, diameter }) => [
    design,
    straightDuct,
    ...betweenFlows(stretched),
    ...(compression > mostSlack ? [pullTight] : []),
    ...(diameter < 6 || diameter > 16
      ? [
          {
            level: 'look',
            sentence: `Flex was tested from 6 to 16 in; for ${figure(diameter, 2)} in the rule is carried past its tests.`,
            source: 'flex-thesis-2013',
          } as const,
        ]
      : []),
    {
      level: 'look',
      sentence:
        'Sag and tight bends take more, and no open rule tells how much. Support it as its maker and the local code say.',
    },
  ],
  sources: [
    'flex-equation',
    'flex-maker-guide',
    'flex-study-2004',
    'flex-thesis-2013',
    'flex-journal-2010',
    'roughness-table',
  ],
  examples: [
    {
      says: '100 cfm in 6 in flex at full stretch',
      given: { airflow: 100, diameter: 6, compression: 0 },
      gives: 0.11335,
      tolerance: 0.0001,
      source: 'darcy-weisbach',
    },
    {
      says: 'the same, 15 % short of full stretch',
      given: { airflow: 100, diameter: 6, compression: 0.15 },
      gives: 0.5764,
      tolerance: 0.0005,
      source: 'flex-equation',
    },
    {
      says: 'the same by the makers’ guide: twice the friction',
      given: { airflow: 100, diameter: 6, compression: 0.15, rule: 'maker guide' },
      gives: 0.2267,
      tolerance: 0.0002,
      source: 'flex-maker-guide',
    },
  ],
});

const flexLength = (says: string) =>
  quantity('ft', {
    says,
    least: 0.5,
    most: 200,
    why: 'no run of flex is shorter or longer, so it is most likely a slip of the unit',
  });

export const airCompression = defineFunction({
  name: 'AIR.COMPRESSION',
  says: 'How far short of full stretch flex lies.',
  words: ['slack', 'flex length', 'pulled tight', 'stretch', 'compressed flex'],
  gives: { label: 'Compression', unit: 'percent' },
  arguments: {
    installed_length: flexLength('how long the flex lies, along its middle'),
    stretched_length: flexLength('how long the same piece is at full stretch'),
  },
  formula: [
    String.raw`\text{compression} = \frac{\mathrm{stretched\_length} - \mathrm{installed\_length}}{\mathrm{stretched\_length}}`,
  ],
  work: ({ installed_length, stretched_length }): Outcome<number, CallFault> =>
    fromTrade(flexCompression(installed_length, stretched_length)),
  result: (compression) => compression,
  steps: (compression, { installed_length, stretched_length }) => [
    {
      label: 'Compression',
      sum: `(${figure(stretched_length)} − ${figure(installed_length)}) ÷ ${figure(stretched_length)}`,
      value: compression,
      unit: 'percent',
      source: 'geometry',
    },
  ],
  cautions: (compression) => (compression > mostSlack ? [pullTight] : []),
  sources: ['geometry', 'flex-journal-2010'],
  examples: [
    {
      says: 'a 25 ft bag over a run of 21.25 ft',
      given: { installed_length: 21.25, stretched_length: 25 },
      gives: 0.15,
      tolerance: 1e-9,
      source: 'geometry',
    },
  ],
});
