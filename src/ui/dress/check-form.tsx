import { useId, useState } from 'react';
import { type CheckDraft, checkDraftFaults, checkFormula } from '../../templates/check-formula.ts';
import { wordCheckDraftFault } from '../../templates/wording.ts';

const blank: CheckDraft = { stopsWhen: '', stopSays: '', looksWhen: '', lookSays: '' };

/** Writes the formula of a check from what its author says of it. The formula itself stays open above. */
export function CheckForm({ onKeep }: { readonly onKeep: (formula: string) => boolean }) {
  const told = useId();
  const [draft, setDraft] = useState(blank);
  const [isTold, setTold] = useState(false);
  const faults = isTold ? checkDraftFaults(draft) : [];

  function keep(): void {
    setTold(true);
    if (checkDraftFaults(draft).length > 0 || !onKeep(checkFormula(draft))) return;
    setDraft(blank);
    setTold(false);
  }

  const line = (name: string, part: keyof CheckDraft, hint: string) => (
    <Line
      name={name}
      hint={hint}
      value={draft[part]}
      told={told}
      onChange={(value) => setDraft({ ...draft, [part]: value })}
    />
  );

  return (
    <fieldset className="question-form">
      <legend>Write the check</legend>
      {line('Stops when', 'stopsWhen', 'B4>24')}
      {line('and says', 'stopSays', 'the brake takes no more than 24″')}
      {line('Wants a look when', 'looksWhen', 'B4>18')}
      {line('and says then', 'lookSays', 'two people to turn it')}
      <div id={told} className="cell-dress-faults" role="status">
        {faults.map((fault) => (
          <p key={JSON.stringify(fault)}>{wordCheckDraftFault(fault)}</p>
        ))}
      </div>
      <p className="question-form-deeds">
        <button type="button" onClick={keep}>
          Write its formula
        </button>
      </p>
    </fieldset>
  );
}

function Line({
  name,
  hint,
  value,
  told,
  onChange,
}: {
  readonly name: string;
  readonly hint: string;
  readonly value: string;
  readonly told: string;
  readonly onChange: (value: string) => void;
}) {
  const id = useId();
  return (
    <div className="question-form-field">
      <label htmlFor={id}>{name}</label>
      <input
        id={id}
        type="text"
        value={value}
        placeholder={hint}
        aria-describedby={told}
        onChange={(event) => onChange(event.target.value)}
      />
    </div>
  );
}
