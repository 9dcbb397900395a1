import type { MouseEvent, RefObject } from 'react';
import { type CellAddress, type CellRange, isInRange, sameAddress } from '../../base/address.ts';
import type { MoveLinesCommand } from '../../workbook/command/move-lines.ts';
import type { Sheet } from '../../workbook/document.ts';
import type { SheetLine } from './cell-place.ts';
import { type Drop, dropAt } from './drop.ts';
import { pulledTo } from './fill-target.ts';
import { followPointer } from './follow-pointer.ts';
import { moveBeside } from './move-deeds.ts';
import { hasLine, isWhole, rangeOf, type Selection, usedPart, wholeLine, wholeLines } from './selection.ts';
import type { SheetTable } from './sheet-table.ts';

/** What pressing a place of the sheet does, and pulling on from there. */
export interface PointerDeeds {
  readonly pressCell: (address: CellAddress, event: MouseEvent) => void;
  readonly pressLine: (line: SheetLine, event: MouseEvent) => void;
  readonly pullCorner: () => void;
  /** The selection reaches as far as the finger goes. */
  readonly pullReach: () => void;
  /** Whether a row number or a column letter is one of those that can be pulled elsewhere. */
  readonly canPullLine: (line: SheetLine) => boolean;
  readonly pullLine: (line: SheetLine) => void;
}

export interface PointerDeedsParts {
  readonly sheet: Sheet;
  readonly selection: Selection;
  readonly table: RefObject<SheetTable | null>;
  readonly onSelect: (selection: Selection) => void;
  /** The next time the sheet is shown, the selected cell takes the focus, or a cell is scrolled into view. */
  readonly wantFocus: () => void;
  readonly wantInView: (address: CellAddress) => void;
  /** What would be filled if the corner were let go now; null for nothing. */
  readonly onPull: (target: CellRange | null) => void;
  readonly onFill: (from: CellRange, to: CellRange) => void;
  /** Where the pulled rows or columns would be let go now. */
  readonly onDrop: (drop: Drop | null) => void;
  readonly onMoveLines: (command: MoveLinesCommand) => void;
}

export function pointerDeeds(parts: PointerDeedsParts): PointerDeeds {
  const { sheet, selection, table, onSelect, wantFocus, wantInView, onPull, onFill, onDrop, onMoveLines } =
    parts;
  const range = rangeOf(selection);

  function follow(
    start: CellAddress,
    onPlace: (place: CellAddress) => void,
    onEnd: (isLetGo: boolean) => void = () => {},
  ): void {
    const cellArea = table.current?.cellArea;
    if (cellArea) followPointer({ start, cellArea, onPlace, onEnd });
  }

  return {
    pressCell: (address, event) => {
      // The other button asks what can be done to what is selected.
      if (event.button !== 0 && isInRange(address, range)) return;
      const here = event.shiftKey ? selection.here : address;
      if (event.shiftKey) {
        keepFocus(event);
        wantFocus();
      }
      const isSame = sameAddress(here, selection.here) && sameAddress(address, selection.head);
      if (!isSame) onSelect({ here, head: address });
      if (event.button !== 0) return;
      follow(address, (head) => {
        wantInView(head);
        onSelect({ here, head });
      });
    },
    pressLine: (line, event) => {
      keepFocus(event);
      const { axis, at } = line;
      if (event.button !== 0 && hasLine(range, line)) return;
      const here = event.shiftKey ? selection.here : wholeLine(line).here;
      const reach = (head: CellAddress) => {
        wantFocus();
        onSelect(wholeLines({ here, head }, axis));
      };
      const start = { ...here, [axis]: at };
      reach(start);
      if (event.button !== 0) return;
      follow(start, (place) => {
        wantInView({ ...here, [axis]: place[axis] });
        reach(place);
      });
    },
    canPullLine: (line) => hasLine(range, line) && !(isWhole(range, 'row') && isWhole(range, 'column')),
    pullLine: (line) => {
      const { axis, at } = line;
      let drop: Drop | null = null;
      let isPulled = false;
      const pull = (place: CellAddress) => {
        isPulled = isPulled || place[axis] !== at;
        drop = dropAt(range, axis, place[axis]);
        wantInView({ ...selection.here, [axis]: place[axis] });
        onDrop(drop);
      };
      follow({ ...selection.here, [axis]: at }, pull, (isLetGo) => {
        onDrop(null);
        if (!isLetGo) return;
        wantFocus();
        const command = moveBeside(sheet, range, drop);
        if (command) onMoveLines(command);
        else if (!isPulled) onSelect(wholeLine(line));
      });
    },
    pullReach: () => {
      const here = { row: range.from.row, column: range.to.column };
      follow({ row: range.to.row, column: range.from.column }, (head) => {
        wantInView(head);
        onSelect({ here, head });
      });
    },
    pullCorner: () => {
      const from = usedPart(sheet, range);
      let target: CellRange | null = null;
      const pull = (place: CellAddress) => {
        target = pulledTo(from, place);
        wantInView(place);
        onPull(target);
      };
      follow(from.to, pull, (isLetGo) => {
        onPull(null);
        wantFocus();
        if (target && isLetGo) onFill(from, target);
      });
    },
  };
}

/** What is pressed would take the focus to where no cell is. */
export function keepFocus(event: MouseEvent): void {
  event.preventDefault();
  event.stopPropagation();
}
