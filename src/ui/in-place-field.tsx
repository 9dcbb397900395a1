import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import type { Outcome } from '../base/outcome.ts';
import './in-place-field.css';

/** A field where a text stood, to write it anew. Enter or leaving it offers what was typed, Escape leaves the text as it
 *  was; what is refused stays, with why. */
export function InPlaceField({
  label,
  text,
  longest,
  onOffer,
  onClose,
}: {
  readonly label: string;
  readonly text: string;
  readonly longest: number;
  readonly onOffer: (typed: string) => Outcome<null, string>;
  /** The text stands again; told whether the focus was in the field to the last. */
  readonly onClose: (hadFocus: boolean) => void;
}) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState(text);
  const [refusal, setRefusal] = useState('');

  useEffect(() => field.current?.select(), []);

  function offer(hasFocus: boolean): void {
    const outcome = typed === text ? null : onOffer(typed);
    if (outcome && !outcome.ok) setRefusal(outcome.fault);
    else onClose(hasFocus);
  }

  function onKeyDown(event: KeyboardEvent): void {
    event.stopPropagation();
    if (event.nativeEvent.isComposing || !(event.key === 'Enter' || event.key === 'Escape')) return;
    // The same press would go on to the button that takes the focus, and open the field again.
    event.preventDefault();
    if (event.key === 'Enter') offer(true);
    else onClose(true);
  }

  return (
    <div className="in-place-field">
      <input
        ref={field}
        // biome-ignore lint/a11y/noAutofocus: the person has just asked to type here
        autoFocus
        type="text"
        aria-label={label}
        aria-invalid={refusal !== ''}
        aria-describedby={id}
        maxLength={longest}
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={() => offer(false)}
      />
      <p id={id} className="in-place-field-refusal" role="alert">
        {refusal}
      </p>
    </div>
  );
}
