import type { CellAddress } from '../base/address.ts';
import { type CellValue, isFault } from '../base/value.ts';
import { cellsOf } from './cells.ts';
import { readCheck } from './check.ts';
import { type Cell, isFormula, type Sheet } from './document.ts';
import { givenFault } from './entry.ts';
import { type Values, valueAt } from './values.ts';
import { wordCommandFault } from './wording.ts';

/** One thing on a sheet that wants a person's attention. */
export interface Concern {
  readonly kind: 'fill' | 'look' | 'stop';
  readonly address: CellAddress;
  readonly sentence: string;
}

/** How a sheet stands: what is still to fill in, what is worth a look, what stops the work, and how many cells have no
 *  figure only because another cell has none. Such a cell is no concern of its own: the other one is. */
export interface Standing {
  readonly toFill: number;
  readonly waits: number;
  readonly looks: number;
  readonly stops: number;
  readonly concerns: readonly Concern[];
}

/** The value that a cell shows: what was typed, or what its formula came to. Null while that is not known yet. */
export function shownValue(sheet: Sheet, address: CellAddress, cell: Cell | null, values: Values): CellValue {
  if (!cell) return null;
  return isFormula(cell.content) ? (valueAt(values, sheet.name, address) ?? null) : cell.content;
}

export function standingOf(sheet: Sheet, values: Values): Standing {
  const concerns: Concern[] = [];
  let waits = 0;
  for (const { address, cell } of cellsOf(sheet)) {
    const value = shownValue(sheet, address, cell, values);
    if (isFault(value) && value.bornAt !== undefined) waits += 1;
    const concern = concernOf(cell, value);
    if (concern) concerns.push({ ...concern, address });
  }
  const count = (kind: Concern['kind']) => concerns.filter((one) => one.kind === kind).length;
  return { toFill: count('fill'), waits, looks: count('look'), stops: count('stop'), concerns };
}

function concernOf(cell: Cell, value: CellValue): Omit<Concern, 'address'> | null {
  if (isFault(value)) return value.bornAt === undefined ? { kind: 'stop', sentence: value.sentence } : null;
  if (cell.role === 'given') return concernOfGiven(cell);
  if (cell.role !== 'check') return null;
  const said = readCheck(value);
  return said && said.verdict !== 'holds' ? { kind: said.verdict, sentence: said.sentence } : null;
}

/** A given that is still to fill, or that holds what could not be typed there, as a file changed by hand may. */
function concernOfGiven(cell: Cell): Omit<Concern, 'address'> | null {
  const { content, question } = cell;
  if (content === null) {
    return question && !question.mayBeBlank ? { kind: 'fill', sentence: question.asks } : null;
  }
  const fault = givenFault(cell);
  return fault ? { kind: 'stop', sentence: wordCommandFault(fault) } : null;
}
