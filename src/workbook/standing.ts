import type { CellAddress } from '../base/address.ts';
import { type CellValue, isFault } from '../base/value.ts';
import { cellsOf } from './cells.ts';
import { readCheck } from './check.ts';
import { type Cell, isFormula, type Sheet } from './document.ts';
import { type Values, valueAt } from './values.ts';

/** One thing on a sheet that wants a person's attention. */
export interface Concern {
  readonly kind: 'fill' | 'look' | 'stop';
  readonly address: CellAddress;
  readonly sentence: string;
}

/** How a sheet stands: what is still to fill in, what is worth a look, what stops the work. */
export interface Standing {
  readonly toFill: number;
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
  for (const { address, cell } of cellsOf(sheet)) {
    const value = shownValue(sheet, address, cell, values);
    const concern = concernOf(cell, value);
    if (concern) concerns.push({ ...concern, address });
  }
  const count = (kind: Concern['kind']) => concerns.filter((one) => one.kind === kind).length;
  return { toFill: count('fill'), looks: count('look'), stops: count('stop'), concerns };
}

function concernOf(cell: Cell, value: CellValue): Omit<Concern, 'address'> | null {
  if (isFault(value)) return { kind: 'stop', sentence: value.sentence };
  if (cell.role === 'given' && cell.question && !cell.question.mayBeBlank && cell.content === null) {
    return { kind: 'fill', sentence: cell.question.asks };
  }
  if (cell.role !== 'check') return null;
  const said = readCheck(value);
  return said && said.verdict !== 'holds' ? { kind: said.verdict, sentence: said.sentence } : null;
}
