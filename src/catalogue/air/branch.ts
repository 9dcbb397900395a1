import type { Outcome } from '../../base/outcome.ts';
import {
  type BranchCoefficient,
  branchCoefficient,
  branchPassages,
  enlargementCoefficient,
} from '../../trade/air/branch.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import type { Step } from '../working.ts';
import { airflowArgument, sizeArgument } from './arguments.ts';
import { fine } from './fine.ts';
import { pairDrawing } from './section-drawing.ts';

interface BranchOnVelocity extends BranchCoefficient {
  readonly coefficient: number;
}

export const airBranch = defineFunction({
  name: 'AIR.BRANCH',
  says: 'The loss coefficient where a round branch leaves a round trunk, for the air that goes off or goes on.',
  words: ['tap', 'takeoff', 'branch loss', 'wye', 'tee', 'lateral', 'c factor'],
  gives: { label: 'Loss coefficient', unit: 'ratio' },
  arguments: {
    main_airflow: airflowArgument('the airflow in the trunk before the branch'),
    branch_airflow: airflowArgument('the airflow that goes off'),
    main_diameter: sizeArgument('the inside diameter of the trunk'),
    branch_diameter: sizeArgument('the inside diameter of the branch'),
    angle: optional(
      quantity('deg', {
        says: 'the angle between the branch and the way on',
        least: 15,
        most: 90,
        why: 'the formula is for branches that lean with the air or stand square',
      }),
      45,
      'a branch that leans with the air loses least',
    ),
    passage: optional(
      choice(branchPassages, { says: 'for which air: into the branch, or straight on' }),
      'branch',
      'the branch loses most',
    ),
    velocity_of: optional(
      choice(['main', 'branch'], {
        says: 'the velocity that the coefficient shall belong to: of the trunk before the branch, or of the branch',
      }),
      'main',
      'the formula gives it so',
    ),
  },
  formula: [
    String.raw`q = \frac{\mathrm{branch\_airflow}}{\mathrm{main\_airflow}}, \quad a = \left(\frac{\mathrm{branch\_diameter}}{\mathrm{main\_diameter}}\right)^2, \quad x = \frac{q}{a} \quad \text{(airflow, area and velocity over those of the main)}`,
    String.raw`\text{branch:}\quad C = G (1 + x^2 - 2 x \cos \mathrm{angle}), \quad \text{or } G (1 + 0.3 x^2) \text{ where } \mathrm{angle} \ge 60 \text{ and } \sqrt{a} > \tfrac{2}{3}`,
    String.raw`G = 1 \ (a \le \tfrac{2}{3}), \quad 1 + 0.3 q^2 \ (a > \tfrac{2}{3}) \quad \text{where } \mathrm{angle} \ge 75`,
    String.raw`G = 1.1 - 0.7 q \ (q \le 0.4), \quad 0.85 \ (q > 0.4) \quad \text{where } \mathrm{angle} < 75 \text{ and } a \le 0.35`,
    String.raw`G = 1 - 0.6 q \ (q \le 0.6), \quad 0.6 \ (q > 0.6) \quad \text{where } \mathrm{angle} < 75 \text{ and } a > 0.35`,
    String.raw`\text{straight:}\quad C = M q^2, \quad M = 0.4 \ (a \le 0.4), \quad 2 (2 q - 1) \ (a > 0.4,\ q \le 0.5), \quad 0.3 (2 q - 1) \ (a > 0.4,\ q > 0.5)`,
    String.raw`\text{on the velocity of the branch:}\quad \frac{C}{x^2}`,
  ],
  work: (given): Outcome<BranchOnVelocity, CallFault> => {
    const found = fromTrade(
      branchCoefficient(
        { airflow: given.main_airflow, diameter: given.main_diameter },
        { airflow: given.branch_airflow, diameter: given.branch_diameter, angle: given.angle },
        given.passage,
      ),
    );
    if (!found.ok) return found;
    const coefficient = given.velocity_of === 'main' ? found.value.onMain : found.value.onBranch;
    return { ok: true, value: { ...found.value, coefficient } };
  },
  result: ({ coefficient }) => coefficient,
  steps: (branch, given): readonly Step[] => {
    const { flowShare, areaShare, velocityShare, multiplier, onMain, onBranch, isTee } = branch;
    const x = figure(velocityShare, 4);
    const last: Step = {
      label: 'Loss coefficient on the trunk velocity',
      sum:
        given.passage === 'straight'
          ? `${fine(multiplier)} × ${figure(flowShare, 4)}²`
          : isTee
            ? `${fine(multiplier)} × (1 + 0.3 × ${x}²)`
            : `${fine(multiplier)} × (1 + ${x}² − 2 × ${x} × cos ${figure(given.angle)}°)`,
      value: onMain,
      unit: 'ratio',
      source: 'branch-formula',
    };
    return [
      {
        label: 'Airflow of the branch over that of the trunk',
        sum: `${figure(given.branch_airflow)} ÷ ${figure(given.main_airflow)}`,
        value: flowShare,
        unit: 'ratio',
      },
      {
        label: 'Velocity of the branch over that of the trunk',
        sum: `${figure(flowShare, 4)} ÷ (${figure(given.branch_diameter, 4)} ÷ ${figure(given.main_diameter, 4)})²`,
        value: velocityShare,
        unit: 'ratio',
        source: 'geometry',
      },
      {
        label: given.passage === 'branch' ? 'Multiplier of the branch' : 'Multiplier of the way on',
        sum: `for an area share of ${figure(areaShare, 4)}`,
        value: multiplier,
        unit: 'ratio',
        source: 'branch-formula',
      },
      last,
      ...(given.velocity_of === 'branch'
        ? [
            {
              label: 'Loss coefficient on the branch velocity',
              sum: `${fine(onMain)} ÷ ${x}²`,
              value: onBranch,
              unit: 'ratio',
              source: 'fitting-coefficient',
            } as const,
          ]
        : []),
    ];
  },
  cautions: ({ byNotes }) => [
    ...(byNotes === null
      ? []
      : [
          {
            level: 'look',
            sentence: `For a steep branch of more than two thirds of the trunk the library’s code and its own notes disagree: by the notes it would be ${figure(byNotes, 3)} on the trunk velocity.`,
            source: 'branch-formula',
          } as const,
        ]),
    {
      level: 'look',
      sentence:
        'Made for sharp pipe branches, not tested on duct: at 45°, with 0.7 of the air and half of the area, it gives 0.59 where a textbook has 0.79. Prefer the figure of the maker.',
      source: 'branch-textbook',
    },
    {
      level: 'look',
      sentence:
        'Say with the coefficient which velocity it belongs to; in AIR.LOSS use that one. Taking the wrong one is the commonest slip.',
    },
  ],
  sources: ['branch-formula', 'branch-textbook'],
  examples: [
    {
      says: 'a 6 in branch at 45° takes 100 of 1000 cfm from a 10 in trunk',
      given: { main_airflow: 1000, branch_airflow: 100, main_diameter: 10, branch_diameter: 6 },
      gives: 0.64326,
      tolerance: 0.0001,
      source: 'branch-formula',
    },
    {
      says: 'the air that goes on past a branch taking 200 of 1000 cfm',
      given: {
        main_airflow: 1000,
        branch_airflow: 200,
        main_diameter: 10,
        branch_diameter: 6,
        passage: 'straight',
      },
      gives: 0.016,
      tolerance: 0.000001,
      source: 'branch-formula',
    },
  ],
});

export const airEnlarge = defineFunction({
  name: 'AIR.ENLARGE',
  says: 'The loss coefficient where a round duct opens suddenly into a larger one.',
  words: ['sudden enlargement', 'expansion', 'step up', 'increaser', 'c factor'],
  gives: { label: 'Loss coefficient', unit: 'ratio' },
  arguments: {
    small_diameter: sizeArgument('the inside diameter that the air comes from'),
    large_diameter: sizeArgument('the inside diameter that it goes into'),
  },
  formula: [
    String.raw`C = \left(1 - \left(\frac{\mathrm{small\_diameter}}{\mathrm{large\_diameter}}\right)^2\right)^2`,
  ],
  work: ({ small_diameter: small, large_diameter: large }): Outcome<number, CallFault> =>
    fromTrade(enlargementCoefficient(small, large)),
  result: (coefficient) => coefficient,
  steps: (coefficient, { small_diameter: small, large_diameter: large }) => [
    {
      label: 'Loss coefficient',
      sum: `(1 − (${figure(small, 4)} ÷ ${figure(large, 4)})²)²`,
      value: coefficient,
      unit: 'ratio',
      source: 'sudden-enlargement',
    },
  ],
  drawing: (coefficient, { small_diameter: small, large_diameter: large }) =>
    pairDrawing(
      { shape: 'round', diameter: small },
      { shape: 'round', diameter: large },
      {
        title: 'From a small duct into a larger one',
        describes: `From ${figure(small, 2)} in into ${figure(large, 2)} in the loss is ${figure(coefficient, 4)} of the velocity pressure in the small duct.`,
      },
    ),
  cautions: () => [
    {
      level: 'look',
      sentence: 'It belongs to the velocity in the small duct. A gentle taper loses less.',
    },
  ],
  sources: ['sudden-enlargement'],
  examples: [
    {
      says: '8 in into 10 in',
      given: { small_diameter: 8, large_diameter: 10 },
      gives: 0.1296,
      tolerance: 0.0001,
      source: 'sudden-enlargement',
    },
  ],
});
