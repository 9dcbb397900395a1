import { type RefObject, useEffect, useId, useMemo, useRef, useState } from 'react';
import { type CellAddress, type CellRange, isInRange, sameAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { sheetWithId } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';
import { lockState } from '../../workbook/locked.ts';
import { taggedCells } from '../formula/tagged-cells.ts';
import { useWriting, useWritingDesk } from '../formula/writing-desk.ts';
import { DeedMenu, type MenuPlace } from '../menu/deed-menu.tsx';
import { useWaiting } from '../waiting/waiting-entries.ts';
import type { Carried } from './carried.ts';
import type { CellDeed, CellDeedType } from './cell-deeds.ts';
import { CellEditor } from './cell-editor.tsx';
import { addressOf, cellElement } from './cell-place.ts';
import { columnDeeds } from './column-deeds.ts';
import { DeedSaid, type Said } from './deed-said.tsx';
import type { Draft } from './draft.ts';
import type { Drop } from './drop.ts';
import { stripPlace } from './editor-place.ts';
import { entryDeeds } from './entry-deeds.ts';
import { keyHandler } from './key-handler.ts';
import type { DressPart } from './keyboard.ts';
import { type MenuDeed, menuGroups } from './menu-groups.ts';
import { pastHidden } from './past-hidden.ts';
import { pointerDeeds } from './pointer-deeds.ts';
import { pressHandlers } from './press-handlers.ts';
import { rangeDeeds } from './range-deeds.ts';
import { rangeOf, type Selection, selectionWords } from './selection.ts';
import type { TablePlace } from './sheet-table.ts';
import { useClipboard } from './use-clipboard.ts';
import { useEditorPlace } from './use-editor-place.ts';
import { useSheetTable } from './use-sheet-table.ts';

/** What the grid is told by the page. */
export interface SheetGridProps {
  readonly session: Session;
  readonly state: SessionState;
  readonly sheetId: string;
  /** Where the person is. */
  readonly selected: CellAddress;
  /** How far the selection reaches from there; to that cell itself when one cell is selected. */
  readonly head: CellAddress;
  /** The block that is selected while the person goes round in it. */
  readonly round: CellRange | undefined;
  readonly onSelect: (selected: CellAddress, head?: CellAddress, round?: CellRange) => void;
  /** Cells that the selected one comes from. */
  readonly marked: readonly CellRange[];
  /** A page stands in its place; the grid waits, out of sight and out of reach, with all that was begun in it. */
  readonly isAway: boolean;
  /** What the selected cells are, or their note, is to be said in Working. */
  readonly onDress: (part: DressPart) => void;
}

/** One sheet with its selection, its keys and its editor. */
export function OneSheet({
  session,
  state,
  sheet,
  selected,
  head,
  round,
  onSelect,
  marked,
  draft,
  onDraft,
  carried,
  onCarry,
  caret,
  isFirst,
  isAway,
  onDress,
  places,
}: SheetGridProps & {
  readonly sheet: Sheet;
  readonly draft: Draft | null;
  readonly onDraft: (draft: Draft | null) => void;
  readonly carried: Carried | null;
  readonly onCarry: (carried: Carried | null) => void;
  readonly caret: RefObject<number | null>;
  /** Set until a first sheet stands: the page opens without taking the focus from its top. */
  readonly isFirst: RefObject<boolean>;
  /** How far each sheet was scrolled when it was left. */
  readonly places: Map<string, TablePlace>;
}) {
  const id = useId();
  const frame = useRef<HTMLDivElement>(null);
  const host = useRef<HTMLDivElement>(null);
  const isSteppingOut = useRef(false);
  const wasHere = useRef(false);
  const [complaint, setComplaint] = useState('');
  const [said, setSaid] = useState<Said | null>(null);
  const isPastingValues = useRef(false);
  const [pull, setPull] = useState<CellRange | null>(null);
  const [dropping, setDropping] = useState<Drop | null>(null);
  /** Read out after a copy or a cut, until something else is selected. */
  const [taken, setTaken] = useState<{ readonly range: CellRange; readonly says: string } | null>(null);
  const [menu, setMenu] = useState<OpenMenu | null>(null);
  const selection: Selection = { here: selected, head, round };
  const range = useSameRange(rangeOf(selection));
  const isCutHere = carried?.kind === 'cut' && carried.sheetId === sheet.id;
  const outlined = pull ?? (isCutHere ? carried.range : null);
  const desk = useWritingDesk();
  const writing = useWriting();
  const allTagged = useMemo(
    () => (writing ? taggedCells(state.workbook, writing.sheetId, writing.text) : []),
    [state.workbook, writing],
  );
  const tagged = useMemo(() => allTagged.filter((one) => one.sheetId === sheet.id), [allTagged, sheet.id]);
  const { waiting: allWaiting, entries } = useWaiting(state.workbook.id);
  const waiting = useMemo(() => allWaiting.filter((one) => one.sheetId === sheet.id), [allWaiting, sheet.id]);
  const written = draft ? sheetWithId(state.workbook, draft.sheetId) : undefined;
  const isElsewhere = written !== undefined && written.id !== sheet.id;
  const locks = lockState(state.workbook);
  const sight = useMemo(
    () => ({
      sheet,
      values: state.values,
      locks,
      selected,
      marked,
      range,
      outlined,
      dropping,
      tagged,
      waiting,
    }),
    [sheet, state.values, locks, selected, marked, range, outlined, dropping, tagged, waiting],
  );
  const { table, wantFocus, wantInView } = useSheetTable(host, sight, {
    helpId: id,
    isEditing: draft !== null || menu !== null,
    isFirst,
    isAway,
    places,
  });
  const deeds = rangeDeeds({
    session,
    state,
    sheet,
    range,
    selection,
    carried,
    onCarry,
    onSelect: select,
    onComplain: setComplaint,
    onSay: setSaid,
  });
  const latestDeeds = useRef(deeds);
  latestDeeds.current = deeds;
  const columns = columnDeeds({
    state,
    sheet,
    host,
    table,
    changeLines: deeds.changeLines,
  });
  const pointer = pointerDeeds({
    sheet,
    selection,
    table,
    onSelect: select,
    wantFocus,
    wantInView,
    onPull: setPull,
    onFill: deeds.fill,
    onDrop: setDropping,
    onMoveLines: deeds.moveLines,
  });
  const entry = entryDeeds({
    session,
    state,
    sheet,
    selection,
    draft,
    isElsewhere,
    waiting,
    entries,
    caret,
    onDraft,
    onSelect,
    onComplain: setComplaint,
    onReveal: (address) => table.current?.reveal(address),
    wantFocus,
  });
  const presses = pressHandlers({
    sheet,
    selection,
    range,
    draft,
    table,
    desk,
    pointer,
    entry,
    columns,
    wasHere,
    isSteppingOut,
    onComplain: setComplaint,
    onMenu: openMenu,
  });
  const onKeyDown = keyHandler({
    sheet,
    selection,
    range,
    table,
    deeds,
    isSteppingOut,
    isPastingValues,
    onSelect,
    onBegin: entry.begin,
    onClear: clear,
    onLetGo: () => onCarry(null),
    onComplain: setComplaint,
    onDress,
    onMenuBelow: openMenuBelow,
    wantFocus,
    wantInView,
  });
  useClipboard({
    isOnCell: () =>
      isInside(host.current, document.activeElement) && addressOf(document.activeElement) !== null,
    onTake: take,
    onPaste: (text) => deeds.paste(text, isPastingValues.current),
  });
  const place = useEditorPlace(host, frame, draft && !isElsewhere ? draft.address : null);

  useEffect(
    () => desk.show({ sheet, address: selected, reveal: (cell) => table.current?.reveal(cell) }),
    [desk, sheet, selected, table],
  );

  function select({ here, head: corner }: Selection): void {
    onSelect(here, corner);
  }

  /** What is selected is emptied, and what waits in it is given up. */
  function clear(): void {
    deeds.clear();
    if (state.isReadOnly) return;
    for (const { address } of waiting)
      if (isInRange(address, range)) entries.forget(state.workbook.id, sheet.id, address);
  }

  function openMenuBelow(address: CellAddress): void {
    table.current?.reveal(address);
    const cell = host.current && cellElement(host.current, address)?.getBoundingClientRect();
    if (cell) openMenu({ left: cell.left, top: cell.bottom }, range);
  }

  /** The place is in pixels of the window. */
  function openMenu({ left, top }: MenuPlace, lines: CellRange): void {
    const outer = frame.current?.getBoundingClientRect();
    const { label, groups } = menuGroups(state, sheet, lines);
    if (groups.length === 0) return;
    setMenu({ label, place: { left: left - (outer?.left ?? 0), top: top - (outer?.top ?? 0) }, groups });
  }

  function changeLines(command: Exclude<MenuDeed, CellDeed>['command']): void {
    if (command.type === 'fit_columns') {
      columns.fitColumns(command.at, command.count);
      return;
    }
    if (command.type === 'move_lines') {
      deeds.moveLines(command);
      return;
    }
    if (!deeds.changeLines(command) || command.type !== 'hide_lines') return;
    // Nobody stays where nothing can be seen.
    const after = sheetWithId(session.getState().workbook, sheet.id);
    if (after) onSelect(pastHidden(after, selected, selected));
  }

  /** The same as the keys do; the clipboard is asked for by itself, since no key was pressed. */
  function carryOutOnCells(type: CellDeedType): void {
    switch (type) {
      case 'copy':
      case 'cut': {
        const text = take(type);
        if (text !== null) navigator.clipboard.writeText(text).catch(() => {}); // inside the workbook it is carried all the same
        break;
      }
      case 'paste':
      case 'paste_values':
        pasteFromClipboard(type === 'paste_values');
        break;
      case 'fill_down':
      case 'fill_right':
        deeds.fillByKey(type === 'fill_down' ? 'down' : 'right');
        break;
      case 'clear':
        clear();
        break;
      case 'dress':
      case 'note':
        onDress(type === 'note' ? 'note' : 'whole');
        break;
    }
  }

  async function pasteFromClipboard(isValuesOnly: boolean): Promise<void> {
    const text = await navigator.clipboard.readText().catch(() => carried?.text ?? null);
    if (text === null) {
      setComplaint('This browser gives what was copied to the key only. Press Ctrl+V on the cell.');
    } else if (text !== '') {
      latestDeeds.current.paste(text, isValuesOnly);
    }
  }

  function take(kind: 'copy' | 'cut'): string | null {
    const text = deeds.take(kind);
    setTaken(
      text === null ? null : { range, says: kind === 'cut' ? 'cut, ready to be put in elsewhere' : 'copied' },
    );
    return text;
  }

  function closeMenu(): void {
    wantFocus();
    setMenu(null);
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the grid inside has the role; its keys and clicks arrive here
    // biome-ignore lint/a11y/useKeyWithClickEvents: Enter does what a second touch does
    <div
      ref={frame}
      className="sheet-grid"
      data-away={isAway ? '' : undefined}
      inert={isAway}
      onKeyDownCapture={onKeyDown}
      onPointerDownCapture={presses.onPointerDown}
      onMouseDownCapture={presses.onMouseDown}
      onContextMenu={presses.onContextMenu}
      onClick={presses.onClick}
      onDoubleClick={presses.onDoubleClick}
    >
      <p id={id} className="visually-hidden">
        Arrow keys move, with Shift they select. Enter, or typing, changes a cell. Shift and F10 opens what
        can be done to rows and columns. Escape and then Tab goes on past the sheet.
      </p>
      <p className="visually-hidden" role="status">
        {taken?.range === range ? taken.says : selectionWords(range)}
      </p>
      <div ref={host} className="sheet-grid-table" />
      {draft && written && (place || isElsewhere) ? (
        <CellEditor
          key={`${draft.address.row},${draft.address.column}`}
          session={session}
          sheet={written}
          draft={draft}
          place={place ?? stripPlace(frame.current)}
          caret={caret}
          isElsewhere={isElsewhere}
          tagged={allTagged}
          onType={(typed) => onDraft({ ...draft, typed, refusal: null })}
          onOffer={entry.offer}
          onGiveUp={entry.giveUp}
        />
      ) : null}
      {menu ? (
        <DeedMenu
          label={menu.label}
          place={menu.place}
          groups={menu.groups}
          onChoose={(deed) => {
            closeMenu();
            if ('cells' in deed) carryOutOnCells(deed.cells);
            else changeLines(deed.command);
          }}
          onClose={closeMenu}
        />
      ) : null}
      <DeedSaid
        said={said}
        session={session}
        onClose={() => {
          wantFocus();
          setSaid(null);
        }}
      />
      <p className="sheet-grid-complaint" role="alert">
        {complaint}
      </p>
    </div>
  );
}

interface OpenMenu {
  readonly place: MenuPlace;
  readonly label: string;
  readonly groups: readonly (readonly MenuDeed[])[];
}

/** The same object while the range is the same, so that the sheet is not shown anew for nothing. */
function useSameRange(range: CellRange): CellRange {
  const kept = useRef(range);
  if (!sameAddress(kept.current.from, range.from) || !sameAddress(kept.current.to, range.to))
    kept.current = range;
  return kept.current;
}

function isInside(host: HTMLElement | null, element: Element | null): boolean {
  return host !== null && element !== null && host.contains(element);
}
