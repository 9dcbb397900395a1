import { useEffect } from 'react';
import type { Session } from '../session/session.ts';

/** Asks before the page is left while something that was done does not stand on disk yet, or something that was typed
 *  waits and would be lost. */
export function useLeaveGuard(session: Session, isWaiting: boolean): void {
  useEffect(() => {
    const onLeave = (event: BeforeUnloadEvent) => {
      if (isWaiting || session.getState().keeping.type !== 'kept') event.preventDefault();
    };
    window.addEventListener('beforeunload', onLeave);
    return () => window.removeEventListener('beforeunload', onLeave);
  }, [session, isWaiting]);
}
