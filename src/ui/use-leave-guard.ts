import { useEffect } from 'react';
import type { Session } from '../session/session.ts';

/** Asks before the page is left while something that was done does not stand on disk yet. */
export function useLeaveGuard(session: Session): void {
  useEffect(() => {
    const onLeave = (event: BeforeUnloadEvent) => {
      if (session.getState().keeping.type !== 'kept') event.preventDefault();
    };
    window.addEventListener('beforeunload', onLeave);
    return () => window.removeEventListener('beforeunload', onLeave);
  }, [session]);
}
