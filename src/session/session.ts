import { type CellAddress, sameAddress } from '../base/address.ts';
import { done, failed, type Outcome } from '../base/outcome.ts';
import type { Calculator } from '../engine/calculator.ts';
import { sheetWithId } from '../workbook/cells.ts';
import { type Command, runCommand } from '../workbook/commands.ts';
import { applyDifference, type Difference } from '../workbook/difference.ts';
import type { Sheet, Workbook } from '../workbook/document.ts';
import type { KeptWorkbook } from '../workbook/file.ts';
import {
  afterDoing,
  type DeedMark,
  doAgain,
  emptyHistory,
  type History,
  takeBack,
} from '../workbook/history.ts';
import { fitsAfter } from '../workbook/recalled.ts';
import { type Values, valuesAfter, valuesAnew, valuesOfFormulas, withValues } from '../workbook/values.ts';
import { wordCommandFault } from '../workbook/wording.ts';
import { deedName } from './deed-name.ts';
import { explain, glance } from './explain.ts';
import type { Explanation } from './explanation.ts';
import { createFiguring } from './figuring.ts';
import { refuseFormula } from './formula-check.ts';
import type { Journal } from './journal.ts';
import { previewEntry } from './preview.ts';
import { standingsReader } from './standings.ts';
import type { SessionState } from './state.ts';
import { notStored, onlyRead } from './wording.ts';

/** One open workbook: commands in, states out, workings on demand. */
export interface Session {
  getState(): SessionState;
  /** Gives the way to stop listening. */
  subscribe(listener: () => void): () => void;
  /** Told each difference when it has been applied, whether it was done, taken back or done again. Gives the way to stop. */
  follow(listener: (difference: Difference) => void): () => void;
  /** Carries a command out, or says in a sentence why not; then nothing has changed. */
  run(command: Command): Outcome<null, string>;
  /** Carries out a difference that was made elsewhere, such as a template's newer revision, as one deed with this name.
   *  Refused where the session can only read, or where a formula in it cannot stand here. */
  carry(difference: Difference, says: string): Outcome<null, string>;
  /** Takes the last deed back; gives its name, or null where there is none. */
  undo(): string | null;
  redo(): string | null;
  /** How an entry would be read, while it is being typed: `12′ 4 ½″`, or why not. Null where there is nothing to say. */
  preview(sheetId: string, address: CellAddress, typed: string): Outcome<string, string> | null;
  /** What can be said of a cell at once, without the engine: no workings, no links. */
  glance(sheetId: string, address: CellAddress): Explanation;
  explain(sheetId: string, address: CellAddress): Promise<Explanation>;
  /** The open workbook as it goes into a file. */
  kept(): KeptWorkbook;
  /** Fulfilled when everything that was done stands on disk, or never will. */
  written(): Promise<void>;
  /** Fulfilled when, besides, every figure comes from the engine. */
  settled(): Promise<void>;
  /** Asks nothing of the calculator any more, so that another session can have it. */
  close(): void;
}

export interface SessionParts {
  readonly kept: KeptWorkbook;
  /** What was done on earlier visits and can still be taken back. */
  readonly history?: History;
  /** May still be loading; the workbook can be read and edited meanwhile. */
  readonly calculator: Promise<Calculator>;
  readonly journal?: Journal;
  readonly isReadOnly?: boolean;
}

/** A cell's working on its way or there, and what it comes from. */
interface Explained {
  readonly workbook: Workbook;
  readonly values: Values;
  readonly sheet: Sheet;
  readonly address: CellAddress;
  readonly explanation: Promise<Explanation>;
}

function isOf(
  one: Explained,
  workbook: Workbook,
  values: Values,
  sheet: Sheet,
  address: CellAddress,
): boolean {
  return (
    one.workbook === workbook &&
    one.values === values &&
    one.sheet === sheet &&
    sameAddress(one.address, address)
  );
}

/** What brings formulas in that a person has typed; all else moves or copies those that stand there. */
const typing: ReadonlySet<Command['type']> = new Set(['enter', 'write', 'retype']);

export function createSession({
  kept,
  history: recalled = emptyHistory,
  calculator,
  journal,
  isReadOnly = false,
}: SessionParts): Session {
  const standings = standingsReader();
  const listeners = new Set<() => void>();
  const followers = new Set<(difference: Difference) => void>();
  let state: SessionState = {
    workbook: kept.workbook,
    values: kept.values,
    history: recalled,
    standings: standings(kept.workbook, kept.values),
    figures: { type: 'stored' },
    keeping: { type: 'kept' },
    isReadOnly,
  };
  let writing: Promise<void> = Promise.resolve();
  let explained: Explained | null = null;

  function publish(news: Partial<SessionState>): void {
    const next = { ...state, ...news };
    const isShownAnew = next.workbook !== state.workbook || next.values !== state.values;
    state = isShownAnew ? { ...next, standings: standings(next.workbook, next.values) } : next;
    for (const listener of listeners) listener();
  }

  const figuring = createFiguring(kept.workbook, calculator, {
    began: () => {
      if (state.figures.type === 'current') publish({ figures: { type: 'figuring' } });
    },
    all: (changes) => publish({ values: valuesAnew(state.values, changes) }),
    some: (changes) => {
      if (changes.length > 0) publish({ values: withValues(state.values, changes) });
    },
    finished: () => publish({ figures: { type: 'current' } }),
    stopped: (sentence) => publish({ figures: { type: 'stopped', sentence } }),
  });

  function write(difference: Difference, mark: DeedMark): void {
    if (!journal) return;
    publish({ keeping: { type: 'keeping' } });
    const mine = Promise.all([writing, journal.append(difference, mark)]).then(
      () => {
        if (writing === mine) publish({ keeping: { type: 'kept' } });
      },
      () => publish({ keeping: { type: 'not_kept', sentence: notStored } }),
    );
    writing = mine;
  }

  const ofEarlierVisits = new Set([...recalled.done, ...recalled.undone]);

  /** Takes a deed back or does it again. One of an earlier visit that does not fit is gone, with all before it. */
  function carryOutStep(type: 'took_back' | 'did_again'): string | null {
    const { done, undone } = state.history;
    const step = isReadOnly ? null : type === 'took_back' ? takeBack(state.history) : doAgain(state.history);
    if (!step) return null;
    const deed = (type === 'took_back' ? done : undone).at(-1);
    if (deed && ofEarlierVisits.has(deed) && !fitsAfter(state.workbook, step.deed.difference)) {
      publish({ history: emptyHistory });
      return null;
    }
    carryOut(step.deed.difference, step.history, { type });
    return step.deed.says;
  }

  function carryOut(difference: Difference, history: History, mark: DeedMark): void {
    const before = state.workbook;
    const workbook = applyDifference(before, difference);
    figuring.after(difference, workbook);
    publish({ workbook, history, values: valuesAfter(state.values, difference, before) });
    for (const follower of followers) follower(difference);
    write(difference, mark);
  }

  return {
    getState: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    follow: (listener) => {
      followers.add(listener);
      return () => followers.delete(listener);
    },
    run: (command) => {
      if (isReadOnly) return failed(onlyRead);
      const outcome = runCommand(state.workbook, command);
      if (!outcome.ok) return failed(wordCommandFault(outcome.fault));
      const refusal = refuseFormula(state.workbook, outcome.value, typing.has(command.type));
      if (refusal !== null) return failed(refusal);
      if (outcome.value.length === 0) return done(null);
      const deed = { says: deedName(state.workbook, command), difference: outcome.value };
      carryOut(outcome.value, afterDoing(state.history, deed), { type: 'did', says: deed.says });
      return done(null);
    },
    carry: (difference, says) => {
      if (isReadOnly) return failed(onlyRead);
      const refusal = refuseFormula(state.workbook, difference, true);
      if (refusal !== null) return failed(refusal);
      if (difference.length > 0)
        carryOut(difference, afterDoing(state.history, { says, difference }), { type: 'did', says });
      return done(null);
    },
    undo: () => carryOutStep('took_back'),
    redo: () => carryOutStep('did_again'),
    preview: (sheetId, address, typed) => previewEntry(state.workbook, sheetId, address, typed),
    glance: (sheetId, address) => glance(state.workbook, state.values, sheetId, address),
    explain: async (sheetId, address) => {
      const engine = await figuring.settled();
      const sheet = sheetWithId(state.workbook, sheetId);
      if (!engine || !sheet) return glance(state.workbook, state.values, sheetId, address);
      const { workbook, values } = state;
      // Asked at each of the states that an edit goes through; by now they are all the same one.
      if (!explained || !isOf(explained, workbook, values, sheet, address)) {
        const explanation = explain(workbook, values, engine, sheet, address);
        explained = { workbook, values, sheet, address, explanation };
        explanation.catch(() => {
          explained = null;
        });
      }
      return explained.explanation;
    },
    kept: () => ({ workbook: state.workbook, values: valuesOfFormulas(state.workbook, state.values) }),
    written: () => writing,
    settled: async () => {
      await figuring.settled();
      await writing;
    },
    close: () => figuring.close(),
  };
}
