import type { CellRange } from '../base/address.ts';
import type { Corner } from './expression.ts';
import { type Rewriting, rewritten } from './rewrite.ts';

/** The lines of a table, on the sheet that holds them. */
export interface TableLines {
  readonly sheet: string;
  readonly range: CellRange;
}

/** The formula as it reads one line further down in its table: what it reads of lines of these tables goes one on, all of
 *  the lines together and everything else stay. What is fixed with `$` stays too. */
export function onNextLine(text: string, ownSheet: string, tables: readonly TableLines[]): string {
  return rewritten(text, (reference): Rewriting => {
    if (reference.type === 'name') return null;
    const sheet = (reference.sheet ?? ownSheet).toLowerCase();
    const table = tables.find((one) => one.sheet.toLowerCase() === sheet)?.range;
    if (!table) return null;
    const [start, end] =
      reference.type === 'cell' ? [reference, reference] : [reference.start, reference.end];
    const isAll =
      !start.rowFixed &&
      !end.rowFixed &&
      start.row !== end.row &&
      Math.min(start.row, end.row) <= table.from.row &&
      Math.max(start.row, end.row) >= table.to.row;
    if (isAll) return null;
    const next = (corner: Corner): Corner => {
      const isLine = corner.row >= table.from.row && corner.row <= table.to.row;
      return isLine && !corner.rowFixed ? { ...corner, row: corner.row + 1 } : corner;
    };
    return { type: 'cells', sheet: reference.sheet, start: next(start), end: next(end) };
  });
}
