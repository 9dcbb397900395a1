import type { MouseEvent, PointerEvent as PressEvent, RefObject } from 'react';
import { type CellAddress, type CellRange, isInRange, sameAddress } from '../../base/address.ts';
import type { Sheet } from '../../workbook/document.ts';
import type { WritingDesk } from '../formula/writing-desk.ts';
import type { MenuPlace } from '../menu/deed-menu.tsx';
import { addressOf, isInEditor, isWithin, lineOf } from './cell-place.ts';
import type { ColumnDeeds } from './column-deeds.ts';
import { columnEdgeAt } from './column-edge.ts';
import type { Draft } from './draft.ts';
import type { EntryDeeds } from './entry-deeds.ts';
import { followPointer } from './follow-pointer.ts';
import { keepFocus, type PointerDeeds } from './pointer-deeds.ts';
import { hasLine, rangeOf, type Selection, wholeLine } from './selection.ts';
import type { SheetTable } from './sheet-table.ts';

/** What the parts of the sheet do when they are pressed, by mouse, pen or finger. */
export interface PressHandlers {
  readonly onMouseDown: (event: MouseEvent<HTMLElement>) => void;
  readonly onPointerDown: (event: PressEvent<HTMLElement>) => void;
  readonly onContextMenu: (event: MouseEvent<HTMLElement>) => void;
  readonly onClick: (event: MouseEvent<HTMLElement>) => void;
  readonly onDoubleClick: (event: MouseEvent<HTMLElement>) => void;
}

export interface PressHandlersParts {
  readonly sheet: Sheet;
  readonly selection: Selection;
  readonly range: CellRange;
  readonly draft: Draft | null;
  readonly table: RefObject<SheetTable | null>;
  readonly desk: WritingDesk;
  readonly pointer: PointerDeeds;
  readonly entry: EntryDeeds;
  readonly columns: ColumnDeeds;
  /** Set when the cell that is pressed was selected before. */
  readonly wasHere: RefObject<boolean>;
  readonly isSteppingOut: RefObject<boolean>;
  readonly onComplain: (sentence: string) => void;
  readonly onMenu: (place: MenuPlace, range: CellRange) => void;
}

export function pressHandlers(parts: PressHandlersParts): PressHandlers {
  const { sheet, selection, range, draft, table, desk, pointer, wasHere, isSteppingOut } = parts;
  const { onComplain, onMenu } = parts;
  const { begin, offer } = parts.entry;
  const { fitColumns, pullColumn } = parts.columns;
  const selected = selection.here;

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
    if (isTaken) onComplain('');
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
      onComplain('');
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
      if (!draft) onMenu({ left: event.clientX, top: event.clientY }, isSelected ? range : pressed);
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

  return { onMouseDown, onPointerDown, onContextMenu, onClick, onDoubleClick };
}
