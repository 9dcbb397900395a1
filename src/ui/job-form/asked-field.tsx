import { memo, useId } from 'react';
import { units } from '../../base/unit.ts';
import type { AskedGiven } from '../../templates/questions.ts';
import { showValue } from '../../workbook/show.ts';
import { fullText } from '../dress/question-draft.ts';

/** One question of a template, to be answered as in its cell. */
export const AskedField = memo(function AskedField({
  asked: { place, cell, question, label },
  value,
  fault,
  onChange,
}: {
  readonly asked: AskedGiven;
  readonly value: string;
  readonly fault: string | undefined;
  readonly onChange: (place: string, value: string) => void;
}) {
  const id = useId();
  const { asks, choices, usual, mayBeBlank, help, why } = question;
  const facts = factsOf({ cell, question });
  const usualText = usual === undefined ? '' : fullText(usual, cell.unit, cell.format);
  const parts = {
    id,
    value,
    'data-place': place,
    'aria-invalid': fault ? true : undefined,
    'aria-describedby': `${id}-facts${fault ? ` ${id}-fault` : ''}`,
  };
  return (
    <div className="job-form-field" data-wrong={fault ? '' : undefined}>
      <label htmlFor={id}>
        {asks}
        {label ? <small> {label}</small> : null}
      </label>
      <div className="job-form-answer">
        {choices ? (
          <select {...parts} onChange={(event) => onChange(place, event.target.value)}>
            <option value="">{mayBeBlank ? 'left blank' : 'choose'}</option>
            {choices.map((choice) => (
              <option key={choice}>{choice}</option>
            ))}
          </select>
        ) : (
          <input {...parts} type="text" onChange={(event) => onChange(place, event.target.value)} />
        )}
        {usualText !== '' && usualText !== value ? (
          <button type="button" onClick={() => onChange(place, usualText)}>
            Take {showValue(usual ?? null, cell.unit, cell.format).text}
            <span className="visually-hidden">, the usual value, for {asks}</span>
          </button>
        ) : null}
      </div>
      <p id={`${id}-facts`} className="job-form-facts">
        {[...facts, why ? `because ${why}` : '', mayBeBlank ? 'may be left blank' : '', help ?? '']
          .filter(Boolean)
          .join(' · ')}
      </p>
      {fault ? (
        <p id={`${id}-fault`} className="job-form-fault">
          {fault}
        </p>
      ) : null}
    </div>
  );
});

/** What may stand there: what it measures, and from what to what. */
function factsOf({ cell, question }: Pick<AskedGiven, 'cell' | 'question'>): readonly string[] {
  const { least, most, choices } = question;
  if (choices) return [];
  const show = (value: number) => showValue(value, cell.unit, cell.format).text;
  const range =
    least !== undefined && most !== undefined
      ? `${show(least)} to ${show(most)}`
      : least !== undefined
        ? `${show(least)} or more`
        : most === undefined
          ? ''
          : `${show(most)} or less`;
  return [cell.unit ? units[cell.unit].says : '', range];
}
