import { failed } from '../../base/outcome.ts';
import { inches } from '../../base/quantity.ts';
import { readTapeParts, type TapeReading } from '../../trade/tape/read.ts';
import { roundToTape } from '../../trade/tape/round.ts';
import { choice, optional, text } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayFeet } from '../say.ts';
import type { Step } from '../working.ts';
import { tapeDrawing } from './drawing.ts';

/** Reads a written length. Text in, inches out. Faults: `not_a_length`. Source: 1 in is 25.4 mm by definition. */
export const tapeRead = defineFunction({
  name: 'TAPE.READ',
  says: 'A length read from text as it is written on a tape or a drawing.',
  words: ['read a length', 'feet and inches to inches', 'millimetres to inches', 'convert a length'],
  gives: { label: 'Length', unit: 'in' },
  arguments: {
    text: text({ says: 'the length as written, such as 12\' 4 1/2" or 1372mm', most: 60 }),
    bare: optional(
      choice(['in', 'ft', 'mm', 'm'], { says: 'what a number without a unit is' }),
      'in',
      'shop sizes are written in inches',
    ),
  },
  formula: [
    String.raw`\text{length} = \pm (12 \times \text{feet} + \text{inches}) \quad \text{as written in } \mathrm{text}`,
    String.raw`\text{length} = \pm \frac{\text{millimetres}}{25.4}, \quad 1 \text{ cm} = 10 \text{ mm}, \quad 1 \text{ m} = 1000 \text{ mm}`,
  ],
  work: ({ text: written, bare }) => {
    const reading = readTapeParts(written, bare);
    if (reading.ok) return reading;
    return failed({ code: 'trade', fault: { code: 'not_a_length', text: written, fault: reading.fault } });
  },
  result: ({ length }) => length,
  steps: (reading) => [
    ...parts(reading),
    { label: 'Length', sum: sayFeet(reading.length), value: reading.length, unit: 'in' },
  ],
  drawing: ({ length }) => tapeDrawing(length, roundToTape(length, 16, 'nearest').rounded, 16),
  sources: ['geometry'],
  examples: [
    { says: 'feet, inches and a fraction', given: { text: '12\' 4 1/2"' }, gives: 148.5 },
    { says: 'inches and a fraction', given: { text: '41 3/8' }, gives: 41.375 },
    { says: 'millimetres', given: { text: '1372mm' }, gives: 54.015748, tolerance: 1e-6 },
  ],
});

function parts({ feet, inches: inch, metric, isNegative }: TapeReading): readonly Step[] {
  const steps: Step[] = [];
  if (metric) {
    const millimetres = { mm: 1, cm: 10, m: 1000 }[metric.unit] * metric.amount;
    steps.push({
      label: 'From millimetres',
      sum: `${figure(millimetres)} ÷ 25.4`,
      value: inches(millimetres / 25.4),
      unit: 'in',
      source: 'geometry',
    });
  }
  if (feet !== null) steps.push({ label: 'Feet', sum: `${figure(feet)} × 12`, value: feet * 12, unit: 'in' });
  if (inch !== null) steps.push({ label: 'Inches', sum: '', value: inch, unit: 'in' });
  return isNegative
    ? [...steps, { label: 'Taken off', sum: 'a minus stands before it', value: -1, unit: 'ratio' }]
    : steps;
}
