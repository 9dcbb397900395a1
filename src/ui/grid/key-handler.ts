import type { KeyboardEvent, RefObject } from 'react';
import type { CellAddress, CellRange } from '../../base/address.ts';
import { extentOf } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';
import { addressOf, isInEditor } from './cell-place.ts';
import { type DressPart, type KeyWish, plainKey, reachOf, readKey } from './keyboard.ts';
import { pastHidden } from './past-hidden.ts';
import type { RangeDeeds } from './range-deeds.ts';
import { lastPlace, type Selection, wholeLines } from './selection.ts';
import type { SheetTable } from './sheet-table.ts';
import { lineAt } from './table-line-deeds.ts';

export interface KeyHandlerParts {
  readonly sheet: Sheet;
  readonly selection: Selection;
  readonly range: CellRange;
  readonly table: RefObject<SheetTable | null>;
  readonly deeds: RangeDeeds;
  readonly isSteppingOut: RefObject<boolean>;
  /** The next paste takes values only. */
  readonly isPastingValues: RefObject<boolean>;
  readonly onSelect: (selected: CellAddress, head?: CellAddress, round?: CellRange) => void;
  readonly onBegin: (address: CellAddress, typed: string | null) => void;
  readonly onClear: () => void;
  /** What was copied or cut is let go. */
  readonly onLetGo: () => void;
  readonly onComplain: (sentence: string) => void;
  readonly onDress: (part: DressPart) => void;
  readonly onMenuBelow: (address: CellAddress) => void;
  readonly wantFocus: () => void;
  readonly wantInView: (address: CellAddress) => void;
}

/** What the sheet does when a key is pressed on one of its cells. */
export function keyHandler(parts: KeyHandlerParts): (event: KeyboardEvent<HTMLElement>) => void {
  const { sheet, selection, range, table, deeds, isSteppingOut, isPastingValues } = parts;
  const { onSelect, onBegin, onClear, onLetGo, onComplain, onDress, onMenuBelow, wantFocus, wantInView } =
    parts;
  const { here: selected, head } = selection;

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
    onSelect(wanted.here, wanted.head);
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
    if (wish.type === 'step_out') onLetGo();
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
    onComplain('');
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
        onBegin(selected, wish.typed);
        return true;
      case 'clear':
        onClear();
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
        onMenuBelow(selected);
        return true;
      default:
        return false;
    }
  }

  return onKeyDown;
}
