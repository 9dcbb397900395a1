import type { CellAddress } from '../base/address.ts';
import { done, failed, type Outcome } from '../base/outcome.ts';
import { cellAt } from './cells.ts';
import { fitsOnSheet, type WriteCommand } from './command/write.ts';
import { type Cell, isFormula, type Sheet } from './document.ts';
import { type Entry, type EntryFault, readEntry } from './entry.ts';
import { showValue } from './show.ts';
import type { TableColumn } from './tables.ts';
import { rearmed } from './unarmed.ts';

/** Lines of a file on their way into a sheet: where each field goes, as what it reads, and what is refused. */
export interface ImportPlan {
  readonly lines: readonly ImportLine[];
  readonly refusals: readonly ImportRefusal[];
  /** How many filled cells of the lines that are written over keep what they hold, or are emptied where that is wished. */
  readonly others: number;
  /** What writes all of it as one deed. Null where nothing is left to write. */
  readonly command: WriteCommand | null;
}

export interface ImportLine {
  /** In the file, counted from 1. */
  readonly fileLine: number;
  /** On the sheet; null where the line does not get there. */
  readonly row: number | null;
  readonly fate: 'goes_in' | 'refused' | 'no_room';
  /** One for each column that is mapped, in their order. */
  readonly fields: readonly ImportField[];
}

export interface ImportField {
  readonly text: string;
  /** What the cell will hold, as the page shows it; an empty text leaves the cell as it is. */
  readonly reads: Outcome<string, ImportFault>;
}

export type ImportFault =
  | EntryFault
  /** A field that begins with `=`: a file brings values, never formulas. */
  | { readonly code: 'formula_from_file'; readonly typed: string };

export type ImportRefusal =
  | {
      readonly code: 'field';
      readonly fileLine: number;
      readonly column: TableColumn;
      readonly address: CellAddress;
      readonly fault: ImportFault;
    }
  | { readonly code: 'no_room'; readonly fileLine: number; readonly lines: number; readonly room: number };

export interface ImportWish {
  readonly file: string;
  readonly rows: readonly (readonly string[])[];
  /** Where the lines to bring in begin in `rows`. */
  readonly firstFileRow: number;
  /** Columns of the sheet, each with the field of the file that goes there. */
  readonly mapping: readonly { readonly column: TableColumn; readonly field: number }[];
  /** The first row of the sheet to write, and how many there are. */
  readonly firstRow: number;
  readonly room: number;
  /** Lines with a refusal are left in the file instead of holding up the others. */
  readonly leavesRefused: boolean;
  /** Where lines are written over: the columns of the table, how many of its lines are filled, and whether what the file
   *  does not write in them is emptied. */
  readonly over?: { readonly columns: readonly number[]; readonly lines: number; readonly empties: boolean };
}

/** Reads every field by the cell that it would go to, exactly as if it were typed there, and tells all refusals at once.
 *  Lines without any text are passed over. */
export function planImport(sheet: Sheet, wish: ImportWish): ImportPlan {
  const lines: ImportLine[] = [];
  const refusals: ImportRefusal[] = [];
  const written: (readonly ImportField[])[] = [];
  for (const { texts, fileLine } of linesWithText(wish)) {
    const isRoom = written.length < wish.room;
    const row = wish.firstRow + written.length;
    const fields = wish.mapping.map(({ column, field }) =>
      fieldOf(texts[field] ?? '', isRoom ? cellAt(sheet, { row, column: column.column }) : null),
    );
    if (!isRoom) {
      lines.push({ fileLine, row: null, fate: 'no_room', fields });
      continue;
    }
    const refused = refusalsOf(fields, wish, fileLine, row);
    refusals.push(...refused);
    const isLeft = refused.length > 0 && wish.leavesRefused;
    if (!isLeft) written.push(fields);
    lines.push({
      fileLine,
      row: isLeft ? null : row,
      fate: refused.length > 0 ? 'refused' : 'goes_in',
      fields,
    });
  }
  const homeless = lines.filter(({ fate }) => fate === 'no_room');
  const [first] = homeless;
  if (first) {
    refusals.push({ code: 'no_room', fileLine: first.fileLine, lines: homeless.length, room: wish.room });
  }
  const others = otherCells(sheet, wish, written);
  return {
    lines,
    refusals,
    others: others.length,
    command: commandOf(sheet, wish, written, wish.over?.empties ? others : []),
  };
}

/** The filled cells of the lines that are written over, and of those below them, that the file says nothing of. */
function otherCells(
  sheet: Sheet,
  { over, mapping, firstRow }: ImportWish,
  written: readonly (readonly ImportField[])[],
): readonly CellAddress[] {
  if (!over || written.length === 0) return [];
  const places = new Map(mapping.map(({ column }, place) => [column.column, place]));
  return Array.from({ length: over.lines }, (_, line) => line).flatMap((line) =>
    over.columns.flatMap((column) => {
      const place = places.get(column);
      const isWritten = place !== undefined && (written[line]?.[place]?.text ?? '') !== '';
      const address = { row: firstRow + line, column };
      const content = cellAt(sheet, address)?.content ?? null;
      return isWritten || content === null || isFormula(content) ? [] : [address];
    }),
  );
}

function linesWithText({ rows, firstFileRow, mapping }: ImportWish) {
  return rows
    .map((texts, index) => ({ texts, fileLine: index + 1 }))
    .slice(firstFileRow)
    .filter(({ texts }) => mapping.some(({ field }) => (texts[field] ?? '').trim() !== ''));
}

function refusalsOf(
  fields: readonly ImportField[],
  { mapping }: ImportWish,
  fileLine: number,
  row: number,
): readonly ImportRefusal[] {
  return fields.flatMap(({ reads }, at): ImportRefusal[] => {
    const column = mapping[at]?.column;
    if (reads.ok || !column) return [];
    const address = { row, column: column.column };
    return [{ code: 'field', fileLine, column, address, fault: reads.fault }];
  });
}

function fieldOf(raw: string, cell: Cell | null): ImportField {
  const text = rearmed(raw.trim());
  return { text, reads: readField(text, cell) };
}

function readField(text: string, cell: Cell | null): Outcome<string, ImportFault> {
  if (text === '') return done('');
  if (text.startsWith('=')) return failed({ code: 'formula_from_file', typed: text });
  const entry = readEntry(text, cell);
  return entry.ok ? done(shownEntry(entry.value, cell)) : entry;
}

function shownEntry({ content, unit = undefined }: Entry, cell: Cell | null): string {
  // A formula was refused before it came here.
  return typeof content === 'object' ? '' : showValue(content, unit ?? cell?.unit, cell?.format).text;
}

/** A block from the first mapped column to the last; whatever lies between and is not mapped stays as it is. */
function commandOf(
  sheet: Sheet,
  { mapping, firstRow, file }: ImportWish,
  written: readonly (readonly ImportField[])[],
  emptied: readonly CellAddress[],
): WriteCommand | null {
  if (written.length === 0 || mapping.length === 0) return null;
  const columns = mapping.map(({ column }) => column.column);
  const all = [...columns, ...emptied.map(({ column }) => column)];
  const left = Math.min(...all);
  const width = Math.max(...all) - left + 1;
  const height = Math.max(written.length, ...emptied.map(({ row }) => row - firstRow + 1));
  const at = { row: firstRow, column: left };
  if (!fitsOnSheet(at, height, width)) return null;
  const rows = Array.from({ length: height }, (_, line) => {
    const row: (string | null)[] = Array.from({ length: width }, () => null);
    for (const [place, { text }] of (written[line] ?? []).entries()) {
      const column = columns[place];
      if (column !== undefined && text !== '') row[column - left] = text;
    }
    return row;
  });
  for (const { row, column } of emptied) {
    const cells = rows[row - firstRow];
    if (cells) cells[column - left] = '';
  }
  return { type: 'write', sheet: sheet.id, at, rows, file };
}

/** For each column the field of the file whose heading has the same name; upper and lower case, spaces and signs do not
 *  count. Null where the file has none. */
export function mapByName(
  columns: readonly TableColumn[],
  headings: readonly string[],
): readonly (number | null)[] {
  const names = headings.map(plainName);
  const taken = new Set<number>();
  return columns.map(({ name }) => {
    const wanted = plainName(name);
    const found = names.findIndex((one, field) => one !== '' && one === wanted && !taken.has(field));
    if (found < 0) return null;
    taken.add(found);
    return found;
  });
}

/** The row of a file that most likely names its columns: the one with the most of the names wanted, among the first 20.
 *  Null where no row has one of them. */
export function headingRowOf(
  columns: readonly TableColumn[],
  rows: readonly (readonly string[])[],
): number | null {
  const hits = rows
    .slice(0, 20)
    .map((row) => mapByName(columns, row).filter((field) => field !== null).length);
  const most = Math.max(0, ...hits);
  return most === 0 ? null : hits.indexOf(most);
}

function plainName(name: string): string {
  return name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
}
