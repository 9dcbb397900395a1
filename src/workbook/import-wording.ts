import { writeAddress } from '../base/address.ts';
import type { ImportFault, ImportRefusal } from './import.ts';
import { wordCommandFault } from './wording.ts';

/** Why a line of a file, or a field of it, does not go into the sheet. */
export function wordImportRefusal(refusal: ImportRefusal): string {
  if (refusal.code === 'field') {
    const { fileLine, column, address, fault } = refusal;
    return `Line ${fileLine}, ${column.name} (${writeAddress(address)}): ${wordImportFault(fault)}`;
  }
  const { fileLine, lines, room } = refusal;
  const from = lines === 1 ? `Line ${fileLine} has` : `From line ${fileLine} on, ${lines} lines have`;
  const there = room === 1 ? 'There is room for 1 line' : `There is room for ${room} lines`;
  return `${from} no place. ${there} here: put rows into the table first, or bring in fewer lines.`;
}

function wordImportFault(fault: ImportFault): string {
  if (fault.code !== 'formula_from_file') return wordCommandFault(fault);
  return `“${fault.typed.slice(0, 60)}” begins with =, and a file brings plain values only, never formulas. Put the value there instead, or leave this line out.`;
}
