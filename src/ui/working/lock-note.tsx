import { useState } from 'react';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { lockState } from '../../workbook/locked.ts';

/** Why a locked cell of a job stays as it is, and the way out for whoever owns the job. */
export function LockNote({ session, state }: { readonly session: Session; readonly state: SessionState }) {
  const [isAsked, setAsked] = useState(false);
  const locks = lockState(state.workbook);
  if (locks === 'set')
    return <p className="working-lock">Locked in jobs that are made from this template.</p>;
  const hold = locks === 'hold';
  return (
    <div className="working-lock">
      <p>
        {hold ? 'Locked, as its template has it.' : 'Locked by its template; the locks of this job are off.'}
      </p>
      {state.isReadOnly ? null : hold && isAsked ? (
        <p>
          Every cell of this job can be changed then, formulas as well.{' '}
          <button
            type="button"
            onClick={() => {
              setAsked(false);
              session.run({ type: 'set_locks', hold: false });
            }}
          >
            Take them off
          </button>{' '}
          <button type="button" onClick={() => setAsked(false)}>
            Leave them on
          </button>
        </p>
      ) : (
        <button
          type="button"
          onClick={() => (hold ? setAsked(true) : session.run({ type: 'set_locks', hold: true }))}
        >
          {hold ? 'Take the locks off this job' : 'Put the locks on again'}
        </button>
      )}
    </div>
  );
}
