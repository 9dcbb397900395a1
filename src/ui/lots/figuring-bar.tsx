import type { ReactNode } from 'react';
import type { LotDesk, LotDeskState } from './lot-desk.ts';

/** How far the figuring of the lots has come, with a way to stop it and to go on. */
export function FiguringBar({
  desk,
  state,
  children,
}: {
  readonly desk: LotDesk;
  readonly state: LotDeskState;
  readonly children: ReactNode;
}) {
  const count = state.outcomes.length;
  const done = state.outcomes.filter((one) => one !== null).length;
  const words = wordsOf(state, done, count);
  return (
    <div className="lots-figuring">
      {state.work === 'figuring' && done < count ? (
        <>
          <progress aria-label="Lots figured" max={count} value={done} />
          <button type="button" onClick={desk.stop}>
            Stop
          </button>
        </>
      ) : null}
      {(state.work === 'stopped' || state.work === 'failed') && done < count ? (
        <button type="button" onClick={desk.figureRest}>
          Figure the rest
        </button>
      ) : null}
      <p data-trouble={state.keeping === 'not_kept' ? '' : undefined}>{words}</p>
      {children}
    </div>
  );
}

function wordsOf({ work, keeping, isReadOnly }: LotDeskState, done: number, count: number): string {
  const kept = isReadOnly
    ? 'Open in another window; here it can only be read.'
    : keeping === 'not_kept'
      ? 'Not kept: this browser could not write it down. Save the lot table to a file.'
      : keeping === 'keeping'
        ? 'Being kept …'
        : 'Kept in this browser.';
  const figured =
    done === count
      ? count === 1
        ? 'The lot is figured.'
        : `All ${count} lots figured.`
      : work === 'figuring'
        ? `${done} of ${count} lots figured …`
        : work === 'failed'
          ? `Figuring broke off after ${done} of ${count} lots.`
          : `Stopped: ${done} of ${count} lots figured.`;
  return count === 0 ? kept : `${figured} ${kept}`;
}
