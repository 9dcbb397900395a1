import { done } from '../../base/outcome.ts';
import {
  type FactorMethod,
  factorMethods,
  frictionFactor,
  laminarBelow,
  reynoldsNumber,
} from '../../trade/air/friction-factor.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import type { SourceId } from '../sources.ts';
import type { Step } from '../working.ts';
import { airArguments, airOf, sizeArgument, velocityArgument } from './arguments.ts';
import { betweenFlows } from './cautions.ts';
import { relativeDensityFormula, stickinessFormula } from './formulas.ts';
import { colebrookStep, densityStep, reynoldsStep } from './steps.ts';

export const airReynolds = defineFunction({
  name: 'AIR.REYNOLDS',
  says: 'The Reynolds number of air in a round duct: below 2300 it flows smoothly, above 4000 it is turbulent.',
  words: ['reynolds number', 'laminar', 'turbulent', 're'],
  gives: { label: 'Reynolds number', unit: 'ratio' },
  arguments: {
    diameter: sizeArgument('the inside diameter, or the one that stands for a duct of another shape'),
    velocity: velocityArgument('how fast the air moves'),
    ...airArguments,
  },
  formula: [
    String.raw`\mathrm{Re} = \frac{8.56 \times \mathrm{diameter} \times \mathrm{velocity} \times \sigma}{m}`,
    relativeDensityFormula,
    stickinessFormula,
  ],
  work: (given) => {
    const air = airOf(given);
    return done({ air, reynolds: reynoldsNumber(given.diameter, given.velocity, air) });
  },
  result: ({ reynolds }) => reynolds,
  steps: ({ air, reynolds }, { diameter, velocity }) => [
    densityStep(air),
    { ...reynoldsStep(diameter, velocity, air, reynolds), value: reynolds, unit: 'ratio' },
  ],
  cautions: ({ reynolds }) => betweenFlows({ reynolds }),
  sources: ['reynolds-of-air'],
  examples: [
    {
      says: '733.39 fpm in 10 in pipe',
      given: { diameter: 10, velocity: 733.39 },
      gives: 62778,
      tolerance: 1,
      source: 'reynolds-of-air',
    },
  ],
});

const explicit: Readonly<
  Record<
    Exclude<FactorMethod, 'colebrook'>,
    { readonly source: SourceId; readonly sum: (re: string, rough: string) => string }
  >
> = {
  haaland: {
    source: 'haaland',
    sum: (re, rough) => `1 ÷ (1.8 × log₁₀((${rough} ÷ 3.7)^1.11 + 6.9 ÷ ${re}))²`,
  },
  'swamee-jain': {
    source: 'swamee-jain',
    sum: (re, rough) => `0.25 ÷ (log₁₀(${rough} ÷ 3.7 + 5.74 ÷ ${re}^0.9))²`,
  },
  'altshul-tsal': {
    source: 'altshul-tsal',
    sum: (re, rough) => `0.11 × (${rough} + 68 ÷ ${re})^0.25; under 0.018 that × 0.85 + 0.0028`,
  },
};

export const airFactor = defineFunction({
  name: 'AIR.FACTOR',
  says: 'The Darcy friction factor of a duct, exactly or by a short formula, to compare them.',
  words: ['friction factor', 'colebrook', 'darcy', 'moody', 'haaland'],
  gives: { label: 'Friction factor', unit: 'ratio' },
  arguments: {
    reynolds_number: quantity('ratio', {
      says: 'the Reynolds number',
      least: 1,
      most: 1e8,
      why: 'the formulas are made for that',
    }),
    relative_roughness: optional(
      quantity('ratio', {
        says: 'roughness over diameter, both in the same unit',
        least: 0,
        most: 0.05,
        why: 'the formulas are made for walls up to 0.05',
      }),
      0,
      'a smooth wall',
    ),
    method: optional(
      choice(factorMethods, { says: 'the formula: Colebrook solved to the last digit, or a short one' }),
      'colebrook',
      'it is what the short ones come near to',
    ),
  },
  formula: [
    String.raw`\text{every method:}\quad f = \frac{64}{\mathrm{reynolds\_number}} \text{ where } \mathrm{reynolds\_number} < 2300, \text{ otherwise:}`,
    String.raw`\text{colebrook:}\quad \frac{1}{\sqrt{f}} = -2 \log_{10}\left(\frac{\mathrm{relative\_roughness}}{3.7} + \frac{2.51}{\mathrm{reynolds\_number} \times \sqrt{f}}\right)`,
    String.raw`\text{haaland:}\quad f = \left(1.8 \log_{10}\left(\left(\frac{\mathrm{relative\_roughness}}{3.7}\right)^{1.11} + \frac{6.9}{\mathrm{reynolds\_number}}\right)\right)^{-2}`,
    String.raw`\text{swamee-jain:}\quad f = 0.25 \left(\log_{10}\left(\frac{\mathrm{relative\_roughness}}{3.7} + \frac{5.74}{\mathrm{reynolds\_number}^{0.9}}\right)\right)^{-2}`,
    String.raw`\text{altshul-tsal:}\quad f = g \ (g \ge 0.018), \quad 0.85 g + 0.0028 \ (g < 0.018), \quad g = 0.11 \left(\mathrm{relative\_roughness} + \frac{68}{\mathrm{reynolds\_number}}\right)^{0.25}`,
  ],
  work: ({ reynolds_number: reynolds, relative_roughness, method }) =>
    done({
      factor: frictionFactor(reynolds, relative_roughness, method),
      exact: frictionFactor(reynolds, relative_roughness, 'colebrook'),
    }),
  result: ({ factor }) => factor,
  steps: ({ factor, exact }, { reynolds_number: reynolds, relative_roughness, method }) => {
    const byColebrook = colebrookStep(reynolds, relative_roughness, exact);
    if (method === 'colebrook' || reynolds < laminarBelow) return [byColebrook];
    const { source, sum } = explicit[method];
    return [
      { ...byColebrook, label: 'By Colebrook, to compare' },
      { label: 'Off by', sum: '', value: factor / exact - 1, unit: 'percent' },
      {
        label: 'Friction factor',
        sum: sum(figure(reynolds, 0), figure(relative_roughness, 6)),
        value: factor,
        unit: 'ratio',
        source,
      },
    ] satisfies readonly Step[];
  },
  cautions: (_, { reynolds_number: reynolds }) => betweenFlows({ reynolds }),
  sources: ['colebrook', 'haaland', 'swamee-jain', 'altshul-tsal', 'laminar-flow'],
  examples: [
    {
      says: 'Re 100,000, roughness 0.0006, Colebrook',
      given: { reynolds_number: 100_000, relative_roughness: 0.0006 },
      gives: 0.020727,
      tolerance: 0.000001,
      source: 'colebrook',
    },
    {
      says: 'the same by Haaland',
      given: { reynolds_number: 100_000, relative_roughness: 0.0006, method: 'haaland' },
      gives: 0.020476,
      tolerance: 0.000001,
      source: 'haaland',
    },
    {
      says: 'the same by Swamee and Jain',
      given: { reynolds_number: 100_000, relative_roughness: 0.0006, method: 'swamee-jain' },
      gives: 0.020836,
      tolerance: 0.000001,
      source: 'swamee-jain',
    },
    {
      says: 'the same by Altshul and Tsal',
      given: { reynolds_number: 100_000, relative_roughness: 0.0006, method: 'altshul-tsal' },
      gives: 0.020806,
      tolerance: 0.000001,
      source: 'altshul-tsal',
    },
    {
      says: 'smooth flow at Re 1500',
      given: { reynolds_number: 1500 },
      gives: 0.042667,
      tolerance: 0.000001,
      source: 'laminar-flow',
    },
  ],
});
