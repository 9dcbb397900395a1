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
  return (
    <div className="allowances-bar">
      {trial.isOn ? (
        <>
          <button
            type="button"
            className="allowances-keep"
            aria-disabled={!canKeep}
            onClick={canKeep ? onKeep : undefined}
          >
            Keep it
          </button>
          <button type="button" onClick={onPutBack}>
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
