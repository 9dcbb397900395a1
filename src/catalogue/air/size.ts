import { done, type Outcome } from '../../base/outcome.ts';
import { type FeetPerMinute, type Inches, inches } from '../../base/quantity.ts';
import type { Air } from '../../trade/air/density.ts';
import { equivalentDiameter } from '../../trade/air/section.ts';
import { type RoundSize, roundSize, widthForDepth } from '../../trade/air/sizing.ts';
import { ductVelocity } from '../../trade/air/velocity.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import type { Step } from '../working.ts';
import {
  airArguments,
  airflowArgument,
  airOf,
  rateArgument,
  roughnessArgument,
  sizeArgument,
  velocityArgument,
} from './arguments.ts';
import { betweenFlows, design, straightDuct } from './cautions.ts';
import { fine } from './fine.ts';
import { darcyRate, factorFormulas, slackFormula } from './formulas.ts';
import { pairDrawing, sectionDrawing } from './section-drawing.ts';
import { densityStep, sayAirSection } from './steps.ts';

interface SizeInAir extends RoundSize {
  readonly air: Air;
}

export const airDiameter = defineFunction({
  name: 'AIR.DIAMETER',
  says: 'The round duct that carries an airflow at a friction rate, exactly or in the next stocked size.',
  words: ['duct size', 'size a duct', 'what size pipe', 'duct chart', 'equal friction', 'branch size'],
  gives: { label: 'Diameter', unit: 'in' },
  arguments: {
    airflow: airflowArgument('the airflow to carry'),
    friction_rate: rateArgument('the friction rate to keep'),
    velocity_limit: optional<FeetPerMinute | null>(
      velocityArgument('the velocity to keep as well; blank for none'),
      null,
      'friction alone decides; a federal manual of 2017 keeps 1500 fpm beside 0.08',
    ),
    step: optional(
      choice([0, 0.5, 1, 2], {
        says: 'go up to the next whole step of so many inches, as sizes are stocked; 0 for the exact diameter',
      }),
      0,
      'the exact diameter is shown first; stocked sizes differ from shop to shop',
    ),
    roughness: roughnessArgument,
    compression: optional(
      quantity('percent', {
        says: 'for flex, how far short of full stretch it lies: 4 % is 0.04',
        least: 0,
        most: 0.45,
        why: 'flex was tested up to 45 %',
      }),
      0,
      'metal duct does not shorten; flex also takes a roughness of 0.003',
    ),
    ...airArguments,
  },
  formula: [
    String.raw`\text{diameter} = \max(D, D_v) \text{ (step 0)}, \quad \text{diameter} = \mathrm{step} \times \left\lceil \frac{\max(D, D_v)}{\mathrm{step}} \right\rceil`,
    String.raw`D = \text{the least with } s \times ${darcyRate} \le \mathrm{friction\_rate}, \quad V = \frac{576 \times \mathrm{airflow}}{\pi D^2}`,
    String.raw`D_v = \sqrt{\frac{576 \times \mathrm{airflow}}{\pi \times \mathrm{velocity\_limit}}} \quad \text{(0 without a limit)}`,
    slackFormula,
    ...factorFormulas,
  ],
  work: (given): Outcome<SizeInAir, CallFault> => {
    const air = airOf(given);
    const { airflow, roughness, compression, step } = given;
    const limits = { rate: given.friction_rate, mostVelocity: given.velocity_limit };
    const size = roundSize(airflow, limits, roughness, air, compression, inches(step));
    const possible = fromTrade(ductVelocity(airflow, size.friction.area));
    return possible.ok ? done({ air, ...size }) : possible;
  },
  result: ({ diameter }) => diameter,
  steps: (size, given) => [
    densityStep(size.air),
    {
      label: 'Least diameter by friction',
      sum: `${figure(given.airflow)} cfm within ${figure(given.friction_rate, 4)} in. w.g. per 100 ft`,
      value: size.byFriction,
      unit: 'in',
      source: 'darcy-weisbach',
    },
    ...velocitySteps(size, given),
    {
      label: 'Velocity in the size taken',
      sum: `${figure(given.airflow)} ÷ ${figure(size.friction.area, 4)}`,
      value: size.friction.velocity,
      unit: 'fpm',
      source: 'air-velocity',
    },
    {
      label: 'Friction rate in the size taken',
      sum: `${slackSum(size)}${fine(size.friction.factor)} × 1200 ÷ ${figure(size.diameter, 4)} × ${fine(size.friction.velocityPressure)}`,
      value: size.rate,
      unit: 'inwgPer100Ft',
      source: given.compression > 0 ? 'flex-equation' : 'darcy-weisbach',
    },
    {
      label: 'Diameter',
      sum:
        given.step > 0
          ? `${figure(size.exact, 4)}, up to a whole ${figure(given.step, 4)} in`
          : 'the larger of the least diameters',
      value: size.diameter,
      unit: 'in',
    },
  ],
  drawing: (size, { airflow }) =>
    sectionDrawing(
      { shape: 'round', diameter: size.diameter },
      {
        title: `Round duct for ${figure(airflow)} cfm`,
        describes: `${figure(airflow)} cfm takes a round duct of ${figure(size.diameter, 2)} in; it moves at ${figure(size.friction.velocity, 0)} fpm and takes ${fine(size.rate, 3)} in. w.g. for each 100 ft.`,
        notes: [
          `${figure(airflow)} cfm`,
          `${figure(size.friction.velocity, 0)} fpm`,
          `${fine(size.rate, 3)} in. w.g.`,
          'for each 100 ft',
        ],
      },
    ),
  cautions: (size, { compression }) => [
    design,
    straightDuct,
    ...betweenFlows(size.friction),
    ...(compression > 0.15
      ? [
          {
            level: 'look',
            sentence: 'Flex this slack wants more than one size up. Pull it tight before you go larger.',
            source: 'flex-journal-2010',
          } as const,
        ]
      : []),
  ],
  sources: ['darcy-weisbach', 'colebrook', 'roughness-table', 'sizing-guide-2017', 'hospital-manual-2017'],
  examples: [
    {
      says: '400 cfm at 0.10',
      given: { airflow: 400, friction_rate: 0.1 },
      gives: 9.6851,
      tolerance: 0.0001,
      source: 'darcy-weisbach',
    },
    {
      says: '800 cfm at 0.10 in whole inches, as a printed guide has it',
      given: { airflow: 800, friction_rate: 0.1, step: 1 },
      gives: 13,
      source: 'sizing-guide-2017',
    },
    {
      says: '20,000 cfm at 0.08 and at most 1500 fpm: velocity decides',
      given: { airflow: 20_000, friction_rate: 0.08, velocity_limit: 1500 },
      gives: 49.443,
      tolerance: 0.001,
      source: 'hospital-manual-2017',
    },
    {
      says: 'flex for 100 cfm at 0.08, 4 % short of full stretch',
      given: { airflow: 100, friction_rate: 0.08, roughness: 0.003, compression: 0.04 },
      gives: 7.2947,
      tolerance: 0.0001,
      source: 'flex-equation',
    },
  ],
});

function velocitySteps(
  { byVelocity }: RoundSize,
  given: { readonly airflow: number; readonly velocity_limit: FeetPerMinute | null },
): readonly Step[] {
  if (byVelocity === null || given.velocity_limit === null) return [];
  return [
    {
      label: 'Least diameter by velocity',
      sum: `√(576 × ${figure(given.airflow)} ÷ (π × ${figure(given.velocity_limit)}))`,
      value: byVelocity,
      unit: 'in',
      source: 'air-velocity',
    },
  ];
}

function slackSum({ slackFactor }: RoundSize): string {
  return slackFactor === 1 ? '' : `${figure(slackFactor, 4)} for slack × `;
}

interface EqualWidth {
  readonly width: Inches;
  readonly aspect: number;
  readonly back: Inches;
}

export const airWidth = defineFunction({
  name: 'AIR.WIDTH',
  says: 'How wide a rectangular duct of a given depth must be to do the work of a round one.',
  words: ['rectangular equivalent', 'round to rectangular', 'trunk width', 'convert round', 'low headroom'],
  gives: { label: 'Width', unit: 'in' },
  arguments: {
    diameter: sizeArgument('the inside diameter of the round duct'),
    depth: sizeArgument('the inside depth that there is room for'),
    aspect_limit: optional(
      quantity('ratio', {
        says: 'warn when one side is more than so many times the other',
        least: 1,
        most: 12,
        why: 'limits in use lie between 3 and 6',
      }),
      4,
      'house practice; a naval handbook wants 3 and allows 6',
    ),
  },
  formula: [
    String.raw`\text{width} = w \text{ that solves } \frac{1.30 \times (w \times \mathrm{depth})^{0.625}}{(w + \mathrm{depth})^{0.25}} = \mathrm{diameter}`,
  ],
  work: ({ diameter, depth }): Outcome<EqualWidth, CallFault> => {
    const width = fromTrade(widthForDepth(diameter, depth));
    if (!width.ok) return width;
    const aspect = Math.max(width.value, depth) / Math.min(width.value, depth);
    const back = equivalentDiameter({ shape: 'rectangular', width: width.value, depth });
    return done({ width: width.value, aspect, back: inches(back) });
  },
  result: ({ width }) => width,
  steps: ({ width, aspect, back }, { diameter, depth }) => [
    {
      label: 'One side over the other',
      sum: `${figure(Math.max(width, depth), 3)} ÷ ${figure(Math.min(width, depth), 3)}`,
      value: aspect,
      unit: 'ratio',
    },
    {
      label: 'Checked back: round duct of equal friction',
      sum: `1.30 × (${figure(width, 3)} × ${figure(depth, 3)})^0.625 ÷ (${figure(width, 3)} + ${figure(depth, 3)})^0.25`,
      value: back,
      unit: 'in',
      source: 'huebscher',
    },
    {
      label: 'Width',
      sum: `solves 1.30 × (w × ${figure(depth, 3)})^0.625 ÷ (w + ${figure(depth, 3)})^0.25 = ${figure(diameter, 3)}`,
      value: width,
      unit: 'in',
      source: 'huebscher',
    },
  ],
  drawing: ({ width }, { diameter, depth }) => {
    const rectangle = { shape: 'rectangular', width, depth } as const;
    return pairDrawing({ shape: 'round', diameter }, rectangle, {
      title: 'Round and rectangular duct of equal friction',
      describes: `A ${sayInches(diameter)} round duct and a ${sayAirSection(rectangle)} one take the same pressure at the same airflow.`,
    });
  },
  cautions: ({ aspect }, { aspect_limit }) =>
    aspect > aspect_limit
      ? [
          {
            level: 'look',
            sentence: `One side is ${figure(aspect, 1)} times the other, past the limit of ${figure(aspect_limit, 1)}. Take more depth, or two ducts.`,
            source: 'trunk-rules',
          },
        ]
      : [],
  sources: ['huebscher', 'trunk-rules', 'naval-handbook'],
  examples: [
    {
      says: '14 in round in a depth of 8 in',
      given: { diameter: 14, depth: 8 },
      gives: 21.774,
      tolerance: 0.001,
      source: 'huebscher',
    },
  ],
});
