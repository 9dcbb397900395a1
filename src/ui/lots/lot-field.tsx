import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import type { Outcome } from '../../base/outcome.ts';

/** Where a cell of the lot table goes after its field is closed. */
export type FieldEnd = 'stay' | 'down' | 'right' | 'left' | 'gone';

/** The field of one cell: a line to type in, or a choice. Enter or leaving it offers what stands there, Escape leaves the cell
 *  as it was; what is refused stays, with why. */
export function LotField({
  label,
  text,
  choices,
  isByPointer,
  onOffer,
  onClose,
}: {
  readonly label: string;
  readonly text: string;
  readonly choices?: readonly string[] | undefined;
  /** A choice that is picked by hand is taken at once; by key it may still change. */
  readonly isByPointer: boolean;
  readonly onOffer: (typed: string) => Outcome<null, string>;
  readonly onClose: (end: FieldEnd) => void;
}) {
  const id = useId();
  const line = useRef<HTMLInputElement>(null);
  const choice = useRef<HTMLSelectElement>(null);
  const first = useRef(text);
  const isClosed = useRef(false);
  const [typed, setTyped] = useState(text);
  const [refusal, setRefusal] = useState('');

  useEffect(() => {
    const field = line.current ?? choice.current;
    field?.focus();
    if (!isByPointer) return;
    try {
      choice.current?.showPicker();
    } catch {
      // The browser opens it at the next press.
    }
  }, [isByPointer]);

  function offer(value: string, end: FieldEnd): void {
    if (isClosed.current) return;
    const outcome = value === first.current && choices ? null : onOffer(value);
    if (outcome && !outcome.ok) setRefusal(outcome.fault);
    else {
      isClosed.current = true;
      onClose(end);
    }
  }

  function onKeyDown(event: KeyboardEvent): void {
    event.stopPropagation();
    if (event.nativeEvent.isComposing) return;
    if (event.key === 'Escape') {
      event.preventDefault();
      isClosed.current = true;
      onClose('stay');
    } else if (event.key === 'Enter' || event.key === 'Tab') {
      event.preventDefault();
      offer(typed, event.key === 'Enter' ? 'down' : event.shiftKey ? 'left' : 'right');
    }
  }

  const shared = {
    'aria-label': label,
    'aria-invalid': refusal !== '',
    'aria-describedby': id,
    onKeyDown,
    onBlur: () => offer(typed, 'gone'),
  };
  return (
    <span className="lot-field">
      {choices ? (
        <select
          ref={choice}
          {...shared}
          value={typed}
          onChange={(event) => {
            setTyped(event.target.value);
            if (isByPointer) offer(event.target.value, 'stay');
          }}
        >
          {choices.includes(typed) ? null : <option value={typed}>{typed || 'as usual'}</option>}
          {choices.map((one) => (
            <option key={one}>{one}</option>
          ))}
        </select>
      ) : (
        <input
          ref={line}
          {...shared}
          type="text"
          maxLength={500}
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
      )}
      <span id={id} className="lot-field-refusal" role="alert">
        {refusal}
      </span>
    </span>
  );
}
