import { done, failed, type Outcome } from '../../base/outcome.ts';
import { isUsableName } from '../../formula/name.ts';
import { afterNameRename } from '../../formula/rename.ts';
import { cellAt, sheetWithId } from '../../workbook/cells.ts';
import type { Command, CommandFault } from '../../workbook/commands.ts';
import type { Difference } from '../../workbook/difference.ts';
import { isFormula, type Sheet, type Workbook } from '../../workbook/document.ts';
import { rowsAround } from '../../workbook/table-rows.ts';
import { noValues } from '../../workbook/values.ts';
import { tried } from '../trial.ts';
import { singleAllowances } from './fields.ts';
import { type AllowanceLine, allowanceLine, calledAt, type LinePlace, linesRepeating } from './line.ts';
import { keyAt } from './rows.ts';
import { isFree, linesOf } from './table-lines.ts';

/** Why a line cannot be copied. Wording: `wording.ts`. */
export type CopyLineFault =
  | { readonly code: 'no_line' }
  | { readonly code: 'copy_without_name'; readonly of: string }
  | { readonly code: 'copy_name_taken'; readonly name: string }
  | { readonly code: 'copy_name_is_formula'; readonly name: string }
  | { readonly code: 'refused'; readonly fault: CommandFault };

export interface CopiedTo {
  readonly workbook: Workbook;
  readonly difference: Difference;
  /** The row that the copy stands in. */
  readonly row: number;
}

/** A line once more under a name of its own: in the first free line of its table, or in one put in below it. Lines that
 *  repeat its name, such as its price, are copied along. What the line figures, the copy figures for itself. */
export function copyLine(
  workbook: Workbook,
  place: LinePlace,
  { name: wanted, source }: { readonly name: string; readonly source: string },
): Outcome<CopiedTo, CopyLineFault> {
  const line = allowanceLine(workbook, place);
  if (!line) return failed({ code: 'no_line' });
  const name = wanted.trim();
  if (name === '') return failed({ code: 'copy_without_name', of: calledAt(line) });
  if (name.startsWith('=')) return failed({ code: 'copy_name_is_formula', name });
  if (namesBeside(workbook, line).has(name.toLowerCase())) return failed({ code: 'copy_name_taken', name });

  const { sheet, row: from, table, key } = line;
  const free = table && linesOf(table).find((row) => isFree(sheet, table, row));
  const row = free ?? from + 1;
  const put: readonly Command[] =
    free === undefined || free === null ? [{ type: 'put_in_line', sheet: sheet.id, address: key }] : [];
  const write = (column: number, typed: string): Command => {
    return { type: 'enter', sheet: sheet.id, address: { row, column }, typed };
  };
  const commands = [
    ...put,
    ...plainColumns(line).map((column) => copyCell(sheet, { row: from, column }, row)),
    write(key.column, name),
    ...(line.source ? [write(line.source.column, source)] : []),
    ...namedAlone(workbook, line, row),
  ];
  const outcome = tried(workbook, commands);
  if (!outcome.ok) return failed({ code: 'refused', fault: outcome.fault });
  const along = copyAlong(outcome.value.workbook, line, row);
  if (!along.ok) return failed({ code: 'refused', fault: along.fault });
  const difference = [...outcome.value.difference, ...along.value.difference];
  return done({ workbook: along.value.workbook, difference, row });
}

/** A name for a copy that no other line has: `Copy of R-8 wrap`. */
export function nameOfCopy(taken: ReadonlySet<string>, name: string): string {
  for (let number = 1; ; number += 1) {
    const wanted = number === 1 ? `Copy of ${name}` : `Copy ${number} of ${name}`;
    if (!taken.has(wanted.toLowerCase())) return wanted;
  }
}

/** What the lines of the same table are called, in lower case; for an allowance that stands alone, all of those. */
export function namesBeside(workbook: Workbook, { sheet, table }: AllowanceLine): ReadonlySet<string> {
  const names = table
    ? linesOf(table).map((row) => keyAt(sheet, { row, column: table.range.from.column }, noValues))
    : singleAllowances(workbook).map(({ label }) => label);
  return new Set(names.filter(Boolean).map((one) => one.toLowerCase()));
}

/** The columns of a line that hold figures or words, without its name and its source. */
function plainColumns({ sheet, row, key, source }: AllowanceLine): readonly number[] {
  const range = rowsAround(sheet, key);
  const [first, last] = range ? [range.from.column, range.to.column] : [key.column, key.column];
  return Array.from({ length: last - first + 1 }, (_, at) => first + at).filter((column) => {
    const content = cellAt(sheet, { row, column })?.content ?? null;
    return content !== null && !isFormula(content) && column !== key.column && column !== source?.column;
  });
}

function copyCell(
  sheet: Sheet,
  from: { readonly row: number; readonly column: number },
  row: number,
): Command {
  const to = { row, column: from.column };
  return {
    type: 'copy',
    from: { sheet: sheet.id, range: { from, to: from } },
    to: { sheet: sheet.id, range: { from: to, to } },
  };
}

/** A copy of an allowance that stands alone is read by a name of its own, and checked as the first one is. */
function namedAlone(
  workbook: Workbook,
  { sheet, row: from, name, key }: AllowanceLine,
  row: number,
): readonly Command[] {
  if (name === null) return [];
  const own = freeName(workbook, name);
  const at = { row, column: key.column + 1 };
  const checks = (sheet.rows[from] ?? []).flatMap((cell, column): readonly Command[] => {
    if (!cell || !isFormula(cell.content)) return [];
    const formula = afterNameRename(cell.content.formula, name, own);
    const address = { row, column };
    return formula === cell.content.formula
      ? []
      : [{ type: 'enter', sheet: sheet.id, address, typed: `=${formula}` }];
  });
  return [{ type: 'name_range', name: own, sheet: sheet.id, range: { from: at, to: at } }, ...checks];
}

function freeName({ names }: Workbook, name: string): string {
  const taken = new Set(Object.keys(names).map((one) => one.toLowerCase()));
  const stem = name.replace(/_\d+$/, '');
  for (let number = 2; ; number += 1) {
    const own = `${stem}_${number}`;
    if (isUsableName(own) && !taken.has(own.toLowerCase())) return own;
  }
}

/** The commands, turn by turn, that give the lines that repeat the name what hangs on it: its own figures go into the line
 *  that repeats the copy, or into one that is put in below. */
function copyAlong(
  workbook: Workbook,
  { sheet: { id }, row: from }: AllowanceLine,
  row: number,
): Outcome<{ readonly workbook: Workbook; readonly difference: Difference }, CommandFault> {
  const difference: Difference[number][] = [];
  let after = workbook;
  const repeating = (at: number) => {
    const line = allowanceLine(after, { sheet: id, row: at });
    return line ? linesRepeating(line) : [];
  };
  for (let turn = 0; turn < repeating(from).length; turn += 1) {
    const source = repeating(from)[turn];
    const sheet = sheetWithId(after, id);
    if (!source || !sheet) continue;
    const target = repeating(row).find(({ column }) => column === source.column);
    // Copied down by one line, the formula repeats the next line: the copy, where that stands right below.
    const canPut = row === from + 1 && source.row > row;
    if (!target && !canPut) continue;
    const put: readonly Command[] = target
      ? []
      : [{ type: 'put_in_line', sheet: id, address: source }, copyCell(sheet, source, source.row + 1)];
    const to = target?.row ?? source.row + 1;
    const cells = (sheet.rows[source.row] ?? []).flatMap((cell, column) =>
      cell?.role === 'given' && cell.content !== null && !isFormula(cell.content)
        ? [copyCell(sheet, { row: source.row, column }, to)]
        : [],
    );
    const outcome = tried(after, [...put, ...cells]);
    if (!outcome.ok) return outcome;
    after = outcome.value.workbook;
    difference.push(...outcome.value.difference);
  }
  return done({ workbook: after, difference });
}
