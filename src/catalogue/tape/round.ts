import { done } from '../../base/outcome.ts';
import { denominators, type Rounding, roundings, roundToTape } from '../../trade/tape/round.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayInches } from '../say.ts';
import { tapeDrawing } from './drawing.ts';
import { marksFormulas } from './formulas.ts';

/** A length brought to the marks of a tape. Inches in, inches out. Source: arithmetic. */
export const tapeRound = defineFunction({
  name: 'TAPE.ROUND',
  says: 'A length brought to the marks of the tape, usually up, so that nothing is cut short.',
  words: ['round up', 'cut at', 'nearest sixteenth', 'tape mark', 'round to the tape'],
  gives: { label: 'On the tape', unit: 'in' },
  arguments: {
    length: quantity('in', {
      says: 'the length to bring to a mark',
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
      'up',
      'a piece that is a little long can be trimmed; one that is short is scrap',
    ),
  },
  formula: [String.raw`\text{rounded} = \frac{\text{marks}}{\mathrm{denominator}}`, ...marksFormulas],
  work: ({ length, denominator, round }) => done(roundToTape(length, denominator, round)),
  result: ({ rounded }) => rounded,
  steps: ({ exactMarks, marks, rounded, added }, { length, denominator, round }) => [
    { label: 'Exactly', sum: '', value: length, unit: 'in' },
    {
      label: `In marks of 1/${denominator} in`,
      sum: `${figure(length, 4)} × ${denominator} = ${figure(exactMarks)}, ${wayWords[round]}`,
      value: marks,
      unit: 'count',
    },
    { label: added < 0 ? 'Taken off' : 'Added', sum: '', value: Math.abs(added), unit: 'in' },
    {
      label: 'On the tape',
      sum: `${figure(marks, 0)} ÷ ${denominator}, reads ${sayInches(rounded)}`,
      value: rounded,
      unit: 'in',
    },
  ],
  drawing: ({ rounded }, { length, denominator }) => tapeDrawing(length, rounded, denominator),
  sources: ['geometry'],
  examples: [
    { says: 'up to the next sixteenth', given: { length: 66.4014 }, gives: 66.4375 },
    { says: 'a length on a mark stays there', given: { length: 66.5 }, gives: 66.5 },
    {
      says: 'to the nearest eighth',
      given: { length: 41.3, denominator: 8, round: 'nearest' },
      gives: 41.25,
    },
  ],
});

const wayWords: Record<Rounding, string> = {
  up: 'up to a whole mark',
  nearest: 'to the nearest mark',
  down: 'down to a whole mark',
};
