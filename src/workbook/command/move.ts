import { type CellAddress, type CellRange, isInRange } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { afterMove } from '../../formula/move.ts';
import { cellAt, cellsOf, sheetWithId } from '../cells.ts';
import type { Change, Difference } from '../difference.ts';
import { type Cell, isFormula, type NamedRange, type Sheet, type Workbook } from '../document.ts';
import { isSameSheet, keptPlacesAfter } from '../kept-places.ts';
import { sizeOf } from './copy.ts';
import { changeOf, fitsOnSheet } from './write.ts';

/** Cells cut out and put elsewhere: whatever points to them, names too, follows. */
export interface MoveCommand {
  readonly type: 'move';
  readonly from: { readonly sheet: string; readonly range: CellRange };
  readonly to: { readonly sheet: string; readonly at: CellAddress };
}

export type MoveFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'off_the_sheet'; readonly rows: number; readonly columns: number };

export function moveCells(workbook: Workbook, { from, to }: MoveCommand): Outcome<Difference, MoveFault> {
  const source = sheetWithId(workbook, from.sheet);
  const target = sheetWithId(workbook, to.sheet);
  if (!source || !target) return failed({ code: 'no_such_sheet' });
  const { rows, columns } = sizeOf(from.range);
  if (!fitsOnSheet(to.at, rows, columns)) return failed({ code: 'off_the_sheet', rows, columns });
  const covered = coveredBy({ from, to });
  const down = to.at.row - from.range.from.row;
  const right = to.at.column - from.range.from.column;
  if (source === target && down === 0 && right === 0) return done([]);

  const move = {
    from: { sheet: source.name, range: from.range },
    to: { sheet: target.name, ...to.at },
  };
  const isTaken = (sheet: Sheet, address: CellAddress) => sheet === source && isInRange(address, from.range);
  const rewritten = (sheet: Sheet, address: CellAddress, cell: Cell | null): Cell | null => {
    if (!cell || !isFormula(cell.content)) return cell;
    const places = isTaken(sheet, address)
      ? { ownSheet: sheet.name, ownSheetAfter: target.name }
      : { ownSheet: sheet.name };
    const formula = afterMove(cell.content.formula, move, places);
    return formula === cell.content.formula ? cell : { ...cell, content: { formula } };
  };
  const after = (sheet: Sheet, address: CellAddress): Cell | null => {
    if (sheet === target && isInRange(address, covered)) {
      const taken = { row: address.row - down, column: address.column - right };
      return rewritten(source, taken, cellAt(source, taken));
    }
    return isTaken(sheet, address) ? null : rewritten(sheet, address, cellAt(sheet, address));
  };

  const changes: Change[] = [];
  for (const sheet of workbook.sheets) {
    const places = new Map(
      [...cellsOf(sheet)].map(({ address }) => [`${address.row} ${address.column}`, address]),
    );
    if (sheet === target) {
      for (const address of addressesIn(covered)) places.set(`${address.row} ${address.column}`, address);
    }
    for (const address of places.values()) {
      changes.push(...changeOf(sheet, address, cellAt(sheet, address), after(sheet, address)));
    }
  }
  return done([
    ...changes,
    ...namesAfter(workbook, source, from.range, target, covered, down, right),
    ...keptPlacesAfter(workbook, (place) => {
      if (isSameSheet(place.sheet, source.name) && isInRange(place, from.range)) {
        return { sheet: target.name, row: place.row + down, column: place.column + right };
      }
      return isSameSheet(place.sheet, target.name) && isInRange(place, covered) ? null : place;
    }),
  ]);
}

/** A name follows when all of its cells move, and is gone when all of them are covered. */
function namesAfter(
  workbook: Workbook,
  source: Sheet,
  moved: CellRange,
  target: Sheet,
  covered: CellRange,
  down: number,
  right: number,
): readonly Change[] {
  return Object.entries(workbook.names).flatMap(([name, before]): readonly Change[] => {
    const after = nameAfter(before);
    return after === before ? [] : [{ type: 'name', name, before, after }];
  });

  function nameAfter(named: NamedRange): NamedRange | null {
    const isWithin = (sheet: Sheet, range: CellRange) =>
      named.sheet === sheet.id && isInRange(named.range.from, range) && isInRange(named.range.to, range);
    if (isWithin(source, moved)) {
      const along = ({ row, column }: CellAddress) => ({ row: row + down, column: column + right });
      return {
        sheet: target.id,
        range: { from: along(named.range.from), to: along(named.range.to) },
      };
    }
    return isWithin(target, covered) ? null : named;
  }
}

export function* addressesIn({ from, to }: CellRange): Generator<CellAddress> {
  for (let row = from.row; row <= to.row; row += 1) {
    for (let column = from.column; column <= to.column; column += 1) yield { row, column };
  }
}

/** The blocks that a move takes cells from and puts them into. */
export function movedBlocks(command: Pick<MoveCommand, 'from' | 'to'>): readonly NamedRange[] {
  return [command.from, { sheet: command.to.sheet, range: coveredBy(command) }];
}

function coveredBy({ from, to }: Pick<MoveCommand, 'from' | 'to'>): CellRange {
  const { rows, columns } = sizeOf(from.range);
  return { from: to.at, to: { row: to.at.row + rows - 1, column: to.at.column + columns - 1 } };
}
