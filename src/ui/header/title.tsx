import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import type { Outcome } from '../../base/outcome.ts';

/** The workbook's title; pressed, it turns into a field. */
export function Title({
  title,
  isReadOnly,
  onRetitle,
}: {
  readonly title: string;
  readonly isReadOnly: boolean;
  readonly onRetitle: (title: string) => Outcome<null, string>;
}) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const comesBack = useRef(false);
  const [typed, setTyped] = useState<string | null>(null);
  const [refusal, setRefusal] = useState('');
  const isTyping = typed !== null;

  useEffect(() => {
    if (isTyping) field.current?.select();
    else if (comesBack.current) button.current?.focus();
    comesBack.current = false;
  }, [isTyping]);

  function close(takesFocus: boolean): void {
    comesBack.current = takesFocus;
    setTyped(null);
    setRefusal('');
  }

  function offer(takesFocus: boolean): void {
    if (typed === null) return;
    const outcome = onRetitle(typed);
    if (outcome.ok) close(takesFocus);
    else setRefusal(outcome.fault);
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.nativeEvent.isComposing) return;
    if (event.key === 'Enter') {
      // The same press would go on to the button that takes the focus, and open the field again.
      event.preventDefault();
      offer(true);
    } else if (event.key === 'Escape') close(true);
  }

  if (isReadOnly) return <p className="header-title">{title}</p>;
  if (typed === null) {
    return (
      <p className="header-title">
        <button ref={button} type="button" title="Change the title" onClick={() => setTyped(title)}>
          {title}
          <span className="visually-hidden">, change the title</span>
        </button>
      </p>
    );
  }
  return (
    <div className="header-title">
      <input
        ref={field}
        // biome-ignore lint/a11y/noAutofocus: the person has just pressed the title to type here
        autoFocus
        type="text"
        aria-label="Title of the workbook"
        aria-invalid={refusal !== ''}
        aria-describedby={id}
        maxLength={120}
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={() => offer(false)}
      />
      <p id={id} className="header-refusal" role="alert">
        {refusal}
      </p>
    </div>
  );
}
