import { units } from '../base/unit.ts';
import type { Source } from '../catalogue/sources.ts';
import type { Caution, Step } from '../catalogue/working.ts';
import type { Explanation, WorkedCall } from '../session/explanation.ts';
import { showValue } from '../workbook/show.ts';
import { columns, fold } from './fold.ts';

/** The working of a formula, as text: every trade function that was asked, inner ones first. */
export function writeWorking({
  calls,
  sum,
  decisions,
}: Pick<Explanation, 'calls' | 'sum' | 'decisions'>): string {
  return [
    ...(sum === null ? [] : [fold(sum, '  the sum: ', '    ')]),
    ...decisions.map(({ condition, holds }) =>
      fold(`${condition}: ${holds ? 'yes' : 'no'}`, '  asked: ', '    '),
    ),
    ...calls.map(writeCall),
  ].join('\n\n');
}

function writeCall({ name, says, given, fault, steps, drawing, cautions, sources }: WorkedCall): string {
  const arguments_ = given.map(({ argument, written, value, usually }) => [
    argument,
    usually === null ? value : `${value || 'none'} (usual)`,
    usually === null && written !== value && written !== `"${value}"` ? written : '',
  ]);
  return [
    fold(says, `${name}: `, '  '),
    columns(arguments_, '    '),
    ...(fault ? [fold(fault.sentence, '  No figure: ', '    ')] : [writeSteps(steps)]),
    ...(drawing ? [fold(drawing.describes, '  Drawn: ', '    ')] : []),
    ...writeCautions(cautions),
    ...writeSources(sources),
  ].join('\n\n');
}

function writeSteps(steps: readonly Step[]): string {
  const rows = steps.map(({ label, sum, value, unit }) => [label, sum, `= ${plainly(value, unit)}`]);
  return columns(rows, '  ');
}

/** In full, with the unit: a working hides nothing behind a look. */
export function plainly(value: number | string, unit: Step['unit']): string {
  const { text } = showValue(value, unit);
  return unit === 'r' ? `${units.r.label} ${text}` : text;
}

function writeCautions(cautions: readonly Caution[]): readonly string[] {
  const once = [...new Map(cautions.map((caution) => [caution.sentence, caution])).values()];
  if (once.length === 0) return [];
  const words = { care: '  Take care: ', look: '  Look: ' } as const;
  return [once.map(({ level, sentence }) => fold(sentence, words[level], '    ')).join('\n')];
}

function writeSources(sources: readonly Source[]): readonly string[] {
  if (sources.length === 0) return [];
  return [
    sources
      .map(({ title, place, status }) => fold(`${title}, ${place} (${status})`, '  From: ', '    '))
      .join('\n'),
  ];
}
