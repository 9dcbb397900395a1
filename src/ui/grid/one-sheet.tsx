import {
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent as PressEvent,
  type RefObject,
  useEffect,
  useId,
  useMemo,
  useRef,
  useState,
} from 'react';
import {
  type CellAddress,
  type CellRange,
  isInRange,
  sameAddress,
  writeAddress,
} from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { extentOf, sheetWithId } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';
import { lockState } from '../../workbook/locked.ts';
import { taggedCells } from '../formula/tagged-cells.ts';
import { useWriting, useWritingDesk } from '../formula/writing-desk.ts';
import { DeedMenu, type MenuPlace } from '../menu/deed-menu.tsx';
import { useWaiting, waitingAt } from '../waiting/waiting-entries.ts';
import { type AcrossDeed, acrossDeeds } from './across-deeds.ts';
import type { Carried } from './carried.ts';
import { type CellDeed, type CellDeedType, cellDeedGroups } from './cell-deeds.ts';
import { CellEditor, type Onward } from './cell-editor.tsx';
import { addressOf, cellElement, isWithin, lineOf } from './cell-place.ts';
import { columnEdgeAt, pullEdge } from './column-edge.ts';
import { charactersIn } from './column-pixels.ts';
import { DeedSaid, type Said } from './deed-said.tsx';
import { beginDraft, type Draft } from './draft.ts';
import type { Drop } from './drop.ts';
import { stripPlace } from './editor-place.ts';
import { nextTo } from './filled-edge.ts';
import { fittingWidths } from './fit-columns.ts';
import { followPointer } from './follow-pointer.ts';
import { type DressPart, type KeyWish, plainKey, reachOf, readKey, within } from './keyboard.ts';
import { type LineDeed, lineDeedGroups } from './line-deeds.ts';
import { pastHidden } from './past-hidden.ts';
import { keepFocus, pointerDeeds } from './pointer-deeds.ts';
import { rangeDeeds } from './range-deeds.ts';
import { nextRound } from './round.ts';
import {
  hasLine,
  isWhole,
  lastPlace,
  rangeOf,
  roundBlock,
  type Selection,
  selectionWords,
  wholeLine,
  wholeLines,
} from './selection.ts';
import type { TablePlace } from './sheet-table.ts';
import { type SortDeed, sortDeeds } from './sort-deeds.ts';
import { lineAt, type TableLineDeed, tableLineDeeds } from './table-line-deeds.ts';
import { createTextMeasure } from './text-lines.ts';
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
  const sight = {
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
  };
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
  useClipboard({
    isOnCell: () =>
      isInside(host.current, document.activeElement) && addressOf(document.activeElement) !== null,
    onTake: take,
    onPaste: (text) => deeds.paste(text, isPastingValues.current),
  });
  const place = useEditorPlace(host, frame, draft && !isElsewhere ? draft.address : null);

  useEffect(() => desk.show({ sheet, address: selected }), [desk, sheet, selected]);

  function select({ here, head: corner }: Selection): void {
    onSelect(here, corner);
  }

  function begin(address: CellAddress, typed: string | null): void {
    if (state.isReadOnly) {
      // Clearing nothing changes nothing; the session says why it would not.
      const refused = session.run({ type: 'clear', sheet: sheet.id, addresses: [] });
      setComplaint(refused.ok ? '' : refused.fault);
      return;
    }
    if (draft) offer(draft.typed, 'stay', true);
    setComplaint('');
    table.current?.reveal(address);
    caret.current = null;
    onDraft(beginDraft(sheet, address, typed, waitingAt(waiting, sheet.id, address)));
  }

  /** Gives the draft to the workbook. One that is refused stays open the first time Enter is pressed; whoever goes on all
   *  the same leaves it waiting in its cell. False where it waits. */
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
      setComplaint(
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
      if (block && isInRange(address, block)) onSelect(nextRound(block, address, onward), head, block);
      else onSelect(pastHidden(sheet, address, within(nextTo(address, onward), { last: lastPlace })));
    }
    return outcome?.ok ?? true;
  }

  function giveUp(): void {
    if (draft) entries.forget(state.workbook.id, draft.sheetId, draft.address);
    wantFocus();
    onDraft(null);
  }

  /** What is selected is emptied, and what waits in it is given up. */
  function clear(): void {
    deeds.clear();
    if (state.isReadOnly) return;
    for (const { address } of waiting)
      if (isInRange(address, range)) entries.forget(state.workbook.id, sheet.id, address);
  }

  function reachTo(to: CellAddress): void {
    // The far end of whole rows and columns is no place to scroll to.
    wantInView({
      row: to.row === lastPlace.row ? selected.row : to.row,
      column: to.column === lastPlace.column ? selected.column : to.column,
    });
    onSelect(selected, to);
  }

  function choose(wanted: Selection): void {
    wantFocus();
    select(wanted);
  }

  function onKeyDown(event: KeyboardEvent<HTMLElement>): void {
    if (addressOf(event.target) === null || isInEditor(event.target)) return;
    const key = plainKey(event);
    isPastingValues.current = (key.ctrlKey || key.metaKey) && key.shiftKey && key.key.toLowerCase() === 'v';
    const wish = readKey(key, selection, reachOf(sheet, table.current?.rowsPerPage() ?? 10));
    if (wish === null) return;
    const isLeaving = wish.type === 'leave' || (event.key === 'Tab' && isSteppingOut.current);
    isSteppingOut.current = wish.type === 'step_out';
    // The table would hold the Tab key back; untouched, it takes the focus on past the sheet.
    if (isLeaving) {
      event.stopPropagation();
      return;
    }
    if (wish.type === 'step_out') onCarry(null);
    else if (carryOut(wish)) event.preventDefault();
  }

  /** False where the key means nothing here and is left to the page. */
  function carryOut(wish: KeyWish): boolean {
    if (wish.type === 'insert_lines' || wish.type === 'remove_lines')
      return deeds.changeWholeLines(wish.type);
    if (wish.type === 'move_lines') {
      const isMoved = deeds.moveWholeLines(wish.direction);
      if (isMoved) wantFocus();
      return isMoved;
    }
    setComplaint('');
    switch (wish.type) {
      case 'go':
        onSelect(pastHidden(sheet, selected, wish.to));
        return true;
      case 'go_round':
        onSelect(wish.to, head, range);
        return true;
      case 'reach':
        reachTo(
          wish.to.row === lastPlace.row || wish.to.column === lastPlace.column
            ? wish.to
            : pastHidden(sheet, head, wish.to),
        );
        return true;
      case 'take_lines':
        choose(wholeLines(selection, wish.axis));
        return true;
      case 'take_all':
        choose({ here: { row: 0, column: 0 }, head: extentOf(sheet).to });
        return true;
      case 'edit':
        begin(selected, wish.typed);
        return true;
      case 'clear':
        clear();
        return true;
      case 'fill':
        deeds.fillByKey(wish.direction);
        return true;
      case 'put_in_line': {
        const address = lineAt(sheet, range) ?? selected;
        deeds.changeLines({ type: 'put_in_line', sheet: sheet.id, address });
        return true;
      }
      case 'resize':
        deeds.resize(wish.by);
        return true;
      case 'dress':
        onDress(wish.part);
        return true;
      case 'menu':
        openMenuBelow(selected);
        return true;
      default:
        return false;
    }
  }

  function openMenuBelow(address: CellAddress): void {
    table.current?.reveal(address);
    const cell = host.current && cellElement(host.current, address)?.getBoundingClientRect();
    if (cell) openMenu({ left: cell.left, top: cell.bottom }, range);
  }

  /** The place is in pixels of the window. */
  function openMenu({ left, top }: MenuPlace, lines: CellRange): void {
    const outer = frame.current?.getBoundingClientRect();
    const sorting = sortDeeds(sheet, state.values, lines);
    // After what is done to rows, before what is done to columns.
    const isLines = isWhole(lines, 'row') || isWhole(lines, 'column');
    const groups: (readonly MenuDeed[])[] = [...lineDeedGroups(sheet, lines)];
    if (sorting.length > 0) groups.splice(-2, 0, sorting);
    const tableLines = tableLineDeeds(state.workbook, sheet, lines);
    if (tableLines.length > 0) groups.splice(1, 0, tableLines);
    const across = acrossDeeds(sheet, lines);
    if (across.length > 0) groups.unshift(across);
    if (!isLines) groups.unshift(...cellDeedGroups(lines));
    if (groups.length === 0) return;
    const label = isLines ? 'Rows and columns' : 'Cells, rows and columns';
    setMenu({ label, place: { left: left - (outer?.left ?? 0), top: top - (outer?.top ?? 0) }, groups });
  }

  function changeLines(command: Exclude<MenuDeed, CellDeed>['command']): void {
    if (command.type === 'fit_columns') {
      fitColumns(command.at, command.count);
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

  function fitColumns(at: number, count: number): void {
    if (!host.current) return;
    const widths = fittingWidths(sheet, state.values, { at, count }, createTextMeasure(host.current));
    deeds.changeLines({ type: 'resize_column', sheet: sheet.id, at, widths });
  }

  function pullColumn(column: number, pixels: number, x: number): void {
    pullEdge({
      x,
      pixels,
      onWidth: (width) => table.current?.tryWidth(column, width),
      onEnd: (width) => {
        const isMoved = width !== null && Math.abs(width - pixels) >= 2;
        const widths = isMoved ? [charactersIn(width)] : [];
        const isTaken = deeds.changeLines({ type: 'resize_column', sheet: sheet.id, at: column, widths });
        if (!isTaken || !isMoved) table.current?.tryWidth(column, pixels);
      },
    });
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

  function onMouseDown(event: MouseEvent<HTMLElement>): void {
    const { target } = event;
    const address = addressOf(target);
    const line = lineOf(target);
    if (!(address || line) || isInEditor(target)) return;
    if (columnEdgeAt(target, event.clientX, false) && !draft) {
      keepFocus(event);
      return;
    }
    isSteppingOut.current = false;
    if (address && event.button === 0 && desk.current()?.pointing.canPoint()) {
      keepFocus(event);
      point(address);
      return;
    }
    const isTaken = !draft || offer(draft.typed, 'stay', true);
    if (isWithin(target, '.fill-corner, .reach-corner')) {
      keepFocus(event);
      return;
    }
    if (isTaken) setComplaint('');
    if (line) pointer.pressLine(line, event);
    if (!address) return;
    wasHere.current = sameAddress(address, selected) && draft === null;
    pointer.pressCell(address, event);
  }

  /** The cell goes into the formula that is being written; a pull makes a block of it. */
  function point(address: CellAddress): void {
    const pointing = desk.current()?.pointing;
    pointing?.pointTo(sheet, address, address);
    const cellArea = table.current?.cellArea;
    if (!cellArea) return;
    followPointer({
      start: address,
      cellArea,
      onPlace: (to) => {
        table.current?.reveal(to);
        pointing?.pointTo(sheet, address, to);
      },
      onEnd: () => {},
    });
  }

  function onPointerDown(event: PressEvent<HTMLElement>): void {
    if (event.button !== 0 || draft) return;
    const edge = columnEdgeAt(event.target, event.clientX, event.pointerType === 'touch');
    if (edge) {
      event.preventDefault();
      pullColumn(edge.column, edge.pixels, event.clientX);
      return;
    }
    const line = event.shiftKey ? null : lineOf(event.target);
    if (line && pointer.canPullLine(line)) {
      event.preventDefault();
      setComplaint('');
      pointer.pullLine(line);
      return;
    }
    if (isWithin(event.target, '.reach-corner')) {
      event.preventDefault();
      pointer.pullReach();
      return;
    }
    if (!isWithin(event.target, '.fill-corner')) return;
    event.preventDefault();
    pointer.pullCorner();
  }

  function onContextMenu(event: MouseEvent<HTMLElement>): void {
    const { target } = event;
    const address = addressOf(target);
    const line = lineOf(target);
    if (isWithin(target, '.deed-menu')) event.preventDefault();
    else if ((address || line) && !isInEditor(target)) {
      event.preventDefault();
      const pressed = line
        ? rangeOf(wholeLine(line))
        : rangeOf({ here: address ?? selected, head: address ?? selected });
      const isSelected = line ? hasLine(range, line) : isInRange(pressed.from, range);
      if (!draft) openMenu({ left: event.clientX, top: event.clientY }, isSelected ? range : pressed);
    }
  }

  function onClick(event: MouseEvent<HTMLElement>): void {
    const address = addressOf(event.target);
    const isTouch = event.nativeEvent instanceof PointerEvent && event.nativeEvent.pointerType === 'touch';
    // Without keys there is nothing to start typing with: a second touch opens the cell.
    const isPointing = desk.current()?.pointing.canPoint() ?? false;
    if (address && isTouch && wasHere.current && !isPointing && !isInEditor(event.target))
      begin(address, null);
  }

  function onDoubleClick(event: MouseEvent<HTMLElement>): void {
    const edge = columnEdgeAt(event.target, event.clientX, false);
    if (edge) {
      fitColumns(edge.column, 1);
      return;
    }
    const address = addressOf(event.target);
    if (address && !isInEditor(event.target) && !desk.current()?.pointing.canPoint()) begin(address, null);
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
      onPointerDownCapture={onPointerDown}
      onMouseDownCapture={onMouseDown}
      onContextMenu={onContextMenu}
      onClick={onClick}
      onDoubleClick={onDoubleClick}
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
          onOffer={(typed, onward, takesFocus) => offer(typed, onward, takesFocus)}
          onGiveUp={giveUp}
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

type MenuDeed = LineDeed | TableLineDeed | SortDeed | AcrossDeed | CellDeed;

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

function isInEditor(target: EventTarget): boolean {
  return isWithin(target, '.cell-editor');
}
