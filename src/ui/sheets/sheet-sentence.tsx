import { useEffect, useRef, useState } from 'react';
import type { Outcome } from '../../base/outcome.ts';
import { InPlaceField } from '../in-place-field.tsx';
import './sheet-sentence.css';

/** The sentence over the grid that says what to do here; pressed, it turns into a field. */
export function SheetSentence({
  says,
  isReadOnly,
  onOffer,
}: {
  readonly says: string;
  readonly isReadOnly: boolean;
  readonly onOffer: (says: string) => Outcome<null, string>;
}) {
  const button = useRef<HTMLButtonElement>(null);
  const comesBack = useRef(false);
  const [isTyping, setTyping] = useState(false);

  useEffect(() => {
    if (!isTyping && comesBack.current) button.current?.focus();
    comesBack.current = false;
  }, [isTyping]);

  if (isReadOnly) return <p className="app-sheet-says">{says}</p>;
  if (isTyping) {
    return (
      <div className="app-sheet-says sheet-sentence">
        <InPlaceField
          label="What to do on this sheet"
          text={says}
          longest={500}
          onOffer={onOffer}
          onClose={(hadFocus) => {
            comesBack.current = hadFocus;
            setTyping(false);
          }}
        />
      </div>
    );
  }
  return (
    <p className="app-sheet-says sheet-sentence">
      <button ref={button} type="button" title="Change this sentence" onClick={() => setTyping(true)}>
        {says === '' ? 'Say what to do on this sheet' : says}
        {says === '' ? null : <span className="visually-hidden">, change this sentence</span>}
      </button>
    </p>
  );
}
