import { done, failed, type Outcome } from '../base/outcome.ts';
import type { Calculator } from '../engine/calculator.ts';
import { createSession, type Session } from '../session/session.ts';
import type { KeptWorkbook } from '../workbook/file.ts';
import type { History } from '../workbook/history.ts';
import { createWorkerCalculator } from './engine/worker-calculator.ts';
import { openDatabase } from './storage/database.ts';
import { type Hold, holdWorkbook } from './storage/only-window.ts';
import { snapshotAtRest } from './storage/rest-snapshot.ts';
import { createShelf, type OffShelf, type Shelf, type ShelfEntry } from './storage/shelf.ts';

/** What lies before the person: one open workbook, and the others that this browser keeps. */
export interface Desk {
  readonly session: Session;
  readonly shelf: readonly ShelfEntry[];
  /** What was taken off the shelf since the page was opened, newest first; gone when it is closed. */
  readonly offShelf: readonly OffShelf[];
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
  /** Puts a copy of a workbook beside it on the shelf; the open one stays open. Gives the title of the copy. */
  copy(id: string): Promise<Outcome<string, string>>;
  /** Takes a workbook that is open nowhere off the shelf, to where it can be put back from. Gives its title. */
  takeOff(id: string): Promise<Outcome<string, string>>;
  putBack(off: OffShelf): Promise<void>;
  /** Reads a workbook of the shelf, without opening it. */
  read(id: string): Promise<Outcome<KeptWorkbook, string>>;
  /** A second calculator, for trials, worked examples and lots; each use opens its own workbook in it, as one request. */
  spareCalculator(): Promise<Calculator>;
}

/** Opens what was open last, or the first workbook of a new browser. The engine is asked only when `mayLoad` says;
 *  for a large workbook it gets ready meanwhile, which would take time from the first picture of a small one. */
export async function createDeskKeeper(
  firstWorkbook: () => Promise<KeptWorkbook>,
  mayLoad: Promise<void>,
): Promise<DeskKeeper> {
  let early: Calculator | null = null;
  const calculator = mayLoad.then(() => {
    performance.mark('stretchout engine asked');
    return early ?? createWorkerCalculator();
  });
  const shelf = createShelf(await openDatabase(), Date.now);
  let spare: Promise<Calculator> | null = null;
  const calculators: Calculators = {
    own: calculator,
    ready: () => {
      early ??= createWorkerCalculator({ isEarly: true });
    },
    spare: () => {
      spare ??= mayLoad.then(() => createWorkerCalculator());
      return spare;
    },
  };
  const listeners = new Set<() => void>();
  let place = await firstPlace(shelf, calculators, firstWorkbook);

  async function showShelf(offShelf = place.desk.offShelf): Promise<void> {
    const entries = await shelf.list();
    place = { ...place, desk: { ...place.desk, shelf: entries, offShelf } };
    for (const listener of listeners) listener();
  }

  async function lay(next: Place): Promise<void> {
    await clear(place);
    const { offShelf } = place.desk;
    place = { ...next, desk: { ...next.desk, offShelf } };
    await next.store(); // so that this one is opened first the next time
    await showShelf(); // with what the other one was left as
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
      await lay(await placeFor(kept.value, shelf, calculators));
      return done(null);
    },
    add: async (kept) => {
      const added = await addToShelf(shelf, kept);
      await lay(await placeFor(added, shelf, calculators));
    },
    copy: async (id) => {
      const open = place.desk.session.kept();
      const kept = open.workbook.id === id ? done(open) : await shelf.read(id);
      if (!kept.ok) return kept;
      const title = `Copy of ${kept.value.workbook.title}`.slice(0, 120);
      await addToShelf(shelf, { ...kept.value, workbook: { ...kept.value.workbook, title } });
      await showShelf();
      return done(title);
    },
    takeOff: async (id) => {
      const hold = await holdWorkbook(id);
      if (!hold.isMine) {
        hold.release();
        return failed('This workbook is open in a window, so it stays on the shelf. Close it there first.');
      }
      const off = await shelf.takeOff(id);
      hold.release();
      await showShelf(off ? [off, ...place.desk.offShelf] : undefined);
      return off ? done(off.entry.title) : failed('This workbook is no longer on the shelf.');
    },
    putBack: async (off) => {
      await shelf.putBack(off);
      await showShelf(place.desk.offShelf.filter((one) => one !== off));
    },
    read: (id) => shelf.read(id),
    spareCalculator: calculators.spare,
  };
}

interface Calculators {
  readonly own: Promise<Calculator>;
  /** Begins the workbook's own before it is asked for. */
  readonly ready: () => void;
  readonly spare: () => Promise<Calculator>;
}

/** A desk with what has to be put away when another workbook takes its place. */
interface Place {
  readonly desk: Desk;
  readonly hold: Hold;
  readonly stopSnapshots: () => void;
  readonly store: () => Promise<void>;
}

/** Above so many rows the engine takes longer than the first picture. */
const largeRows = 2000;

async function firstPlace(
  shelf: Shelf,
  calculators: Calculators,
  firstWorkbook: () => Promise<KeptWorkbook>,
): Promise<Place> {
  for (const { id } of await shelf.list()) {
    const kept = await shelf.read(id);
    if (!kept.ok) continue;
    if (kept.value.workbook.sheets.some((sheet) => sheet.rows.length > largeRows)) calculators.ready();
    return placeFor(kept.value, shelf, calculators);
  }
  return placeFor(await addToShelf(shelf, await firstWorkbook()), shelf, calculators);
}

/** A workbook from outside never takes the place of one that is kept already. */
async function addToShelf(shelf: Shelf, kept: KeptWorkbook): Promise<KeptWorkbook> {
  const own = { workbook: { ...kept.workbook, id: crypto.randomUUID() }, values: kept.values };
  await shelf.put(own);
  return own;
}

async function placeFor(
  kept: KeptWorkbook & { readonly history?: History },
  shelf: Shelf,
  calculators: Calculators,
): Promise<Place> {
  const { id } = kept.workbook;
  const hold = await holdWorkbook(id);
  const session = createSession({
    kept,
    ...(kept.history ? { history: kept.history } : {}),
    calculator: calculators.own,
    isReadOnly: !hold.isMine,
    ...(hold.isMine ? { journal: shelf.journal(id) } : {}),
  });
  const unmark = session.subscribe(() => {
    if (session.getState().figures.type !== 'current') return;
    performance.mark('stretchout figures current');
    unmark();
  });
  return {
    desk: { session, shelf: await shelf.list(), offShelf: [], freed: hold.freed },
    hold,
    stopSnapshots: hold.isMine ? snapshotAtRest(session, shelf) : () => {},
    store: () => (hold.isMine ? shelf.put(session.kept(), session.getState().history) : Promise.resolve()),
  };
}

async function clear({ desk, hold, stopSnapshots, store }: Place): Promise<void> {
  stopSnapshots();
  desk.session.close();
  await desk.session.written();
  await store().catch(() => {}); // the log holds everything still
  hold.release();
}
