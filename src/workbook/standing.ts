import type { CellAddress } from '../base/address.ts';
import { type CellValue, isFault } from '../base/value.ts';
import { bandAt, rowsInBand, type SheetValues } from './bands.ts';
import { readCheck } from './check.ts';
import { type Cell, isFormula, type Row, type Sheet } from './document.ts';
import { givenFault } from './entry.ts';
import { placeKey } from './place-key.ts';
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
  return standingInBands(sheet, values).standing;
}

/** A sheet's standing with the parts that it is added up from, so that the next one looks only at rows with news. */
export interface BandedStanding {
  readonly standing: Standing;
  readonly parts: readonly StandingPart[];
}

interface StandingPart {
  readonly rows: readonly Row[];
  readonly values: SheetValues | undefined;
  readonly waits: number;
  readonly concerns: readonly Concern[];
}

export function standingInBands(sheet: Sheet, values: Values, before?: BandedStanding): BandedStanding {
  const own = values.get(sheet.name);
  const parts: StandingPart[] = [];
  for (let first = 0; first < sheet.rows.length; first += rowsInBand) {
    const at = first / rowsInBand;
    const known = before?.parts[at];
    const ownPart = bandAt(own, at);
    const isSame = known && known.values === ownPart && hasRows(sheet, first, known.rows);
    parts.push(isSame ? known : partOf(sheet.rows.slice(first, first + rowsInBand), first, ownPart));
  }
  const concerns = parts.flatMap((part) => part.concerns);
  const waits = parts.reduce((sum, part) => sum + part.waits, 0);
  const count = (kind: Concern['kind']) => concerns.filter((one) => one.kind === kind).length;
  const standing = { toFill: count('fill'), waits, looks: count('look'), stops: count('stop'), concerns };
  return { standing, parts };
}

/** Whether the rows of this band are these and no others. */
function hasRows({ rows }: Sheet, first: number, some: readonly Row[]): boolean {
  if (some.length !== Math.min(rowsInBand, rows.length - first)) return false;
  return some.every((row, at) => rows[first + at] === row);
}

function partOf(rows: readonly Row[], first: number, values: SheetValues | undefined): StandingPart {
  const concerns: Concern[] = [];
  let waits = 0;
  for (const [at, cells] of rows.entries()) {
    for (const { column, cell, concern } of worthALook(cells)) {
      const address = { row: first + at, column };
      const value = cell ? (values?.get(placeKey(address)) ?? null) : null;
      if (isFault(value) && value.bornAt !== undefined) waits += 1;
      const found = cell ? concernOf(cell, value) : concern;
      if (found) concerns.push({ ...found, address });
    }
  }
  return { rows, values, waits, concerns };
}

/** A cell that may be a concern: one with a formula, by its value, or one that is a concern whatever is figured. */
type Look = { readonly column: number } & (
  | { readonly cell: Cell; readonly concern: null }
  | { readonly cell: null; readonly concern: Omit<Concern, 'address'> }
);

const looks = new WeakMap<Row, readonly Look[]>();

/** Rows are never altered, so each is gone through once; after an edit only its own row is. */
function worthALook(row: Row): readonly Look[] {
  const known = looks.get(row);
  if (known) return known;
  const found: Look[] = [];
  for (const [column, cell] of row.entries()) {
    if (!cell) continue;
    if (isFormula(cell.content)) found.push({ column, cell, concern: null });
    else {
      const concern = concernOf(cell, cell.content);
      if (concern) found.push({ column, cell: null, concern });
    }
  }
  looks.set(row, found);
  return found;
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
