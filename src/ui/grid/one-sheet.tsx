import { type KeyboardEvent, type MouseEvent, type RefObject, useId, useRef, useState } from 'react';
import { type CellAddress, type CellRange, sameAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { extentOf } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';
import { CellEditor, type Onward } from './cell-editor.tsx';
import { addressOf } from './cell-place.ts';
import { beginDraft, type Draft } from './draft.ts';
import { type Key, type Reach, readKey, within } from './keyboard.ts';
import type { SheetTable } from './sheet-table.ts';
import { useEditorPlace } from './use-editor-place.ts';
import { useSheetTable } from './use-sheet-table.ts';

/** What the grid is told by the page. */
export interface SheetGridProps {
  readonly session: Session;
  readonly state: SessionState;
  readonly sheetId: string;
  readonly selected: CellAddress;
  readonly onSelect: (address: CellAddress) => void;
  /** Cells that the selected one comes from. */
  readonly marked: readonly CellRange[];
}

/** As far as a workbook file goes. */
const lastPlace: CellAddress = { row: 9_999, column: 701 };

/** One sheet with its selection, its keys and its editor. */
export function OneSheet({
  session,
  state,
  sheet,
  selected,
  onSelect,
  marked,
  draft,
  onDraft,
  isFirst,
}: SheetGridProps & {
  readonly sheet: Sheet;
  readonly draft: Draft | null;
  readonly onDraft: (draft: Draft | null) => void;
  /** Set until a first sheet stands: the page opens without taking the focus from its top. */
  readonly isFirst: RefObject<boolean>;
}) {
  const id = useId();
  const frame = useRef<HTMLDivElement>(null);
  const host = useRef<HTMLDivElement>(null);
  const isSteppingOut = useRef(false);
  const wasHere = useRef(false);
  const [complaint, setComplaint] = useState('');
  const sight = { sheet, values: state.values, selected, marked };
  const { table, wantFocus } = useSheetTable(host, sight, { helpId: id, isEditing: draft !== null, isFirst });
  const place = useEditorPlace(host, frame, draft?.address ?? null);

  function begin(address: CellAddress, typed: string | null): void {
    if (state.isReadOnly) {
      // Clearing nothing changes nothing; the session says why it would not.
      const refused = session.run({ type: 'clear', sheet: sheet.id, addresses: [] });
      setComplaint(refused.ok ? '' : refused.fault);
      return;
    }
    if (draft && !offer(draft.typed, 'stay', true)) {
      backToField();
      return;
    }
    setComplaint('');
    table.current?.reveal(address);
    onDraft(beginDraft(sheet, address, typed));
  }

  /** Gives the draft to the workbook; false where it is refused, and then it stays as it is. */
  function offer(typed: string, onward: Onward, takesFocus: boolean): boolean {
    if (!draft) return true;
    if (typed !== draft.began) {
      const outcome = session.run({ type: 'enter', sheet: sheet.id, address: draft.address, typed });
      if (!outcome.ok) {
        onDraft({ ...draft, typed, refusal: outcome.fault });
        return false;
      }
    }
    onDraft(null);
    if (takesFocus) wantFocus();
    if (onward !== 'stay') onSelect(nextTo(draft.address, onward));
    return true;
  }

  function backToField(): void {
    frame.current?.querySelector<HTMLElement>('.cell-editor-field')?.focus();
  }

  function giveUp(): void {
    wantFocus();
    onDraft(null);
  }

  function onKeyDown(event: KeyboardEvent<HTMLElement>): void {
    if (addressOf(event.target) === null) return;
    const wish = readKey(plainKey(event), selected, reachOf(sheet, selected, table.current));
    if (wish === null) return;
    const isLeaving = wish.type === 'leave' || (event.key === 'Tab' && isSteppingOut.current);
    isSteppingOut.current = wish.type === 'step_out';
    // The table would hold the Tab key back; untouched, it takes the focus on past the sheet.
    if (isLeaving) {
      event.stopPropagation();
      return;
    }
    if (event.key === 'Escape') return;
    event.preventDefault();
    setComplaint('');
    if (wish.type === 'go') onSelect(wish.to);
    else if (wish.type === 'edit') begin(selected, wish.typed);
    else if (wish.type === 'clear') {
      const outcome = session.run({ type: 'clear', sheet: sheet.id, addresses: [selected] });
      if (!outcome.ok) setComplaint(outcome.fault);
    }
  }

  function onMouseDown(event: MouseEvent<HTMLElement>): void {
    const address = addressOf(event.target);
    if (!address || isInEditor(event.target)) return;
    isSteppingOut.current = false;
    if (draft && !offer(draft.typed, 'stay', true)) {
      // The field keeps the focus, and what was typed.
      event.preventDefault();
      event.stopPropagation();
      backToField();
      return;
    }
    setComplaint('');
    wasHere.current = sameAddress(address, selected) && draft === null;
    if (!sameAddress(address, selected)) onSelect(address);
  }

  function onClick(event: MouseEvent<HTMLElement>): void {
    const address = addressOf(event.target);
    const isTouch = event.nativeEvent instanceof PointerEvent && event.nativeEvent.pointerType === 'touch';
    // Without keys there is nothing to start typing with: a second touch opens the cell.
    if (address && isTouch && wasHere.current && !isInEditor(event.target)) begin(address, null);
  }

  function onDoubleClick(event: MouseEvent<HTMLElement>): void {
    const address = addressOf(event.target);
    if (address && !isInEditor(event.target)) begin(address, null);
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the grid inside has the role; its keys and clicks arrive here
    // biome-ignore lint/a11y/useKeyWithClickEvents: Enter does what a second touch does
    <div
      ref={frame}
      className="sheet-grid"
      onKeyDownCapture={onKeyDown}
      onMouseDownCapture={onMouseDown}
      onClick={onClick}
      onDoubleClick={onDoubleClick}
    >
      <p id={id} className="visually-hidden">
        Arrow keys move. Enter, or typing, changes a cell. Escape and then Tab goes on past the sheet.
      </p>
      <div ref={host} className="sheet-grid-table" />
      {draft && place ? (
        <CellEditor
          key={`${draft.address.row},${draft.address.column}`}
          session={session}
          sheet={sheet}
          draft={draft}
          place={place}
          onType={(typed) => onDraft({ ...draft, typed, refusal: null })}
          onOffer={(typed, onward, takesFocus) => offer(typed, onward, takesFocus)}
          onGiveUp={giveUp}
        />
      ) : null}
      <p className="sheet-grid-complaint" role="alert">
        {complaint}
      </p>
    </div>
  );
}

function isInEditor(target: EventTarget): boolean {
  return target instanceof Element && target.closest('.cell-editor') !== null;
}

/** A key that types a character on some keyboards only with AltGr arrives as Ctrl and Alt. */
function plainKey(event: KeyboardEvent): Key {
  const { key, shiftKey, ctrlKey, metaKey, altKey } = event;
  return event.getModifierState('AltGraph')
    ? { key, shiftKey, ctrlKey: false, metaKey, altKey: false }
    : { key, shiftKey, ctrlKey, metaKey, altKey };
}

function reachOf(sheet: Sheet, selected: CellAddress, table: SheetTable | null): Reach {
  const row = sheet.rows[selected.row] ?? [];
  return {
    lastUsed: extentOf(sheet).to,
    lastInRow: Math.max(
      0,
      row.findLastIndex((cell) => cell !== null),
    ),
    last: lastPlace,
    rowsPerPage: table?.rowsPerPage() ?? 10,
  };
}

function nextTo({ row, column }: CellAddress, onward: Onward): CellAddress {
  const down = onward === 'down' ? 1 : onward === 'up' ? -1 : 0;
  const right = onward === 'right' ? 1 : onward === 'left' ? -1 : 0;
  return within({ row: row + down, column: column + right }, { last: lastPlace });
}
