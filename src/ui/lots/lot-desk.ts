import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { LotCommand } from '../../lots/commands.ts';
import type { LotOutcome } from '../../lots/figure-lots.ts';
import { doToLots, type LotHistory, lotHistory, redoLots, undoLots } from '../../lots/history.ts';
import { emptyLotTable, type LotTable } from '../../lots/lot-table.ts';
import { wordLotFault } from '../../lots/wording.ts';
import { type Hold, holdWorkbook } from '../storage/only-window.ts';
import { createLotFigurer } from './lot-figurer.ts';
import { type LotShelf, type LotShelfEntry, openLotShelf } from './lot-shelf.ts';

/** What the page of lots shows. Replaced as a whole on every change, never altered. */
export interface LotDeskState {
  readonly shelf: readonly LotShelfEntry[];
  /** Null where no lot table is open. */
  readonly open: LotHistory | null;
  /** One for each lot of the open table; null for what is not figured yet. */
  readonly outcomes: readonly (LotOutcome | null)[];
  readonly work: 'none' | 'figuring' | 'stopped' | 'failed';
  readonly keeping: 'kept' | 'keeping' | 'not_kept';
  /** Another window has this lot table: nothing can be changed here. */
  readonly isReadOnly: boolean;
}

export interface LotDesk {
  getState(): LotDeskState;
  subscribe(listener: () => void): () => void;
  take(id: string): Promise<Outcome<null, string>>;
  begin(title: string): Promise<void>;
  /** A table from outside, as a new one. */
  add(table: LotTable): Promise<void>;
  /** Takes the open table out of this browser; gives it, to be added again. */
  remove(): Promise<LotTable | null>;
  run(command: LotCommand): Outcome<null, string>;
  undo(): void;
  redo(): void;
  stop(): void;
  /** Goes on after a stop. */
  figureRest(): void;
}

const readOnly =
  'This lot table is open in another window, so nothing is changed here. Close it there first.';

let desk: Promise<LotDesk> | null = null;

/** One for the whole page, so that going to a sheet and back loses nothing. */
export function lotDesk(): Promise<LotDesk> {
  desk ??= createLotDesk();
  return desk;
}

async function createLotDesk(): Promise<LotDesk> {
  const shelf: LotShelf = await openLotShelf(Date.now);
  const figurer = createLotFigurer();
  const listeners = new Set<() => void>();
  let hold: Hold | null = null;
  let stored: LotTable | null = null;
  let writing: Promise<void> = Promise.resolve();
  let state: LotDeskState = {
    shelf: await shelf.list(),
    open: null,
    outcomes: [],
    work: 'none',
    keeping: 'kept',
    isReadOnly: false,
  };

  function publish(news: Partial<LotDeskState>): void {
    state = { ...state, ...news };
    for (const listener of listeners) listener();
  }

  let turn = 0;

  /** Figures until nothing is left; what has been changed meanwhile too. Another table or a stop ends it. */
  async function figure(): Promise<void> {
    if (state.work === 'figuring') return;
    turn += 1;
    const mine = turn;
    publish({ work: 'figuring' });
    try {
      let figured: LotTable | undefined;
      while (mine === turn && state.open && state.open.table !== figured) {
        figured = state.open.table;
        await figurer.figure(figured, showKnown);
      }
      if (mine === turn) publish({ work: 'none' });
    } catch {
      if (mine === turn) publish({ work: 'failed' });
    }
    showKnown();
  }

  function stopFiguring(work: 'none' | 'stopped'): void {
    turn += 1;
    publish({ work });
    figurer.stop();
  }

  function showKnown(): void {
    if (state.open) publish({ outcomes: figurer.known(state.open.table) });
  }

  function store(table: LotTable): void {
    if (state.isReadOnly) return;
    const withTypes = stored?.types !== table.types || stored.id !== table.id;
    stored = table;
    publish({ keeping: 'keeping' });
    const mine = writing.then(() => shelf.put(table, withTypes));
    writing = mine.catch(() => {});
    mine.then(
      async () => {
        if (stored === table) publish({ keeping: 'kept', shelf: await shelf.list() });
      },
      () => {
        stored = null;
        publish({ keeping: 'not_kept' });
      },
    );
  }

  function show(history: LotHistory): void {
    const isAnother = history.table !== state.open?.table;
    publish({ open: history, outcomes: figurer.known(history.table) });
    if (!isAnother) return;
    store(history.table);
    if (state.work !== 'stopped') figure();
  }

  let laying: Promise<unknown> = Promise.resolve();

  /** One table is laid after another, so that the one that was asked for last stays, and none is held beside it. */
  function inTurn<Result>(deed: () => Promise<Result>): Promise<Result> {
    const mine = laying.then(deed);
    laying = mine.catch(() => {});
    return mine;
  }

  async function lay(table: LotTable): Promise<void> {
    stopFiguring('none');
    hold?.release();
    const mine = await holdWorkbook(`lots ${table.id}`);
    hold = mine;
    publish({ open: null, isReadOnly: !mine.isMine });
    mine.freed.then(() =>
      inTurn(async () => {
        const left = hold === mine ? await shelf.read(table.id) : null;
        if (left?.ok) await lay(left.value); // as the other window has left it
      }),
    );
    show(lotHistory(table));
  }

  addEventListener('beforeunload', (event) => {
    if (state.keeping !== 'kept') event.preventDefault();
  });

  const first = state.shelf[0];
  const found = first ? await shelf.read(first.id) : null;
  if (found?.ok) await lay(found.value);

  return {
    getState: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    take: (id) =>
      inTurn(async () => {
        await writing;
        const table = await shelf.read(id);
        if (!table.ok) return failed(table.fault);
        await lay(table.value);
        return done(null);
      }),
    begin: (title) => inTurn(() => lay(emptyLotTable(crypto.randomUUID(), title))),
    add: (table) => inTurn(() => lay({ ...table, id: crypto.randomUUID() })),
    remove: () =>
      inTurn(async () => {
        const { open, isReadOnly } = state;
        if (!open || isReadOnly) return null;
        stopFiguring('none');
        await writing;
        await shelf.takeOff(open.table.id);
        hold?.release();
        hold = null;
        publish({ open: null, outcomes: [], work: 'none', shelf: await shelf.list() });
        return open.table;
      }),
    run: (command) => {
      if (!state.open) return failed('No lot table is open. Begin one first.');
      if (state.isReadOnly) return failed(readOnly);
      const outcome = doToLots(state.open, command);
      if (!outcome.ok) return failed(wordLotFault(outcome.fault));
      show(outcome.value);
      return done(null);
    },
    undo: () => {
      if (state.open && !state.isReadOnly) show(undoLots(state.open));
    },
    redo: () => {
      if (state.open && !state.isReadOnly) show(redoLots(state.open));
    },
    stop: () => stopFiguring('stopped'),
    figureRest: () => {
      figure();
    },
  };
}
