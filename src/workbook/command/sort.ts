import { type CellRange, isInRange, writeAddress } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { afterRowOrder, type RowOrder, rangeAfterOrder } from '../../formula/order.ts';
import { cellAt, cellsOf, sheetWithId } from '../cells.ts';
import { applyDifference, type Change, type Difference } from '../difference.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../document.ts';
import { isSameSheet, keptPlacesAfter } from '../kept-places.ts';
import { goingAlong, type TornPair } from '../paired-ranges.ts';
import { addressesIn } from './move.ts';
import { changeOf } from './write.ts';

/** The rows of a block put in another order: whatever points to one of them, names too, follows it. Tables of other sheets
 *  that follow it line by line are put in the same order. */
export interface SortCommand {
  readonly type: 'sort_rows';
  readonly sheet: string;
  readonly range: CellRange;
  /** Which row comes to stand first, second and so on, counted from 0 inside the block. Each row once. */
  readonly order: readonly number[];
}

export type SortFault =
  | { readonly code: 'no_such_sheet' }
  /** Something reads or names only some of the rows, which would no longer lie together. */
  | { readonly code: 'rows_torn'; readonly reader: string; readonly reads: string }
  /** A row reads others of them by where they stand, so that in another order it would come to something else. */
  | {
      readonly code: 'order_counts';
      readonly reader: string;
      readonly reads: string;
      readonly where: 'above' | 'below' | 'around';
    }
  /** Something finds a line by its place beside lines that stay. */
  | ({ readonly code: 'lines_torn' } & TornPair);

export function sortRows(
  workbook: Workbook,
  { sheet: id, range, order }: SortCommand,
): Outcome<Difference, SortFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  const going = goingAlong(workbook, sheet, range);
  if (!going.ok) return failed({ code: 'lines_torn', ...going.fault });
  const blocks = going.value;
  const changes: Change[] = [];
  let sofar = workbook;
  for (const block of blocks) {
    const sorted = sortBlock(sofar, { ...block, order });
    if (!sorted.ok) return sorted;
    changes.push(...sorted.value);
    sofar = applyDifference(sofar, sorted.value);
  }
  return done(changes);
}

function sortBlock(
  workbook: Workbook,
  { sheet: id, range, order }: Omit<SortCommand, 'type'>,
): Outcome<Difference, SortFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  const top = range.from.row;
  const places = new Map(order.map((from, to) => [top + from, top + to]));
  if (places.size !== range.to.row - top + 1) throw new Error('An order names each of its rows once.');
  const rows: RowOrder = { sheet: sheet.name, range, placeOf: (row) => places.get(row) ?? row };

  const changes: Change[] = [];
  const taken = new Map<string, Cell | null>();
  for (const own of workbook.sheets) {
    for (const { address, cell } of cellsOf(own)) {
      const isMoved = own === sheet && isInRange(address, range);
      const outcome = isFormula(cell.content)
        ? afterRowOrder(cell.content.formula, rows, own.name)
        : done(null);
      if (!outcome.ok) {
        const reader = `${own.name}!${writeAddress(address)}`;
        const { written: reads, cells } = outcome.fault;
        const { row } = address;
        const isOneOfThem = own === sheet && row >= top && row <= range.to.row;
        if (!isOneOfThem) return failed({ code: 'rows_torn', reader, reads });
        const where = cells.from.row > row ? 'below' : cells.to.row < row ? 'above' : 'around';
        return failed({ code: 'order_counts', reader, reads, where });
      }
      const isSame =
        outcome.value === null || !isFormula(cell.content) || outcome.value === cell.content.formula;
      const after = isSame ? cell : { ...cell, content: { formula: outcome.value ?? '' } };
      if (isMoved) taken.set(writeAddress({ ...address, row: rows.placeOf(address.row) }), after);
      else changes.push(...changeOf(own, address, cell, after));
    }
  }
  for (const address of addressesIn(range)) {
    const after = taken.get(writeAddress(address)) ?? null;
    changes.push(...changeOf(sheet, address, cellAt(sheet, address), after));
  }
  for (const [name, before] of Object.entries(workbook.names)) {
    if (before.sheet !== id) continue;
    const after = rangeAfterOrder(before.range, rows);
    if (after === null) return failed({ code: 'rows_torn', reader: `The name ${name}`, reads: name });
    if (after !== before.range)
      changes.push({ type: 'name', name, before, after: { ...before, range: after } });
  }
  changes.push(
    ...hiddenAfter(sheet, rows),
    ...keptPlacesAfter(workbook, (place) => {
      if (!isSameSheet(place.sheet, sheet.name) || !isInRange(place, range)) return place;
      return { ...place, row: rows.placeOf(place.row) };
    }),
  );
  return done(changes);
}

/** A row that is not shown stays out of sight wherever it goes. */
function hiddenAfter({ id, hiddenRows: before = [] }: Sheet, { placeOf }: RowOrder): readonly Change[] {
  const after = before.map(placeOf).sort((one, other) => one - other);
  return after.join() === before.join() ? [] : [{ type: 'hidden_rows', sheet: id, before, after }];
}
