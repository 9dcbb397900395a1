import { useRef } from 'react';
import type { Trial } from './use-trial.ts';

/** Keep what is tried, or put it back. */
export function TrialBar({
  trial,
  isFiguring,
  isReadOnly,
  said,
  onKeep,
  onPutBack,
}: {
  readonly trial: Trial;
  readonly isFiguring: boolean;
  readonly isReadOnly: boolean;
  readonly said: string;
  readonly onKeep: () => void;
  readonly onPutBack: () => void;
}) {
  const canKeep = trial.isOn && trial.refusal === null && !isReadOnly;
  const bar = useRef<HTMLDivElement>(null);
  // The buttons go with what was tried; the keyboard stays where what was done is told.
  const thenStay = (deed: () => void) => () => {
    deed();
    bar.current?.focus();
  };
  return (
    <div className="allowances-bar" ref={bar} tabIndex={-1}>
      {trial.isOn ? (
        <>
          <button
            type="button"
            className="allowances-keep"
            aria-disabled={!canKeep}
            onClick={canKeep ? thenStay(onKeep) : undefined}
          >
            Keep it
          </button>
          <button type="button" onClick={thenStay(onPutBack)}>
            Put it back
          </button>
        </>
      ) : null}
      <p role="status">{words(trial, isFiguring, said)}</p>
      {trial.isOn ? <small className="allowances-bar-key">Ctrl+Enter in any field comes here</small> : null}
    </div>
  );
}

function words({ isOn, refusal }: Trial, isFiguring: boolean, said: string): string {
  if (!isOn)
    return (
      said ||
      'Type another number beside one of these, or copy a row, and see what it does before it is kept.'
    );
  if (refusal !== null) return refusal;
  return isFiguring ? 'Figuring …' : 'This is only tried. Nothing is in the workbook until you keep it.';
}
