import type { CellRange } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { cellAt, sheetWithId } from '../cells.ts';
import type { Change, Difference } from '../difference.ts';
import type { Cell, Content, Workbook } from '../document.ts';
import { seriesOf } from '../series.ts';
import { copyOf, sizeOf } from './copy.ts';
import { changeOf, fitsOnSheet } from './write.ts';

/** Cells continued over their neighbours: formulas shift, plain series of numbers and of piece marks go on. */
export interface FillCommand {
  readonly type: 'fill';
  readonly sheet: string;
  readonly from: CellRange;
  /** Holds `from`, and is wider or taller than it, in one way. */
  readonly to: CellRange;
}

export type FillFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'off_the_sheet'; readonly rows: number; readonly columns: number };

export function fillCells(
  workbook: Workbook,
  { sheet: id, from, to }: FillCommand,
): Outcome<Difference, FillFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  const { rows, columns } = sizeOf(to);
  if (!fitsOnSheet(to.from, rows, columns)) return failed({ code: 'off_the_sheet', rows, columns });
  const axis = sizeOf(from).rows === rows ? 'column' : 'row';
  const across = axis === 'row' ? 'column' : 'row';
  const changes: Change[] = [];
  for (let line = from.from[across]; line <= from.to[across]; line += 1) {
    const at = (place: number) => ({
      row: place,
      column: line,
      ...(axis === 'column' ? { row: line, column: place } : {}),
    });
    const first = from.from[axis];
    const count = from.to[axis] - first + 1;
    const pattern = Array.from({ length: count }, (_, index) => cellAt(sheet, at(first + index)));
    const series = seriesOf(pattern.map((cell) => cell?.content ?? null));
    for (let place = to.from[axis]; place <= to.to[axis]; place += 1) {
      if (place >= first && place < first + count) continue;
      const steps = place - first;
      const index = ((steps % count) + count) % count;
      const distance = place - (first + index);
      const cell = pattern[index] ?? null;
      const copied = axis === 'row' ? copyOf(cell, distance, 0) : copyOf(cell, 0, distance);
      const after = series && copied ? withContent(copied, series(steps)) : copied;
      changes.push(...changeOf(sheet, at(place), cellAt(sheet, at(place)), after));
    }
  }
  return done(changes);
}

function withContent({ typed: _, ...cell }: Cell, content: Content): Cell {
  return { ...cell, content };
}
