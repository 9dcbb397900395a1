import { type Axis, type CellAddress, type CellRange, isInRange } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { cellsIn } from '../../workbook/cells.ts';
import type { DressCommand } from '../../workbook/command/dress.ts';
import type { LinesCommand } from '../../workbook/command/lines.ts';
import type { MoveLinesCommand } from '../../workbook/command/move-lines.ts';
import type { SightCommand } from '../../workbook/command/sight.ts';
import type { SortCommand } from '../../workbook/command/sort.ts';
import type { TableLineCommand } from '../../workbook/command/table-line.ts';
import type { Command } from '../../workbook/commands.ts';
import { lineNews, overwrittenNews, sortNews, tornNews } from '../../workbook/deed-news.ts';
import type { Change, Difference } from '../../workbook/difference.ts';
import type { NamedRange, Sheet } from '../../workbook/document.ts';
import { columnAt } from '../../workbook/lines.ts';
import { type Carried, lastLinesDeed, pasteOf, shownText } from './carried.ts';
import type { Said } from './deed-said.tsx';
import { filledByKey } from './fill-target.ts';
import type { Direction } from './filled-edge.ts';
import { axisOf, moveOneOn, selectionAfterMove } from './move-deeds.ts';
import { isWhole, type Selection, usedPart } from './selection.ts';

/** What can be done to the selected cells of a sheet. */
export interface RangeDeeds {
  readonly clear: () => void;
  /** From one block over a wider one, which is then selected. */
  readonly fill: (from: CellRange, to: CellRange) => void;
  readonly fillByKey: (direction: 'down' | 'right') => void;
  readonly changeLines: (command: LineCommand) => boolean;
  /** The selection goes along. */
  readonly moveLines: (command: MoveLinesCommand) => boolean;
  /** The rows or columns that are selected from end to end move one on; false where none are. */
  readonly moveWholeLines: (direction: Direction) => boolean;
  /** The selected columns become wider or narrower, each from its own width. */
  readonly resize: (by: number) => void;
  /** The same for the rows or columns that are selected from end to end; false where none are. */
  readonly changeWholeLines: (type: LinesCommand['type']) => boolean;
  /** Gives the text for the clipboard; null where nothing may be taken. */
  readonly take: (kind: Carried['kind']) => string | null;
  readonly paste: (text: string, isValuesOnly: boolean) => void;
}

type LineCommand = LinesCommand | TableLineCommand | SightCommand | SortCommand | DressCommand;

export interface RangeDeedsParts {
  readonly session: Session;
  readonly state: SessionState;
  readonly sheet: Sheet;
  readonly range: CellRange;
  readonly selection: Selection;
  readonly carried: Carried | null;
  readonly onCarry: (carried: Carried | null) => void;
  readonly onSelect: (selection: Selection) => void;
  /** Why something was not done; empty when it was. */
  readonly onComplain: (sentence: string) => void;
  /** What was done besides what one sees. */
  readonly onSay: (said: Said) => void;
}

export function rangeDeeds(parts: RangeDeedsParts): RangeDeeds {
  const { session, state, sheet, selection, carried, onCarry, onSelect, onComplain, onSay } = parts;
  const range = usedPart(sheet, parts.range);
  const wholeAxis = (['row', 'column'] as const).find((axis: Axis) => isWhole(parts.range, axis));

  /** What there is to say of it is asked for once it is done, of how things stood before. */
  function run(command: Command, newsOf?: (difference: Difference) => string): boolean {
    const outcome = session.run(command);
    onComplain(outcome.ok ? '' : outcome.fault);
    const deed = session.getState().history.done.at(-1);
    if (!outcome.ok || !newsOf || !deed || deed === state.history.done.at(-1)) return outcome.ok;
    const sentence = newsOf(deed.difference);
    if (sentence !== '') onSay({ sentence, deed });
    return true;
  }

  function fill(from: CellRange, to: CellRange): void {
    const isFilled = run({ type: 'fill', sheet: sheet.id, from, to }, (difference) =>
      overwrittenNews(sheet, difference, to),
    );
    if (isFilled) onSelect({ here: to.from, head: to.to });
  }

  function clear(): void {
    const filled = [...cellsIn(sheet, range)].filter(({ cell }) => cell.content !== null);
    run({ type: 'clear', sheet: sheet.id, addresses: filled.map(({ address }) => address) });
  }

  function newsOfLines(command: LineCommand): ((difference: Difference) => string) | undefined {
    switch (command.type) {
      case 'sort_rows':
        return () => sortNews(state.workbook, command);
      case 'put_in_line':
      case 'take_out_line':
        return (difference) => lineNews(state.workbook, sheet.id, difference);
      case 'insert_lines':
      case 'remove_lines':
        return () => tornNews(state.workbook, command);
      default:
        return undefined;
    }
  }

  function moveLines(command: MoveLinesCommand): boolean {
    const isMoved = run(command, (difference) => lineNews(state.workbook, sheet.id, difference));
    if (isMoved) onSelect(selectionAfterMove(selection, command));
    return isMoved;
  }

  return {
    clear,
    fill,
    fillByKey: (direction) => {
      const filling = filledByKey(range, direction);
      if (!filling) return;
      const newsOf = (difference: Difference) => overwrittenNews(sheet, difference, filling.to);
      if (run({ type: 'fill', sheet: sheet.id, ...filling }, newsOf))
        onSelect({ here: range.from, head: range.to });
    },
    changeLines: (command) => {
      const isDone = run(command, newsOfLines(command));
      if (isDone && command.type === 'put_in_line') {
        const below = (one: CellAddress) => ({ ...one, row: one.row + 1 });
        onSelect({ here: below(selection.here), head: below(selection.head) });
      }
      return isDone;
    },
    moveLines,
    moveWholeLines: (direction) => {
      if (
        wholeAxis !== axisOf(direction) ||
        isWhole(parts.range, axisOf(direction) === 'row' ? 'column' : 'row')
      )
        return false;
      const command = moveOneOn(sheet, parts.range, direction);
      if (command) moveLines(command);
      return true;
    },
    resize: (by) => {
      const at = range.from.column;
      const count = range.to.column - at + 1;
      const widths = Array.from({ length: count }, (_, index) => columnAt(sheet, at + index).width + by);
      run({ type: 'resize_column', sheet: sheet.id, at, widths });
    },
    changeWholeLines: (type) => {
      if (!wholeAxis) return false;
      const { from, to } = parts.range;
      const at = from[wholeAxis];
      const command = { type, sheet: sheet.id, axis: wholeAxis, at, count: to[wholeAxis] - at + 1 } as const;
      run(command, newsOfLines(command));
      return true;
    },
    take: (kind) => {
      // Nothing changes yet; the session says at once when nothing may.
      if (kind === 'cut' && !run({ type: 'clear', sheet: sheet.id, addresses: [] })) return null;
      onComplain('');
      // With no text at all the clipboard would keep what it had before.
      const text = shownText(sheet, state.values, range) || '\n';
      onCarry({ kind, sheetId: sheet.id, range, text, lines: lastLinesDeed(state.history) });
      return text;
    },
    paste: (text, isValuesOnly) => {
      const { workbook, values, history } = state;
      const into = { workbook, values, history, sheet, range: parts.range, isValuesOnly };
      const paste = pasteOf(text, carried, into);
      if (paste.type === 'refused') return onComplain(paste.sentence);
      const taken = paste.command.type === 'move' ? paste.command.from : null;
      const newsOf = (difference: Difference) =>
        overwrittenNews(
          sheet,
          difference.filter((change) => !isFrom(change, taken)),
          paste.covers,
        );
      if (!run(paste.command, newsOf)) return;
      // What was cut is moved once; from then on it is copied from where it is now.
      if (paste.command.type === 'move' && carried) {
        onCarry({ ...carried, kind: 'copy', sheetId: sheet.id, range: paste.covers });
      }
      onSelect({ here: paste.covers.from, head: paste.covers.to });
    },
  };
}

/** Whether a cell was cut out itself, so that nothing of it is lost. */
function isFrom(change: Change, taken: NamedRange | null): boolean {
  return (
    taken !== null &&
    change.type === 'cell' &&
    change.sheet === taken.sheet &&
    isInRange(change.address, taken.range)
  );
}
