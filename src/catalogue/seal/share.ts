import { done } from '../../base/outcome.ts';
import { leakageShare, usualLeakage } from '../../trade/seal/share.ts';
import { quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';

/** Leakage as a share of the airflow. */
export const sealShare = defineFunction({
  name: 'SEAL.SHARE',
  says: 'What share of the air leaks out before it arrives.',
  words: ['leakage percent', 'share of flow', 'air loss', 'lost air', 'duct leakage', 'leak rate'],
  gives: { label: 'Share that leaks', unit: 'percent' },
  arguments: {
    leakage: quantity('cfm', {
      says: 'the leakage at the pressure at which the duct runs',
      least: 0,
      most: 100_000,
      why: 'no shop duct leaks more',
    }),
    airflow: quantity('cfm', {
      says: 'the airflow of the fan',
      least: 1,
      most: 1_000_000,
      why: 'fans for shop duct move that much',
    }),
  },
  formula: [String.raw`\text{share} = \frac{\text{leakage}}{\text{airflow}}`],
  work: ({ leakage, airflow }) => done(leakageShare(leakage, airflow)),
  result: (share) => share,
  steps: (share, { leakage, airflow }) => [
    {
      label: 'Share that leaks',
      sum: `${figure(leakage, 2)} ÷ ${figure(airflow)} = ${figure(share * 100, 2)} %`,
      value: share,
      unit: 'percent',
      source: 'leakage-rule',
    },
  ],
  cautions: (share) => [
    {
      level: 'care',
      sentence:
        'Use the leakage at the pressure in the running duct: a test at 25 Pa tells less where the duct runs higher. How much may leak is for the local code to say.',
    },
    {
      level: 'look',
      sentence: `Systems usually lose ${usualLeakage
        .map(
          ({ seal, least, most }) =>
            `${figure(least * 100)} to ${figure(most * 100)} % ${seal === 'unsealed' ? seal : `at seal class ${seal}`}`,
        )
        .join(
          ', ',
        )}.${share > 1 ? ' More than all of the air cannot leak: see whether the two have changed places.' : ''}`,
      source: 'usual-leakage',
    },
  ],
  sources: ['leakage-rule', 'usual-leakage'],
  examples: [
    {
      says: '33.5 cfm of 800',
      given: { leakage: 33.5, airflow: 800 },
      gives: 0.041875,
      tolerance: 1e-9,
    },
  ],
});
