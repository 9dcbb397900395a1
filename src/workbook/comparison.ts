import { type CellAddress, writeAddress } from '../base/address.ts';
import { type CellValue, isFault } from '../base/value.ts';
import { cellAt, sheetWithId } from './cells.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from './document.ts';
import type { KeptWorkbook } from './file.ts';
import { labelOf } from './label.ts';
import { namedBlock, type OrderLine, orderLines } from './order.ts';
import { type RowPair, rowPairs } from './row-pairs.ts';
import { type Shown, showValue } from './show.ts';
import { shownValue } from './standing.ts';

/** What a cell is in the trade's words. An allowance is a plain number or word of the shop's own sheet. */
export type ComparedKind = 'given' | 'allowance' | 'figured' | 'check' | 'words';

/** One cell as it stands in one of two workbooks. */
export interface Side {
  readonly value: CellValue;
  readonly shown: Shown;
  /** Without the `=`; null where what stands there was typed. */
  readonly formula: string | null;
}

/** A cell that is not the same in two workbooks. */
export interface CellComparison {
  /** The sheet's name: after, or before where it is gone. */
  readonly sheet: string;
  readonly sheetId: string;
  readonly address: CellAddress;
  /** `Wrap!C4` */
  readonly place: string;
  /** `Stretch-out of S1`; empty where the sheet gives the cell no name. */
  readonly label: string;
  readonly kind: ComparedKind;
  /** Null where there is no such cell. */
  readonly before: Side | null;
  readonly after: Side | null;
  /** How much more it is, where both are numbers. */
  readonly by: number | null;
}

export const allowancesSheet = 'Allowances';

/** What is left of exact figures after sums in binary fractions, as a share of the figure. */
const noise = 1e-12;

/** Every cell whose value, content or formula is another one, sheet by sheet and row by row. Sheets go together by their
 *  id, or else by their name; rows by what stands first in them. A formula that was written otherwise and comes to the same is told
 *  too; looks are not. */
export function compareCells(before: KeptWorkbook, after: KeptWorkbook): readonly CellComparison[] {
  const met = new Set<Sheet>();
  const sheets: SheetPair[] = after.workbook.sheets.map((now) => {
    const old = counterpart(before.workbook, now) ?? null;
    if (old) met.add(old);
    return { old, now, rows: pairsOf(old, now, before, after) };
  });
  for (const old of before.workbook.sheets) {
    if (!met.has(old)) sheets.push({ old, now: null, rows: pairsOf(old, null, before, after) });
  }
  const isShifted = sheets.some(
    ({ old, now, rows }) => old && now && rows.some((pair) => pair.before !== pair.after),
  );
  return sheets.flatMap((pair) => compareSheet(pair, before, after, isShifted));
}

interface SheetPair {
  readonly old: Sheet | null;
  readonly now: Sheet | null;
  readonly rows: readonly RowPair[];
}

/** The sheet of another workbook that is the same one: by its id, or else by its name. */
export function counterpart(workbook: Workbook, sheet: Sheet): Sheet | undefined {
  const name = sheet.name.toLowerCase();
  return sheetWithId(workbook, sheet.id) ?? workbook.sheets.find((one) => one.name.toLowerCase() === name);
}

function compareSheet(
  { old, now, rows }: SheetPair,
  before: KeptWorkbook,
  after: KeptWorkbook,
  isShifted: boolean,
): readonly CellComparison[] {
  const shown = now ?? old;
  if (!shown) return [];
  if (old === now && before.values.get(shown.name) === after.values.get(shown.name)) return [];
  return rows.flatMap((pair): readonly CellComparison[] => {
    const width = Math.max(widthOf(old, pair.before), widthOf(now, pair.after));
    return Array.from({ length: width }, (_, column) => column).flatMap((column) => {
      const was = sideOf(old, pair.before, column, before);
      const is = sideOf(now, pair.after, column, after);
      if (isSame(was, is, isShifted)) return [];
      const [own, row, { values }] =
        now && pair.after !== null ? [now, pair.after, after] : [old ?? shown, pair.before ?? 0, before];
      const address = { row, column };
      const cell =
        cellAt(own, address) ?? (old && pair.before !== null && cellAt(old, { row: pair.before, column }));
      return [
        {
          sheet: shown.name,
          sheetId: shown.id,
          address,
          place: `${shown.name}!${writeAddress(address)}`,
          label: labelOf(own, address, values),
          kind: kindOf(shown, cell || null),
          before: was,
          after: is,
          by: moreBy(was?.value ?? null, is?.value ?? null),
        },
      ];
    });
  });
}

function pairsOf(
  old: Sheet | null,
  now: Sheet | null,
  before: KeptWorkbook,
  after: KeptWorkbook,
): readonly RowPair[] {
  if (old && now) {
    return rowPairs({ sheet: old, values: before.values }, { sheet: now, values: after.values });
  }
  const rows = Array.from({ length: (now ?? old)?.rows.length ?? 0 }, (_, row) => row);
  return rows.map((row) => ({ before: old ? row : null, after: now ? row : null }));
}

function widthOf(sheet: Sheet | null, row: number | null): number {
  return sheet && row !== null ? (sheet.rows[row]?.length ?? 0) : 0;
}

function sideOf(
  sheet: Sheet | null,
  row: number | null,
  column: number,
  { values }: KeptWorkbook,
): Side | null {
  if (!sheet || row === null) return null;
  const address = { row, column };
  const cell = cellAt(sheet, address);
  if (!cell) return null;
  const value = shownValue(sheet, address, cell, values);
  const formula = isFormula(cell.content) ? cell.content.formula : null;
  if (formula === null && value === null) return null;
  return { value, shown: showValue(value, cell.unit, cell.format), formula };
}

/** Where rows have moved, formulas that read them are written otherwise and mean the same. */
function isSame(one: Side | null, other: Side | null, isShifted: boolean): boolean {
  // A formula that shows nothing is worth no more words than no formula.
  if (one === null || other === null) return (one ?? other)?.shown.type === 'blank' || one === other;
  if (!isSameValue(one.value, other.value)) return false;
  return one.formula === other.formula || (isShifted && one.formula !== null && other.formula !== null);
}

function isSameValue(one: CellValue, other: CellValue): boolean {
  if (isFault(one) || isFault(other)) {
    return isFault(one) && isFault(other) && one.fault === other.fault && one.sentence === other.sentence;
  }
  if (typeof one === 'number' && typeof other === 'number') {
    return Math.abs(one - other) <= noise * Math.max(Math.abs(one), Math.abs(other));
  }
  // A blank that a formula gives shows as nothing does.
  return (one === '' ? null : one) === (other === '' ? null : other);
}

function kindOf(sheet: Sheet, cell: Cell | null): ComparedKind {
  if (cell?.role === 'check') return 'check';
  if (cell && isFormula(cell.content)) return 'figured';
  if (cell?.role === 'heading') return 'words';
  if (sheet.name.toLowerCase() === allowancesSheet.toLowerCase()) return 'allowance';
  return cell?.role === 'given' || typeof cell?.content === 'number' ? 'given' : 'words';
}

function moreBy(before: CellValue, after: CellValue): number | null {
  return typeof before === 'number' && typeof after === 'number' ? after - before : null;
}

/** One thing to buy in two workbooks. */
export interface OrderComparison {
  readonly item: string;
  readonly unit: string;
  /** Null where it is not on that order. */
  readonly before: OrderLine | null;
  readonly after: OrderLine | null;
  /** How many more; null where one of the two has no number. */
  readonly by: number | null;
  readonly isSame: boolean;
}

/** Both orders side by side, in the order of the later one; lines are the same by what and of what. Of two lines with the
 *  same words, each goes with its own turn. */
export function compareOrders(before: KeptWorkbook, after: KeptWorkbook): readonly OrderComparison[] {
  const old = orderLines(before).map((line) => ({ line, isMet: false }));
  const compared = orderLines(after).map((line): OrderComparison => {
    const met = old.find((one) => !one.isMet && sameThing(one.line, line));
    if (met) met.isMet = true;
    return comparedLine(met?.line ?? null, line);
  });
  return [...compared, ...old.flatMap(({ line, isMet }) => (isMet ? [] : [comparedLine(line, null)]))];
}

function sameThing(one: OrderLine, other: OrderLine): boolean {
  return one.item === other.item && one.unit === other.unit;
}

function comparedLine(before: OrderLine | null, after: OrderLine | null): OrderComparison {
  const { item = '', unit = '' } = after ?? before ?? {};
  const amount = (line: OrderLine | null) => (line ? line.quantity : 0);
  const by = moreBy(amount(before), amount(after));
  const told = (line: OrderLine | null) => line && (line.fault?.sentence ?? line.shows);
  return { item, unit, before, after, by, isSame: by === null ? told(before) === told(after) : by === 0 };
}

/** A single figure in two workbooks. */
export interface NamedComparison {
  readonly before: Side | null;
  readonly after: Side | null;
  readonly by: number | null;
  readonly isSame: boolean;
}

/** A single named figure in two workbooks, such as `price` or `labor_hours`; null where neither has it. */
export function compareNamed(
  before: KeptWorkbook,
  after: KeptWorkbook,
  name: string,
): NamedComparison | null {
  const [was, is] = [namedSide(before, name), namedSide(after, name)];
  if (!was && !is) return null;
  const isSame = isSameValue(was?.value ?? null, is?.value ?? null);
  return { before: was, after: is, by: moreBy(was?.value ?? null, is?.value ?? null), isSame };
}

/** The figure behind a name, by the first cell of its block; null where the workbook has none. */
export function namedSide(kept: KeptWorkbook, name: string): Side | null {
  const block = namedBlock(kept.workbook, name);
  const sheet = block ? sheetWithId(kept.workbook, block.sheet) : undefined;
  return block && sheet ? sideOf(sheet, block.range.from.row, block.range.from.column, kept) : null;
}
