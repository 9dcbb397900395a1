import type { CellRange } from '../base/address.ts';
import type { CellReference } from '../formula/expression.ts';
import { referencesIn } from '../formula/references.ts';
import { cellsOf, sheetNamed } from './cells.ts';
import { isFormula, type NamedRange, type Sheet, type Workbook } from './document.ts';

/** The tables of other sheets that follow a table line by line, one after another: each of their lines reads the line that
 *  stands in the same place, cell by cell, and no other one of it. Those that follow a follower are among them. */
export function followersOf(workbook: Workbook, sheet: Sheet, range: CellRange): readonly NamedRange[] {
  const all: NamedRange[] = [{ sheet: sheet.id, range }];
  // The list grows while it is walked: who follows a follower is found by it.
  for (const leader of all) {
    const leading = workbook.sheets.find(({ id }) => id === leader.sheet);
    if (!leading) continue;
    for (const other of workbook.sheets) {
      if (all.some((one) => one.sheet === other.id)) continue;
      const block = blockAfter(other, leading, leader.range);
      if (block) all.push({ sheet: other.id, range: block });
    }
  }
  return all.slice(1);
}

/** Where the lines of a sheet stand that follow a block of another; null where they do not. */
function blockAfter(sheet: Sheet, leading: Sheet, { from, to }: CellRange): CellRange | null {
  const reads = lineReads(sheet, leading, { from, to });
  const height = to.row - from.row + 1;
  const offsets = [...new Set(reads.map(({ offset }) => offset))];
  const of = (offset: number) => reads.filter((one) => one.offset === offset);
  const whole = offsets.filter((offset) => new Set(of(offset).map(({ row }) => row)).size === height);
  const [offset] = whole;
  if (offset === undefined || whole.length > 1) return null;
  const [first, last] = [from.row + offset, to.row + offset];
  const own = reads.filter(({ row }) => row >= first && row <= last);
  if (own.some((one) => one.offset !== offset)) return null;
  const columns = tableColumns(sheet, first, last, Math.min(...own.map(({ column }) => column)));
  return { from: { row: first, column: columns.left }, to: { row: last, column: columns.right } };
}

/** Every single cell of the block that a formula reads and that goes along when the formula is copied. */
function lineReads(sheet: Sheet, leading: Sheet, { from, to }: CellRange) {
  const name = leading.name.toLowerCase();
  const isRead = (one: CellReference) =>
    one.sheet?.toLowerCase() === name &&
    !one.rowFixed &&
    one.row >= from.row &&
    one.row <= to.row &&
    one.column >= from.column &&
    one.column <= to.column;
  return [...cellsOf(sheet)].flatMap(({ address, cell }) => {
    // Most formulas of a large workbook read another sheet or none, and need not be taken apart.
    if (!isFormula(cell.content) || !cell.content.formula.toLowerCase().includes(name)) return [];
    return referencesIn(cell.content.formula).flatMap((one) =>
      one.type === 'cell' && isRead(one) ? [{ ...address, offset: address.row - one.row }] : [],
    );
  });
}

/** The filled columns beside one of them, for the lines between two rows. */
function tableColumns(sheet: Sheet, first: number, last: number, column: number) {
  const isColumn = (at: number) =>
    at >= 0 && sheet.rows.slice(first, last + 1).some((cells) => (cells[at] ?? null) !== null);
  let [left, right] = [column, column];
  while (isColumn(left - 1)) left -= 1;
  while (isColumn(right + 1)) right += 1;
  return { left, right };
}

/** A table with the one that leads it, if it follows one, and with all that follow that one, its own among them. */
export function tablesTogether(workbook: Workbook, sheet: Sheet, range: CellRange): readonly NamedRange[] {
  const own: NamedRange = { sheet: sheet.id, range };
  const climbed = new Set([sheet.id]);
  let top = own;
  let together: readonly NamedRange[] = [own, ...followersOf(workbook, sheet, range)];
  for (let next = leaderOf(workbook, top, climbed); next; next = leaderOf(workbook, top, climbed)) {
    climbed.add(next.leader.sheet);
    top = next.leader;
    together = [top, ...next.followers];
  }
  return together;
}

/** The table whose lines a table reads one by one, with all that follow it. */
function leaderOf(workbook: Workbook, { sheet: id, range }: NamedRange, climbed: ReadonlySet<string>) {
  const sheet = workbook.sheets.find((one) => one.id === id);
  const first = (sheet?.rows[range.from.row] ?? []).slice(range.from.column, range.to.column + 1);
  for (const cell of first) {
    if (!cell || !isFormula(cell.content)) continue;
    for (const one of referencesIn(cell.content.formula)) {
      if (one.type !== 'cell' || one.sheet === null || one.rowFixed) continue;
      const leading = sheetNamed(workbook, one.sheet);
      if (!leading || climbed.has(leading.id)) continue;
      const last = one.row + range.to.row - range.from.row;
      const columns = tableColumns(leading, one.row, last, one.column);
      const lines: CellRange = {
        from: { row: one.row, column: columns.left },
        to: { row: last, column: columns.right },
      };
      const followers = followersOf(workbook, leading, lines);
      const isLed = followers.some((own) => own.sheet === id && own.range.from.row === range.from.row);
      if (isLed) return { leader: { sheet: leading.id, range: lines }, followers };
    }
  }
  return null;
}
