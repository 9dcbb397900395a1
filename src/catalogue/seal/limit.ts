import { leakageLimit, limitCodes, testStages } from '../../trade/seal/limit.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import type { SourceId } from '../sources.ts';

const sourceOf = (code: (typeof limitCodes)[number]): SourceId =>
  code === 'IRC 2018' ? 'leakage-limits-2018' : 'leakage-limits-magazine';

/** Most total leakage that a code allows at 25 Pa. cfm. Faults: `no_code_row`. Sources: by edition. */
export const sealLimit = defineFunction({
  name: 'SEAL.LIMIT',
  says: 'The most leakage that an energy code for homes allows in a test at 25 Pa, by floor area.',
  words: ['leakage limit', 'duct test', 'cfm25', '25 pa', 'rough-in test', 'energy code', 'how tight'],
  gives: { label: 'Allowed leakage', unit: 'cfm' },
  arguments: {
    code: choice(limitCodes, { says: 'the code and its edition' }),
    floor: quantity('sqft', {
      says: 'the conditioned floor area that the system serves',
      least: 50,
      most: 100_000,
      why: 'no home has less or more',
    }),
    stage: optional(
      choice(testStages, {
        says: 'when it is tested: at rough-in with the air handler in or without it, finished, or "buried" for buried ducts that are to count as inside',
      }),
      'finished',
      'every edition has a limit for the finished system',
    ),
  },
  formula: [String.raw`\text{allowed} = \text{rate of the code} \times \frac{\text{floor}}{100}`],
  work: ({ code, floor, stage }) => fromTrade(leakageLimit(code, stage, floor)),
  result: ({ limit }) => limit,
  steps: ({ perHundred, limit }, { code, floor, stage }) => [
    {
      label: `${code}, ${stage}, for 100 sq ft`,
      sum: '',
      value: perHundred,
      unit: 'cfm',
      source: sourceOf(code),
    },
    {
      label: 'Allowed leakage',
      sum: `${figure(perHundred)} × ${figure(floor)} ÷ 100`,
      value: limit,
      unit: 'cfm',
      source: sourceOf(code),
    },
  ],
  cautions: () => [
    {
      level: 'care',
      sentence:
        'States and cities change these limits, and later editions have others: the local code and the person who signs for the test decide.',
      source: 'safety-from-memory',
    },
    {
      level: 'look',
      sentence:
        'Here 100 sq ft are floor, at 25 Pa. A leakage class means 100 sq ft of duct surface at its own pressure: the two must not be mixed.',
      source: 'leakage-rule',
    },
  ],
  sources: ['leakage-limits-2018', 'leakage-limits-magazine'],
  examples: [
    {
      says: '2000 sq ft at rough-in with the air handler, code of 2018',
      given: { code: 'IRC 2018', floor: 2000, stage: 'rough-in' },
      gives: 80,
      source: 'leakage-limits-2018',
    },
    {
      says: 'the same before the air handler is in',
      given: { code: 'IRC 2018', floor: 2000, stage: 'rough-in without air handler' },
      gives: 60,
      source: 'leakage-limits-2018',
    },
    {
      says: 'the finished system by the code of 2009',
      given: { code: 'IECC 2009', floor: 2000 },
      gives: 240,
      source: 'leakage-limits-magazine',
    },
  ],
});
