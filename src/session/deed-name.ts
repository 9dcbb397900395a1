import { writeAddress } from '../base/address.ts';
import { assertNever } from '../base/outcome.ts';
import { sheetWithId } from '../workbook/cells.ts';
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
    default:
      return assertNever(command);
  }
}

function placeName(workbook: Workbook, id: string, address: { row: number; column: number }): string {
  return `${sheetWithId(workbook, id)?.name ?? ''}!${writeAddress(address)}`;
}

function shortened(text: string): string {
  return text.length > 24 ? `${text.slice(0, 23)}…` : text;
}
