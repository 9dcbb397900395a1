import { useSyncExternalStore } from 'react';
import type { Session } from '../session/session.ts';
import type { SessionState } from '../session/state.ts';
import type { Desk, DeskKeeper } from './desk.ts';

export function useDesk(keeper: DeskKeeper): Desk {
  return useSyncExternalStore(keeper.subscribe, keeper.getDesk);
}

export function useSessionState(session: Session): SessionState {
  return useSyncExternalStore(session.subscribe, session.getState);
}
