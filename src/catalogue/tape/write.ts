import { done } from '../../base/outcome.ts';
import { inches } from '../../base/quantity.ts';
import { denominators, roundings, roundToTape } from '../../trade/tape/round.ts';
import { writeTape } from '../../trade/tape/write.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import { yesNo } from '../yes-no.ts';
import { tapeDrawing } from './drawing.ts';
import { marksFormulas } from './formulas.ts';

/** Writes a length as a tape shows it. Inches in, text out. Source: arithmetic. */
export const tapeWrite = defineFunction({
  name: 'TAPE.WRITE',
  says: 'A length written as the tape shows it, as text.',
  words: ['write a length', 'inches to feet and inches', 'fraction', 'as a tape shows it'],
  gives: { label: 'As the tape shows it', unit: 'in' },
  arguments: {
    length: quantity('in', {
      says: 'the length to write',
      least: -12_000,
      most: 12_000,
      why: 'a piece over 1,000 ft is most likely a slip of the unit',
    }),
    denominator: optional(
      choice(denominators, { says: 'the finest mark used: 16 for sixteenths' }),
      16,
      'most tapes are marked in sixteenths',
    ),
    round: optional(
      choice(roundings, { says: 'which way to go from between two marks' }),
      'nearest',
      'what is only read is read at the nearest mark',
    ),
    feet: optional(
      yesNo({ says: 'whether whole feet are split off' }),
      'yes',
      'long pieces are read in feet and inches',
    ),
  },
  formula: [
    ...marksFormulas,
    String.raw`\frac{|\text{marks}|}{\mathrm{denominator}} = 12 \times \text{feet} + \text{inches} + \text{fraction}, \quad \text{inches} < 12,\ \text{fraction} < 1 \quad \text{(no feet where } \mathrm{feet} \text{ is no)}`,
  ],
  work: ({ length, denominator, round, feet }) =>
    done({
      ...roundToTape(length, denominator, round),
      written: writeTape(length, { denominator, round, feet: feet === 'yes' }),
    }),
  result: ({ written }) => written,
  steps: ({ rounded, marks, written }, { length, denominator }) => [
    { label: 'Exactly', sum: '', value: length, unit: 'in' },
    {
      label: 'At the mark',
      sum: `${figure(marks, 0)} marks of 1/${denominator} in`,
      value: rounded,
      unit: 'in',
    },
    { label: 'As the tape shows it', sum: '', value: written, unit: 'in' },
  ],
  drawing: ({ rounded }, { length, denominator }) => tapeDrawing(inches(length), rounded, denominator),
  sources: ['geometry'],
  examples: [
    { says: 'feet, inches and a fraction', given: { length: 148.5 }, gives: '12′ 4 ½″' },
    { says: 'inches only', given: { length: 148.5, feet: 'no' }, gives: '148 ½″' },
  ],
});
