import { useEffect, useId, useRef, useState } from 'react';
import { longestNote } from '../../workbook/command/dress.ts';
import type { Shared } from '../../workbook/shared-dress.ts';

/** A note on the selected cells; kept when the field is left, also by whoever presses another cell. */
export function NoteField({
  shared,
  onNote,
}: {
  readonly shared: Shared<string | null>;
  readonly onNote: (note: string | null) => void;
}) {
  const id = useId();
  const before = shared === 'mixed' ? '' : (shared.all ?? '');
  const [typed, setTyped] = useState<string | null>(null);

  function keep(): void {
    if (typed === null) return;
    setTyped(null);
    const note = typed.trim();
    if (note !== before) onNote(note === '' ? null : note);
  }

  const latest = useRef(keep);
  latest.current = keep;
  // A field that goes with its cell is never left first.
  useEffect(() => () => latest.current(), []);

  return (
    <div className="question-form-field cell-dress-note">
      <label htmlFor={id}>Note</label>
      <textarea
        id={id}
        rows={2}
        maxLength={longestNote}
        value={typed ?? before}
        placeholder={shared === 'mixed' ? 'The cells have several notes.' : undefined}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={keep}
      />
    </div>
  );
}
