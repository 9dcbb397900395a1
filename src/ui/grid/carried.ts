import type { CellAddress, CellRange } from '../../base/address.ts';
import { isFault } from '../../base/value.ts';
import { cellAt, sheetWithId } from '../../workbook/cells.ts';
import { copyOf, sizeOf } from '../../workbook/command/copy.ts';
import type { Command } from '../../workbook/commands.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../../workbook/document.ts';
import type { Deed, History } from '../../workbook/history.ts';
import { showValue } from '../../workbook/show.ts';
import { shownValue } from '../../workbook/standing.ts';
import { readTsv, writeTsv } from '../../workbook/tsv.ts';
import type { Values } from '../../workbook/values.ts';
import { isWhole } from './selection.ts';
import { textToPaste } from './text-to-paste.ts';

/** Cells that were copied or cut, to be put in elsewhere. */
export interface Carried {
  readonly kind: 'copy' | 'cut';
  readonly sheetId: string;
  readonly range: CellRange;
  /** What went onto the clipboard with them. While it is still there, nothing else was copied since, here or outside. */
  readonly text: string;
  /** The last deed that moved rows or columns, as it was then; another one may have moved these cells. */
  readonly lines: Deed | null;
}

/** What a paste does, and which cells it covers. */
export type Paste =
  | { readonly type: 'paste'; readonly command: Command; readonly covers: CellRange }
  | { readonly type: 'refused'; readonly sentence: string };

export interface PasteInto {
  readonly workbook: Workbook;
  readonly values: Values;
  readonly history: History;
  readonly sheet: Sheet;
  readonly range: CellRange;
  readonly isValuesOnly: boolean;
}

/** Cells as text for other programs: what each of them shows. */
export function shownText(sheet: Sheet, values: Values, range: CellRange): string {
  return writeTsv(
    block(sizeOf(range), (down, right) => {
      const address = offset(range.from, down, right);
      const cell = cellAt(sheet, address);
      return showValue(shownValue(sheet, address, cell, values), cell?.unit, cell?.format).text;
    }),
  );
}

export function lastLinesDeed({ done }: History): Deed | null {
  const movesLines = ({ difference }: Deed) =>
    difference.some(({ type }) => type === 'lines' || type === 'lines_place' || type === 'sheet');
  return done.findLast(movesLines) ?? null;
}

/** Reads the clipboard: the cells that are carried, where their text is still on it, else the text itself. */
export function pasteOf(text: string, carried: Carried | null, into: PasteInto): Paste {
  if (!carried || carried.text !== text.replaceAll('\r\n', '\n')) return pasteText(readTsv(text), into);
  const source = sheetWithId(into.workbook, carried.sheetId);
  if (!source || carried.lines !== lastLinesDeed(into.history)) {
    return refused(
      'Rows, columns or sheets have changed since these cells were taken, so they may not be the same any more. Copy or cut them once more.',
    );
  }
  return into.isValuesOnly ? pasteValues(source, carried.range, into) : pasteCells(source, carried, into);
}

function pasteText(rows: readonly (readonly string[])[], into: PasteInto): Paste {
  const columns = Math.max(...rows.map((row) => row.length));
  const size = sizeToCover({ rows: rows.length, columns }, into.range);
  const tiled = Array.from({ length: size.rows }, (_, down) => {
    const row = rows[down % rows.length] ?? [];
    // A row that ends early leaves the cells after it alone.
    if (size.columns === columns) return row;
    return Array.from({ length: size.columns }, (_, right) => row[right % columns] ?? '');
  });
  return write(tiled, into);
}

function pasteValues(source: Sheet, range: CellRange, into: PasteInto): Paste {
  const missing: CellAddress[] = [];
  const rows = tiledBlock(range, into, (from, target) => {
    const cell = cellAt(source, from);
    const value = shownValue(source, from, cell, into.values);
    if (!isFault(value)) return textToPaste(value, cell, target);
    missing.push(from);
    return '';
  });
  if (missing.length > 0)
    return refused(
      'Some of these cells have no figure, so there is no value to put in. See to them first, or paste the formulas.',
    );
  return write(rows, into);
}

function pasteCells(source: Sheet, { kind, range }: Carried, into: PasteInto): Paste {
  const size = kind === 'cut' ? sizeOf(range) : sizeToCover(sizeOf(range), into.range);
  const covers = blockFrom(into.range.from, size);
  const from = { sheet: source.id, range };
  if (kind === 'cut') {
    return {
      type: 'paste',
      command: { type: 'move', from, to: { sheet: into.sheet.id, at: covers.from } },
      covers,
    };
  }
  const asks = asksOtherwise(source, range, into);
  return asks
    ? write(
        tiledBlock(range, into, (from, target, at) => entryOf(cellAt(source, from), target, from, at)),
        into,
      )
    : { type: 'paste', command: { type: 'copy', from, to: { sheet: into.sheet.id, range: covers } }, covers };
}

/** Whether a given would be covered by a cell that asks something else. Its question stays; what is pasted answers it. */
function asksOtherwise(source: Sheet, range: CellRange, into: PasteInto): boolean {
  const differs = tiledBlock(range, into, (from, target) => {
    const cell = cellAt(source, from);
    const asks = (one: Cell | null) => JSON.stringify([one?.question, one?.unit]);
    return target?.question !== undefined && asks(cell) !== asks(target) ? 'differs' : '';
  });
  return differs.flat().includes('differs');
}

function entryOf(cell: Cell | null, target: Cell | null, from: CellAddress, at: CellAddress): string {
  const content = copyOf(cell, at.row - from.row, at.column - from.column)?.content ?? null;
  return isFormula(content) ? `=${content.formula}` : textToPaste(content, cell, target);
}

function write(rows: readonly (readonly string[])[], { sheet, range }: PasteInto): Paste {
  const columns = Math.max(...rows.map((row) => row.length));
  const covers = blockFrom(range.from, { rows: rows.length, columns });
  return { type: 'paste', command: { type: 'write', sheet: sheet.id, at: range.from, rows }, covers };
}

interface Size {
  readonly rows: number;
  readonly columns: number;
}

/** As often as it goes into what is selected, once at least; whole rows and columns are no measure for that. */
function sizeToCover(size: Size, range: CellRange): Size {
  const selected = sizeOf(range);
  const rows = isWhole(range, 'column') ? 1 : Math.floor(selected.rows / size.rows);
  const columns = isWhole(range, 'row') ? 1 : Math.floor(selected.columns / size.columns);
  return { rows: size.rows * Math.max(1, rows), columns: size.columns * Math.max(1, columns) };
}

/** The entries of a paste, over and over where more is selected; each is told where it comes from and where it goes. */
function tiledBlock(
  range: CellRange,
  { sheet, range: selected }: PasteInto,
  entry: (from: CellAddress, target: Cell | null, at: CellAddress) => string,
): readonly (readonly string[])[] {
  const size = sizeOf(range);
  return block(sizeToCover(size, selected), (down, right) => {
    const at = offset(selected.from, down, right);
    return entry(offset(range.from, down % size.rows, right % size.columns), cellAt(sheet, at), at);
  });
}

function block(
  { rows, columns }: Size,
  text: (down: number, right: number) => string,
): readonly (readonly string[])[] {
  return Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (_, right) => text(down, right)),
  );
}

function blockFrom(from: CellAddress, { rows, columns }: Size): CellRange {
  return { from, to: offset(from, rows - 1, columns - 1) };
}

function offset({ row, column }: CellAddress, down: number, right: number): CellAddress {
  return { row: row + down, column: column + right };
}

function refused(sentence: string): Paste {
  return { type: 'refused', sentence };
}
