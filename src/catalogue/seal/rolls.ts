import { done } from '../../base/outcome.ts';
import { inches } from '../../base/quantity.ts';
import { tapeRolls } from '../../trade/seal/rolls.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayCount, sayFeet } from '../say.ts';
import { rollsDrawing } from './rolls-drawing.ts';

/** Whole rolls of tape for a total length. Inches in, rolls out. */
export const sealRolls = defineFunction({
  name: 'SEAL.ROLLS',
  says: 'Rolls of tape to buy for a length, with a share for laps and waste.',
  words: ['rolls of tape', 'how much tape', 'buy tape', 'foil tape rolls', 'facing tape rolls'],
  gives: { label: 'Rolls', unit: 'count' },
  arguments: {
    length: quantity('in', {
      says: 'the length to tape, all together',
      least: 0,
      most: 1_200_000,
      why: 'more than 100,000 ft of tape in one job is most likely a slip of the unit',
    }),
    roll_length: quantity('ft', {
      says: 'the length of one roll',
      least: 1,
      most: 2000,
      why: 'rolls are sold from a few feet to some hundred',
    }),
    waste: optional(
      quantity('percent', {
        says: 'the share added for laps, ends and waste; 10 % is 0.1',
        least: 0,
        most: 1,
        why: 'more than as much again would be a slip; 10 % is written 0.1',
      }),
      0.1,
      'a tenth for laps and ends is common practice, no source',
    ),
  },
  formula: [
    String.raw`\text{rolls} = \left\lceil \frac{\text{length} \times (1 + \text{waste})}{12 \times \text{roll length}} \right\rceil`,
  ],
  work: ({ length, roll_length, waste }) => done(tapeRolls(length, roll_length, waste)),
  result: ({ rolls }) => rolls,
  steps: ({ wasted, needed, roll, exactly, rolls }, { length, roll_length, waste }) => [
    { label: 'To tape', sum: sayFeet(length), value: length, unit: 'in' },
    {
      label: 'Laps and waste',
      sum: `${figure(length, 2)} × ${figure(waste * 100)} %`,
      value: wasted,
      unit: 'in',
      source: 'sealing-practice',
    },
    { label: 'Needed', sum: `${figure(length, 2)} + ${figure(wasted, 2)}`, value: needed, unit: 'in' },
    { label: 'One roll', sum: `${figure(roll_length)} × 12`, value: inches(roll), unit: 'in' },
    {
      label: 'Rolls',
      sum: `${figure(needed, 2)} ÷ ${figure(roll)} = ${figure(exactly)}, up to ${sayCount(rolls, 'whole roll')}`,
      value: rolls,
      unit: 'count',
    },
  ],
  drawing: ({ needed, rolls }, { roll_length }) =>
    rollsDrawing(rolls, `${figure(roll_length)} ft`, sayFeet(needed)),
  sources: ['geometry'],
  examples: [
    {
      says: '165 ft with a tenth for waste, from 150 ft rolls',
      given: { length: 1980, roll_length: 150 },
      gives: 2,
    },
    { says: 'exactly one roll', given: { length: 1800, roll_length: 150, waste: 0 }, gives: 1 },
  ],
});
