import type { Session } from '../../session/session.ts';
import type { Shelf } from './shelf.ts';

const rest = 1500;

/** Stores the whole workbook when nobody has touched it for a moment and its figures are current, so that the next
 *  first paint has them. Gives the way to stop. */
export function snapshotAtRest(session: Session, shelf: Shelf): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let { workbook, values } = session.getState();

  const store = () => {
    const state = session.getState();
    const isStored = state.workbook === workbook && state.values === values;
    if (state.figures.type !== 'current' || isStored) return;
    ({ workbook, values } = state);
    shelf.put(session.kept(), state.history).catch(() => {}); // the log holds everything still; the next rest tries again
  };
  const unsubscribe = session.subscribe(() => {
    clearTimeout(timer);
    timer = setTimeout(store, rest);
  });
  return () => {
    clearTimeout(timer);
    unsubscribe();
  };
}
