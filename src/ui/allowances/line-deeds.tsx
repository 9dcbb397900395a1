import type { Ref } from 'react';
import { type AllowanceLine, calledAt } from '../../templates/allowances/line.ts';
import type { Trial } from './use-trial.ts';

/** Copy a line, or take it out: both only tried, until it is kept. */
export function LineDeeds({
  line,
  trial,
  isReadOnly,
  copyButton,
  onCopied,
}: {
  readonly line: AllowanceLine;
  readonly trial: Trial;
  readonly isReadOnly: boolean;
  readonly copyButton: Ref<HTMLButtonElement>;
  readonly onCopied: (id: number) => void;
}) {
  const place = { sheet: line.sheet.id, row: line.row };
  const isTaken = trial.isTaken(place);
  const called = calledAt(line);
  return (
    <span className="line-deeds">
      <button
        type="button"
        ref={copyButton}
        disabled={isReadOnly}
        aria-label={`Copy ${called}`}
        onClick={() => onCopied(trial.copy(line))}
      >
        Copy
      </button>
      <button
        type="button"
        disabled={isReadOnly}
        data-taken={isTaken ? '' : undefined}
        aria-label={isTaken ? `Would go; leave it in: ${called}` : `Take out ${called}`}
        onClick={() => trial.takeOut(place, !isTaken)}
      >
        {isTaken ? 'Would go; leave it in' : 'Take out'}
      </button>
    </span>
  );
}
