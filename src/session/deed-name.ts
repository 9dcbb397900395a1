import { type Axis, columnName, writeAddress, writeRange } from '../base/address.ts';
import { assertNever } from '../base/outcome.ts';
import { sheetWithId } from '../workbook/cells.ts';
import type { Dress } from '../workbook/command/dress.ts';
import type { Command } from '../workbook/commands.ts';
import type { Workbook } from '../workbook/document.ts';

/** What a command did, as the person reads it on Undo and Redo: `16 in Pieces!C4`. */
export function deedName(workbook: Workbook, command: Command): string {
  switch (command.type) {
    case 'enter':
      return `${shortened(command.typed.trim())} in ${placeName(workbook, command.sheet, command.address)}`;
    case 'clear': {
      const [first] = command.addresses;
      if (command.addresses.length === 1 && first) {
        return `emptying ${placeName(workbook, command.sheet, first)}`;
      }
      return `emptying ${command.addresses.length} cells`;
    }
    case 'retitle':
      return `the title ${shortened(command.title)}`;
    case 'dress': {
      const [first] = command.addresses;
      const part = dressName(command.dress);
      if (command.addresses.length > 1) return `${part} ${command.addresses.length} cells`;
      return first ? `${part} ${placeName(workbook, command.sheet, first)}` : 'a look';
    }
    case 'write':
      return command.file === undefined
        ? `pasting at ${placeName(workbook, command.sheet, command.at)}`
        : `lines from ${shortened(command.file)} at ${placeName(workbook, command.sheet, command.at)}`;
    case 'retype': {
      const [first] = command.entries;
      if (command.entries.length === 1 && first) {
        return `${shortened(first.typed.trim())} in ${placeName(workbook, first.sheet, first.address)}`;
      }
      return `replacing in ${command.entries.length} cells`;
    }
    case 'copy':
      return `copying to ${placeName(workbook, command.to.sheet, command.to.range.from)}`;
    case 'move':
      return `moving to ${placeName(workbook, command.to.sheet, command.to.at)}`;
    case 'fill':
      return `filling from ${placeName(workbook, command.sheet, command.from.from)}`;
    case 'sort_rows':
      return `sorting ${sheetName(workbook, command.sheet)}!${writeRange(command.range)}`;
    case 'insert_lines':
      return `putting in ${linesName(command)}`;
    case 'remove_lines':
      return `taking out ${linesName(command)}`;
    case 'put_in_line':
      return `a line like row ${command.address.row + 1} of ${sheetName(workbook, command.sheet)}`;
    case 'take_out_line':
      return `taking out the line in row ${command.address.row + 1} of ${sheetName(workbook, command.sheet)}`;
    case 'move_lines':
      return `moving ${linesName(command)} of ${sheetName(workbook, command.sheet)}`;
    case 'resize_column':
      return `the width of ${linesName({ axis: 'column', at: command.at, count: command.widths.length })}`;
    case 'hide_lines':
      return `hiding ${linesName(command)}`;
    case 'show_lines':
      return `showing ${linesName(command)}`;
    case 'freeze':
      return `what stays in sight on ${sheetName(workbook, command.sheet)}`;
    case 'copy_sheet':
      return `the copy ${shortened(command.name)}`;
    case 'describe_sheet':
      return `the sentence of ${sheetName(workbook, command.sheet)}`;
    case 'add_sheet':
      return `the new sheet ${shortened(command.name)}`;
    case 'remove_sheet':
      return `taking out the sheet ${sheetName(workbook, command.sheet)}`;
    case 'rename_sheet':
      return `the sheet name ${shortened(command.name)}`;
    case 'move_sheet':
      return `moving the sheet ${sheetName(workbook, command.sheet)}`;
    case 'name_range':
      return `the name ${shortened(command.name)}`;
    case 'rename_name':
      return `the name ${shortened(command.to)}`;
    case 'remove_name':
      return `taking away the name ${shortened(command.name)}`;
    case 'lock': {
      const [first] = command.addresses;
      const deed = command.locked ? 'locking' : 'unlocking';
      if (command.addresses.length > 1) return `${deed} ${command.addresses.length} cells`;
      return first ? `${deed} ${placeName(workbook, command.sheet, first)}` : deed;
    }
    case 'lock_all_but_givens':
      return `locking all but the givens of ${sheetName(workbook, command.sheet)}`;
    case 'set_locks':
      return command.hold ? 'putting the locks on' : 'taking the locks off';
    case 'keep_example':
      return `the worked example ${shortened(command.example.name)}`;
    case 'remove_example':
      return `taking out the worked example ${shortened(workbook.examples[command.at]?.name ?? '')}`;
    case 'house':
      return command.house ? 'the options and results of the house type' : 'being a house type';
    case 'revise':
      return `the revision “${shortened(command.says)}”`;
    case 'make_template':
      return `the template ${shortened(command.name)}`;
    default:
      return assertNever(command);
  }
}

/** Which part of a dress it was, as it is written before a place. */
function dressName({ role, unit, format, question, note, across }: Dress): string {
  if (question !== undefined) return 'the question of';
  if (role !== undefined) return 'the role of';
  if (unit !== undefined) return 'the unit of';
  if (across !== undefined) return 'the columns under';
  if (format !== undefined) return 'how numbers show in';
  return note === undefined ? 'the look of' : 'the note on';
}

function placeName(workbook: Workbook, id: string, address: { row: number; column: number }): string {
  return `${sheetName(workbook, id)}!${writeAddress(address)}`;
}

function sheetName(workbook: Workbook, id: string): string {
  return sheetWithId(workbook, id)?.name ?? '';
}

/** `row 4`, `3 columns from C`. */
function linesName({ axis, at, count }: { axis: Axis; at: number; count: number }): string {
  const first = axis === 'row' ? String(at + 1) : columnName(at);
  return count === 1 ? `${axis} ${first}` : `${count} ${axis}s from ${first}`;
}

function shortened(text: string): string {
  return text.length > 24 ? `${text.slice(0, 23)}…` : text;
}
