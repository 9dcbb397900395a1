import { type CellAddress, writeAddress } from '../base/address.ts';
import { type CellValue, isFault } from '../base/value.ts';
import { cellAt, cellsOf, sheetWithId } from './cells.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from './document.ts';
import type { KeptWorkbook } from './file.ts';
import { labelOf } from './label.ts';
import { namedBlock, type OrderLine, orderLines } from './order.ts';
import { type Shown, showValue } from './show.ts';
import { shownValue } from './standing.ts';
import { placeKey } from './values.ts';

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
 *  id, or else by their name; cells by their address. A formula that was written otherwise and comes to the same is told
 *  too; looks are not. */
export function compareCells(before: KeptWorkbook, after: KeptWorkbook): readonly CellComparison[] {
  const compared: CellComparison[] = [];
  const met = new Set<Sheet>();
  for (const sheet of after.workbook.sheets) {
    const old = counterpart(before.workbook, sheet);
    if (old) met.add(old);
    if (old === sheet && before.values.get(sheet.name) === after.values.get(sheet.name)) continue;
    compared.push(...compareSheet(old, sheet, before, after));
  }
  for (const sheet of before.workbook.sheets) {
    if (!met.has(sheet)) compared.push(...compareSheet(sheet, undefined, before, after));
  }
  return compared;
}

/** The sheet of another workbook that is the same one: by its id, or else by its name. */
export function counterpart(workbook: Workbook, sheet: Sheet): Sheet | undefined {
  const name = sheet.name.toLowerCase();
  return sheetWithId(workbook, sheet.id) ?? workbook.sheets.find((one) => one.name.toLowerCase() === name);
}

function compareSheet(
  old: Sheet | undefined,
  now: Sheet | undefined,
  before: KeptWorkbook,
  after: KeptWorkbook,
): readonly CellComparison[] {
  const shown = now ?? old;
  if (!shown) return [];
  return addressesOf(old, now).flatMap((address) => {
    const [was, is] = [sideOf(old, address, before), sideOf(now, address, after)];
    if (isSame(was, is)) return [];
    const cell = (now && cellAt(now, address)) ?? (old && cellAt(old, address)) ?? null;
    const { values } = now ? after : before;
    return [
      {
        sheet: shown.name,
        sheetId: shown.id,
        address,
        place: `${shown.name}!${writeAddress(address)}`,
        label: labelOf(shown, address, values),
        kind: kindOf(shown, cell),
        before: was,
        after: is,
        by: moreBy(was?.value ?? null, is?.value ?? null),
      },
    ];
  });
}

function addressesOf(old: Sheet | undefined, now: Sheet | undefined): readonly CellAddress[] {
  const addresses = new Map<number, CellAddress>();
  for (const sheet of [now, old]) {
    if (!sheet) continue;
    for (const { address } of cellsOf(sheet)) addresses.set(placeKey(address), address);
  }
  return [...addresses].sort(([one], [other]) => one - other).map(([, address]) => address);
}

function sideOf(sheet: Sheet | undefined, address: CellAddress, { values }: KeptWorkbook): Side | null {
  const cell = sheet ? cellAt(sheet, address) : null;
  if (!sheet || !cell) return null;
  const value = shownValue(sheet, address, cell, values);
  const formula = isFormula(cell.content) ? cell.content.formula : null;
  if (formula === null && value === null) return null;
  return { value, shown: showValue(value, cell.unit, cell.format), formula };
}

function isSame(one: Side | null, other: Side | null): boolean {
  if (one === null || other === null) return one === other;
  return one.formula === other.formula && isSameValue(one.value, other.value);
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
  return { item, unit, before, after, by: moreBy(amount(before), amount(after)) };
}

/** A single named figure in two workbooks, such as `price` or `labor_hours`; null where neither has it. */
export function compareNamed(
  before: KeptWorkbook,
  after: KeptWorkbook,
  name: string,
): { readonly before: Side | null; readonly after: Side | null; readonly by: number | null } | null {
  const [was, is] = [namedSide(before, name), namedSide(after, name)];
  return was || is ? { before: was, after: is, by: moreBy(was?.value ?? null, is?.value ?? null) } : null;
}

function namedSide(kept: KeptWorkbook, name: string): Side | null {
  const block = namedBlock(kept.workbook, name);
  const sheet = block ? sheetWithId(kept.workbook, block.sheet) : undefined;
  return block && sheet ? sideOf(sheet, block.range.from, kept) : null;
}
