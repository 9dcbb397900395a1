import { type ReactNode, useId, useState } from 'react';
import type { Unit } from '../../base/unit.ts';
import type { Format, Question } from '../../workbook/document.ts';
import { draftOf, type QuestionDraft, questionFrom } from './question-draft.ts';

/** What a given asks, field by field. What does not agree is told while it is written, all at once. */
export function QuestionForm({
  question,
  unit,
  format,
  kept,
  onDraft,
  onKeep,
}: {
  readonly question: Question | null;
  readonly unit: Unit | undefined;
  readonly format: Format | undefined;
  /** What was written here before the person looked elsewhere. */
  readonly kept: QuestionDraft | null;
  readonly onDraft: (draft: QuestionDraft | null) => void;
  /** Gives false where it was refused. */
  readonly onKeep: (question: Question | null) => boolean;
}) {
  const told = useId();
  const [draft, setDraft] = useState(kept);
  const shown = draft ?? draftOf(question, unit, format);
  const written = questionFrom(shown, unit, format);
  const faults = draft === null ? [] : written.faults;

  function take(part: Partial<QuestionDraft>): void {
    const next = { ...shown, ...part };
    setDraft(next);
    onDraft(next);
  }

  function drop(): void {
    setDraft(null);
    onDraft(null);
  }

  function keep(): void {
    if (written.faults.length > 0) take({});
    else if (onKeep(written.question)) drop();
  }

  const sentence = (name: string, part: 'asks' | 'why', hint: string) => (
    <Field name={name}>
      {(id) => (
        <textarea
          id={id}
          className="question-form-sentence"
          rows={1}
          value={shown[part]}
          placeholder={hint}
          aria-describedby={told}
          onChange={(event) => take({ [part]: event.target.value.replace(/\s*\n\s*/g, ' ') })}
        />
      )}
    </Field>
  );

  const line = (name: string, part: 'least' | 'most' | 'usual') => (
    <Field name={name}>
      {(id) => (
        <input
          id={id}
          type="text"
          value={shown[part]}
          aria-describedby={told}
          onChange={(event) => take({ [part]: event.target.value })}
        />
      )}
    </Field>
  );

  return (
    <fieldset className="question-form">
      <legend>The question</legend>
      {sentence('Asks', 'asks', 'How wide is the opening?')}
      <div className="question-form-limits">
        {line('Least', 'least')}
        {line('Most', 'most')}
      </div>
      {sentence('Because', 'why', 'the rolls take no more')}
      <Field name="Choices, one a line">
        {(id) => (
          <textarea
            id={id}
            rows={3}
            value={shown.choices}
            aria-describedby={told}
            onChange={(event) => take({ choices: event.target.value })}
          />
        )}
      </Field>
      {line('Usual value', 'usual')}
      <Field name="What helps to answer">
        {(id) => (
          <textarea
            id={id}
            rows={3}
            value={shown.help}
            placeholder="Measure between the studs, at the narrowest place."
            aria-describedby={told}
            onChange={(event) => take({ help: event.target.value })}
          />
        )}
      </Field>
      <label className="cell-dress-tick">
        <input
          type="checkbox"
          checked={shown.mayBeBlank}
          onChange={(event) => take({ mayBeBlank: event.target.checked })}
        />
        may be left blank
      </label>
      <div id={told} className="cell-dress-faults" role="status">
        {faults.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <p className="question-form-deeds">
        <button type="button" onClick={keep}>
          Keep the question
        </button>
        {draft === null ? null : (
          <button type="button" onClick={drop}>
            Leave it as it was
          </button>
        )}
        {question ? (
          <button
            type="button"
            onClick={() => {
              if (onKeep(null)) drop();
            }}
          >
            Ask nothing
          </button>
        ) : null}
      </p>
    </fieldset>
  );
}

function Field({ name, children }: { readonly name: string; readonly children: (id: string) => ReactNode }) {
  const id = useId();
  return (
    <div className="question-form-field">
      <label htmlFor={id}>{name}</label>
      {children(id)}
    </div>
  );
}
