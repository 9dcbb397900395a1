import { writeAddress } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { cellAt, sheetNamed } from '../../workbook/cells.ts';
import { type CommandFault, runCommand } from '../../workbook/commands.ts';
import { allowancesSheet } from '../../workbook/comparison.ts';
import { applyDifference, type Change, type Difference } from '../../workbook/difference.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../../workbook/document.ts';
import { cellAfterEntry, sameCell } from '../../workbook/entered.ts';
import { givenFault } from '../../workbook/entry.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { locksHold } from '../../workbook/locked.ts';
import { type Values, valuesAfter } from '../../workbook/values.ts';
import { isOtherUnit } from './compare.ts';
import {
  type AllowanceCell,
  type AllowanceRow,
  type AllowanceTable,
  allowanceRows,
  allowanceTables,
  singles,
} from './rows.ts';
import { isFree, keyCell, linesOf, takesContent } from './table-lines.ts';

/** Why a line cannot be brought in. Wording: `wording.ts`. */
export type CarryFault = { readonly label: string } & (
  | { readonly code: 'not_there' }
  /** No formula here would read it. */
  | { readonly code: 'no_such_single' | 'no_such_table'; readonly name: string }
  /** Its first cell repeats another table, which has no such line. */
  | { readonly code: 'follows_another'; readonly name: string }
  | { readonly code: 'no_line'; readonly name: string; readonly fault: CommandFault }
  | {
      readonly code: 'other_unit' | 'locked' | 'shows_fault';
      readonly place: string;
      readonly heading: string;
    }
  | {
      readonly code: 'refused';
      readonly place: string;
      readonly heading: string;
      readonly fault: CommandFault;
    }
);

interface Carried {
  readonly workbook: Workbook;
  readonly values: Values;
  readonly changes: readonly Change[];
}

/** The difference that brings chosen lines (by their ids) of another workbook's allowances into this one: a line that is here
 *  gets the other's figures column by column, and formulas stay; a new one goes into the first free line of its table, or
 *  into one put in after the last. Where anything is refused, nothing is brought in and every reason is told. */
export function carryDifference(
  into: KeptWorkbook,
  from: KeptWorkbook,
  chosen: ReadonlySet<string>,
): Outcome<Difference, readonly CarryFault[]> {
  const theirs = allowanceRows(from.workbook, from.values);
  const wanted = theirs.filter(({ id }) => chosen.has(id));
  const known = new Set(wanted.map(({ id }) => id));
  const faults: CarryFault[] = [...chosen].flatMap((id) =>
    known.has(id) ? [] : [{ code: 'not_there', label: id }],
  );
  let sofar: Carried = { ...into, changes: [] };
  // A line that repeats the name of another one comes after it.
  for (const row of [...wanted.filter((one) => !isRepeated(one)), ...wanted.filter(isRepeated)]) {
    sofar = carryRow(sofar, row, faults);
  }
  return faults.length > 0 ? failed(faults) : done(sofar.changes);
}

/** Whether a line that is only there could be brought in: its table must be here, and a single allowance must have its name. */
export function hasPlace(into: Workbook, line: Pick<AllowanceRow, 'table'>): boolean {
  const sheet = sheetNamed(into, allowancesSheet);
  const name = line.table.toLowerCase();
  return (
    line.table !== singles &&
    sheet !== undefined &&
    allowanceTables(into, sheet).some((one) => one.name.toLowerCase() === name)
  );
}

function carryRow(sofar: Carried, row: AllowanceRow, faults: CarryFault[]): Carried {
  const sheet = sheetNamed(sofar.workbook, allowancesSheet);
  const { label, table: name } = row;
  const mine = allowanceRows(sofar.workbook, sofar.values).find(({ id }) => id === row.id);
  if (sheet && mine) {
    const at = [...mine.cells].map(([heading, { address }]) => ({ heading, address }));
    return write(sofar, sheet, at, row, faults);
  }
  if (name === singles) {
    faults.push({ code: 'no_such_single', label, name: row.key });
    return sofar;
  }
  const table =
    sheet &&
    allowanceTables(sofar.workbook, sheet).find((one) => one.name.toLowerCase() === name.toLowerCase());
  if (!sheet || !table) {
    faults.push({ code: 'no_such_table', label, name });
    return sofar;
  }
  if (
    isRepeated(row) &&
    linesOf(table).some((line) => isFormula(keyCell(sheet, table, line)?.content ?? null))
  ) {
    faults.push({ code: 'follows_another', label, name });
    return sofar;
  }
  const free = linesOf(table).find((line) => isFree(sheet, table, line));
  if (free !== undefined) return write(sofar, sheet, lineAt(table, free), row, faults);

  const last = linesOf(table).findLast((line) => !isFormula(keyCell(sheet, table, line)?.content ?? null));
  const address = { row: last ?? table.range.to.row, column: table.range.from.column };
  const put = runCommand(sofar.workbook, { type: 'put_in_line', sheet: sheet.id, address });
  if (!put.ok) {
    faults.push({ code: 'no_line', label, name, fault: put.fault });
    return sofar;
  }
  const longer = after(sofar, put.value);
  const grown = sheetNamed(longer.workbook, allowancesSheet) ?? sheet;
  return write(longer, grown, lineAt(table, address.row + 1), row, faults);
}

/** The other's figures, put where this line has its columns. */
function write(
  sofar: Carried,
  sheet: Sheet,
  at: readonly { readonly heading: string; readonly address: AllowanceCell['address'] }[],
  row: AllowanceRow,
  faults: CarryFault[],
): Carried {
  const holds = locksHold(sofar.workbook);
  const changes = at.flatMap(({ heading, address }): readonly Change[] => {
    const theirs = row.cells.get(heading);
    const before = cellAt(sheet, address);
    if (!theirs || !takesContent(before) || isAlready(before, theirs)) return [];
    const told = { label: row.label, heading, place: `${sheet.name}!${writeAddress(address)}` };
    const next = cellWith(before, theirs);
    const limit = next && givenFault(next);
    if (before?.locked && holds) faults.push({ code: 'locked', ...told });
    else if (theirs.content === null && theirs.shows !== '') faults.push({ code: 'shows_fault', ...told });
    else if (isOtherUnit({ ...theirs, cell: before }, theirs)) faults.push({ code: 'other_unit', ...told });
    else if (limit) faults.push({ code: 'refused', ...told, fault: limit });
    else if (!sameCell(before, next)) {
      return [{ type: 'cell', sheet: sheet.id, address, before, after: next }];
    }
    return [];
  });
  return after(sofar, changes);
}

function after({ workbook, values, changes }: Carried, more: Difference): Carried {
  return {
    workbook: applyDifference(workbook, more),
    values: valuesAfter(values, more, workbook),
    changes: [...changes, ...more],
  };
}

function cellWith(before: Cell | null, { cell, content }: AllowanceCell): Cell | null {
  const typed = cell && !isFormula(cell.content) ? cell.typed : undefined;
  const entry = { content, ...(typed === undefined ? {} : { typed }) };
  if (before || !cell) return cellAfterEntry(before, entry);
  const { unit, format } = cell;
  const made = cellAfterEntry(null, { ...entry, ...(unit === undefined ? {} : { unit }) });
  return made && { ...made, ...(format ? { format } : {}) };
}

function isAlready(before: Cell | null, theirs: AllowanceCell): boolean {
  if (theirs.content === null && theirs.shows !== '') return false;
  return (before?.content ?? null) === theirs.content && !isOtherUnit({ ...theirs, cell: before }, theirs);
}

function isRepeated({ cells, table }: AllowanceRow): boolean {
  return table !== singles && [...cells.values()][0]?.isFigured === true;
}

function lineAt({ columns }: AllowanceTable, row: number) {
  return columns.map(({ heading, column }) => ({ heading, address: { row, column } }));
}
