import type { CellAddress } from '../base/address.ts';
import { assertNever, done, failed, type Outcome } from '../base/outcome.ts';
import { cellAt, sheetWithId } from './cells.ts';
import { type CopyCommand, type CopyFault, copyCells } from './command/copy.ts';
import { type DressCommand, type DressFault, dressCells } from './command/dress.ts';
import { type FillCommand, type FillFault, fillCells } from './command/fill.ts';
import { changeLines, type LinesCommand, type LinesFault } from './command/lines.ts';
import { changeLocks, type LockCommand, type LockFault } from './command/locks.ts';
import { type MoveCommand, type MoveFault, moveCells, movedBlocks } from './command/move.ts';
import { type MoveLinesCommand, type MoveLinesFault, moveLines } from './command/move-lines.ts';
import { changeNames, type NameCommand, type NameFault } from './command/names.ts';
import { type RetypeCommand, type RetypeFault, retypeCells } from './command/retype.ts';
import { changeSheets, type SheetCommand, type SheetFault } from './command/sheets.ts';
import { changeSight, type SightCommand, type SightFault } from './command/sight.ts';
import { type SortCommand, type SortFault, sortRows } from './command/sort.ts';
import { changeTableLine, type TableLineCommand, type TableLineFault } from './command/table-line.ts';
import { changeTemplate, type TemplateCommand, type TemplateFault } from './command/template.ts';
import { type WriteCommand, type WriteFault, writeEntries } from './command/write.ts';
import type { Change, Difference } from './difference.ts';
import type { Cell, Workbook } from './document.ts';
import { cellAfterEntry, sameCell } from './entered.ts';
import { type EntryFault, readEntry } from './entry.ts';
import { type LockedFault, lockedFault, type Touches, withoutNewLocks } from './locked.ts';

/** What a person can do to a workbook. Each gives a reversible difference, or says why not and changes nothing. */
export type Command =
  | {
      readonly type: 'enter';
      readonly sheet: string;
      readonly address: CellAddress;
      readonly typed: string;
    }
  | { readonly type: 'clear'; readonly sheet: string; readonly addresses: readonly CellAddress[] }
  | { readonly type: 'retitle'; readonly title: string }
  | DressCommand
  | WriteCommand
  | RetypeCommand
  | CopyCommand
  | MoveCommand
  | FillCommand
  | LinesCommand
  | MoveLinesCommand
  | TableLineCommand
  | SortCommand
  | SightCommand
  | SheetCommand
  | NameCommand
  | LockCommand
  | TemplateCommand;

export type CommandFault =
  | EntryFault
  | DressFault
  | WriteFault
  | RetypeFault
  | CopyFault
  | MoveFault
  | FillFault
  | LinesFault
  | MoveLinesFault
  | TableLineFault
  | SortFault
  | SightFault
  | SheetFault
  | NameFault
  | LockFault
  | TemplateFault
  | LockedFault
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'no_title' };

export function runCommand(workbook: Workbook, command: Command): Outcome<Difference, CommandFault> {
  const outcome = differenceOf(workbook, command);
  if (!outcome.ok) return outcome;
  const fault = lockedFault(workbook, outcome.value, touchedBy(command));
  if (fault) return failed(fault);
  // What a further line of a table figures is locked as in the others; what is to be written in it is not.
  const staysLocked = (cell: Cell) => command.type === 'put_in_line' && cell.content !== null;
  return done(withoutNewLocks(workbook, outcome.value, staysLocked));
}

/** Where a command puts contents; a lock holds there against any change. */
function touchedBy(command: Command): Touches {
  switch (command.type) {
    case 'insert_lines':
    case 'remove_lines':
    case 'move_lines':
    case 'put_in_line':
    case 'take_out_line':
    case 'remove_sheet':
    case 'rename_sheet':
    case 'rename_name':
    case 'remove_name':
    case 'set_locks':
      return [];
    case 'sort_rows':
      return [{ sheet: command.sheet, range: command.range }];
    case 'move':
      return movedBlocks(command);
    default:
      return 'everywhere';
  }
}

function differenceOf(workbook: Workbook, command: Command): Outcome<Difference, CommandFault> {
  switch (command.type) {
    case 'enter':
      return enter(workbook, command);
    case 'clear':
      return clear(workbook, command);
    case 'retitle': {
      const title = command.title.trim().slice(0, 120);
      if (title === '') return failed({ code: 'no_title' });
      return done(title === workbook.title ? [] : [{ type: 'title', before: workbook.title, after: title }]);
    }
    case 'dress':
      return dressCells(workbook, command);
    case 'write':
      return writeEntries(workbook, command);
    case 'retype':
      return retypeCells(workbook, command);
    case 'copy':
      return copyCells(workbook, command);
    case 'move':
      return moveCells(workbook, command);
    case 'fill':
      return fillCells(workbook, command);
    case 'sort_rows':
      return sortRows(workbook, command);
    case 'insert_lines':
    case 'remove_lines':
      return changeLines(workbook, command);
    case 'move_lines':
      return moveLines(workbook, command);
    case 'put_in_line':
    case 'take_out_line':
      return changeTableLine(workbook, command);
    case 'resize_column':
    case 'hide_lines':
    case 'show_lines':
    case 'freeze':
      return changeSight(workbook, command);
    case 'add_sheet':
    case 'copy_sheet':
    case 'describe_sheet':
    case 'remove_sheet':
    case 'rename_sheet':
    case 'move_sheet':
      return changeSheets(workbook, command);
    case 'name_range':
    case 'rename_name':
    case 'remove_name':
      return changeNames(workbook, command);
    case 'lock':
    case 'lock_all_but_givens':
    case 'set_locks':
      return changeLocks(workbook, command);
    case 'keep_example':
    case 'remove_example':
    case 'house':
    case 'revise':
    case 'make_template':
      return changeTemplate(workbook, command);
    default:
      return assertNever(command);
  }
}

function enter(
  workbook: Workbook,
  { sheet: id, address, typed }: Extract<Command, { type: 'enter' }>,
): Outcome<Difference, CommandFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  const before = cellAt(sheet, address);
  const entry = readEntry(typed, before);
  if (!entry.ok) return entry;
  const after = cellAfterEntry(before, entry.value);
  return done(sameCell(before, after) ? [] : [{ type: 'cell', sheet: id, address, before, after }]);
}

function clear(
  workbook: Workbook,
  { sheet: id, addresses }: Extract<Command, { type: 'clear' }>,
): Outcome<Difference, CommandFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  return done(
    addresses.flatMap((address): Change[] => {
      const before = cellAt(sheet, address);
      if (!before || before.content === null) return [];
      return [{ type: 'cell', sheet: id, address, before, after: cellAfterEntry(before, { content: null }) }];
    }),
  );
}
