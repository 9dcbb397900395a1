import type { RefObject } from 'react';
import { type CellAddress, type CellRange, isInRange, writeAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import type { Sheet } from '../../workbook/document.ts';
import { type useWaiting, waitingAt } from '../waiting/waiting-entries.ts';
import type { Onward } from './cell-editor.tsx';
import { beginDraft, type Draft } from './draft.ts';
import { nextTo } from './filled-edge.ts';
import { within } from './keyboard.ts';
import { pastHidden } from './past-hidden.ts';
import { nextRound } from './round.ts';
import { lastPlace, roundBlock, type Selection } from './selection.ts';

type Waiting = ReturnType<typeof useWaiting>;

/** What is done with an entry from the first key to the last. */
export interface EntryDeeds {
  /** Opens a cell for typing; with the first typed text, or with what stands there. */
  readonly begin: (address: CellAddress, typed: string | null) => void;
  /** Gives the draft to the workbook. One that is refused stays open the first time Enter is pressed; whoever goes on all
   *  the same leaves it waiting in its cell. False where it waits. */
  readonly offer: (typed: string, onward: Onward, takesFocus: boolean) => boolean;
  readonly giveUp: () => void;
}

export interface EntryDeedsParts {
  readonly session: Session;
  readonly state: SessionState;
  readonly sheet: Sheet;
  readonly selection: Selection;
  readonly draft: Draft | null;
  /** The draft is of a cell of another sheet. */
  readonly isElsewhere: boolean;
  readonly waiting: Waiting['waiting'];
  readonly entries: Waiting['entries'];
  readonly caret: RefObject<number | null>;
  readonly onDraft: (draft: Draft | null) => void;
  readonly onSelect: (selected: CellAddress, head?: CellAddress, round?: CellRange) => void;
  readonly onComplain: (sentence: string) => void;
  readonly onReveal: (address: CellAddress) => void;
  readonly wantFocus: () => void;
}

export function entryDeeds(parts: EntryDeedsParts): EntryDeeds {
  const { session, state, sheet, selection, draft, isElsewhere, waiting, entries, caret } = parts;
  const { onDraft, onSelect, onComplain, onReveal, wantFocus } = parts;

  function begin(address: CellAddress, typed: string | null): void {
    if (state.isReadOnly) {
      // Clearing nothing changes nothing; the session says why it would not.
      const refused = session.run({ type: 'clear', sheet: sheet.id, addresses: [] });
      onComplain(refused.ok ? '' : refused.fault);
      return;
    }
    if (draft) offer(draft.typed, 'stay', true);
    onComplain('');
    onReveal(address);
    caret.current = null;
    onDraft(beginDraft(sheet, address, typed, waitingAt(waiting, sheet.id, address)));
  }

  function offer(typed: string, onward: Onward, takesFocus: boolean): boolean {
    if (!draft) return true;
    const { sheetId, address } = draft;
    const outcome =
      typed === draft.began ? null : session.run({ type: 'enter', sheet: sheetId, address, typed });
    if (outcome && !outcome.ok) {
      if (onward !== 'stay' && draft.refusal === null) {
        onDraft({ ...draft, typed, refusal: outcome.fault });
        return false;
      }
      entries.keep({ workbook: state.workbook.id, sheetId, address, typed, refusal: outcome.fault });
      onComplain(
        `${writeAddress(address)} waits: “${typed}” was not taken. ${outcome.fault} Press Enter on the cell to put it right, or Delete to give it up.`,
      );
    } else {
      entries.forget(state.workbook.id, sheetId, address);
    }
    onDraft(null);
    if (takesFocus) wantFocus();
    // From another sheet the page leads back to the cell itself.
    if (onward !== 'stay' && !isElsewhere) {
      const block = roundBlock(selection);
      if (block && isInRange(address, block))
        onSelect(nextRound(block, address, onward), selection.head, block);
      else onSelect(pastHidden(sheet, address, within(nextTo(address, onward), { last: lastPlace })));
    }
    return outcome?.ok ?? true;
  }

  function giveUp(): void {
    if (draft) entries.forget(state.workbook.id, draft.sheetId, draft.address);
    wantFocus();
    onDraft(null);
  }

  return { begin, offer, giveUp };
}
