import { done, type Outcome } from '../base/outcome.ts';
import type { Calculator } from '../engine/calculator.ts';
import { createSession, type Session } from '../session/session.ts';
import type { KeptWorkbook } from '../workbook/file.ts';
import { createWorkerCalculator } from './engine/worker-calculator.ts';
import { openDatabase } from './storage/database.ts';
import { type Hold, holdWorkbook } from './storage/only-window.ts';
import { snapshotAtRest } from './storage/rest-snapshot.ts';
import { createShelf, type Shelf, type ShelfEntry } from './storage/shelf.ts';

/** What lies before the person: one open workbook, and the others that this browser keeps. */
export interface Desk {
  readonly session: Session;
  readonly shelf: readonly ShelfEntry[];
  /** Fulfilled when a workbook that could only be read here may now be changed. */
  readonly freed: Promise<void>;
}

export interface DeskKeeper {
  getDesk(): Desk;
  subscribe(listener: () => void): () => void;
  /** Takes a workbook from the shelf, or says why it cannot be read; then the open one stays. */
  take(id: string): Promise<Outcome<null, string>>;
  /** Puts a workbook from outside on the shelf as a new one, and opens it. */
  add(kept: KeptWorkbook): Promise<void>;
}

/** Opens what was open last, or the first workbook of a new browser. The engine is asked for only when `mayLoad` says. */
export async function createDeskKeeper(
  firstWorkbook: () => Promise<KeptWorkbook>,
  mayLoad: Promise<void>,
): Promise<DeskKeeper> {
  const shelf = createShelf(await openDatabase(), Date.now);
  const calculator = mayLoad.then(() => {
    performance.mark('stretchout engine asked');
    return createWorkerCalculator();
  });
  const listeners = new Set<() => void>();
  let place = await firstPlace(shelf, calculator, firstWorkbook);

  async function lay(next: Place): Promise<void> {
    await clear(place);
    place = next;
    await next.store(); // so that this one is opened first the next time
    for (const listener of listeners) listener();
  }

  return {
    getDesk: () => place.desk,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    take: async (id) => {
      const kept = await shelf.read(id);
      if (!kept.ok) return kept;
      await lay(await placeFor(kept.value, shelf, calculator));
      return done(null);
    },
    add: async (kept) => {
      const added = await addToShelf(shelf, kept);
      await lay(await placeFor(added, shelf, calculator));
    },
  };
}

/** A desk with what has to be put away when another workbook takes its place. */
interface Place {
  readonly desk: Desk;
  readonly hold: Hold;
  readonly stopSnapshots: () => void;
  readonly store: () => Promise<void>;
}

async function firstPlace(
  shelf: Shelf,
  calculator: Promise<Calculator>,
  firstWorkbook: () => Promise<KeptWorkbook>,
): Promise<Place> {
  for (const { id } of await shelf.list()) {
    const kept = await shelf.read(id);
    if (kept.ok) return placeFor(kept.value, shelf, calculator);
  }
  return placeFor(await addToShelf(shelf, await firstWorkbook()), shelf, calculator);
}

/** A workbook from outside never takes the place of one that is kept already. */
async function addToShelf(shelf: Shelf, kept: KeptWorkbook): Promise<KeptWorkbook> {
  const own = { ...kept, workbook: { ...kept.workbook, id: crypto.randomUUID() } };
  await shelf.put(own);
  return own;
}

async function placeFor(kept: KeptWorkbook, shelf: Shelf, calculator: Promise<Calculator>): Promise<Place> {
  const { id } = kept.workbook;
  const hold = await holdWorkbook(id);
  const session = createSession({
    kept,
    calculator,
    isReadOnly: !hold.isMine,
    ...(hold.isMine ? { journal: shelf.journal(id) } : {}),
  });
  const unmark = session.subscribe(() => {
    if (session.getState().figures.type !== 'current') return;
    performance.mark('stretchout figures current');
    unmark();
  });
  return {
    desk: { session, shelf: await shelf.list(), freed: hold.freed },
    hold,
    stopSnapshots: hold.isMine ? snapshotAtRest(session, shelf) : () => {},
    store: () => (hold.isMine ? shelf.put(session.kept()) : Promise.resolve()),
  };
}

async function clear({ desk, hold, stopSnapshots, store }: Place): Promise<void> {
  stopSnapshots();
  desk.session.close();
  await desk.session.written();
  await store().catch(() => {}); // the log holds everything still
  hold.release();
}
