import type { WaitingEntry } from '../waiting/waiting-entries.ts';

/** What was typed for this cell and is not in it: refused, or left half-written. */
export function WaitingBox({
  entry: { typed, refusal },
  onWriteOn,
  onGiveUp,
}: {
  readonly entry: WaitingEntry;
  /** Absent where it is no formula: such an entry is put right in the cell itself. */
  readonly onWriteOn?: () => void;
  readonly onGiveUp: () => void;
}) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset belongs to a form, and nothing is sent from here
    <div role="group" aria-label="Waits, not in the cell yet" className="waiting-box">
      <p>
        <span aria-hidden="true">✎</span> <code>{typed}</code> was typed here and is not in the cell yet.
      </p>
      {refusal === null ? null : <p className="waiting-box-why">{refusal}</p>}
      {onWriteOn ? null : <p className="working-detail">Press Enter on the cell to put it right.</p>}
      <div className="waiting-box-deeds">
        {onWriteOn ? (
          <button type="button" onClick={onWriteOn}>
            Write on
          </button>
        ) : null}
        <button type="button" onClick={onGiveUp}>
          Give it up
        </button>
      </div>
    </div>
  );
}
