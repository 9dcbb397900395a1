import type { Corner, Reference } from './expression.ts';
import { limits } from './limits.ts';
import { type Rewriting, rewritten } from './rewrite.ts';

/** The formula as it reads when its cell is copied that far: all that is not fixed with `$` goes along. References
 *  that would leave the sheet become `#REF!`. */
export function shiftedForCopy(text: string, rowsDown: number, columnsRight: number): string {
  if (rowsDown === 0 && columnsRight === 0) return text;
  const shifted = (corner: Corner): Corner => ({
    ...corner,
    row: corner.rowFixed ? corner.row : corner.row + rowsDown,
    column: corner.columnFixed ? corner.column : corner.column + columnsRight,
  });
  return rewritten(text, (reference: Reference): Rewriting => {
    if (reference.type === 'name') return null;
    const start = shifted(reference.type === 'cell' ? reference : reference.start);
    const end = shifted(reference.type === 'cell' ? reference : reference.end);
    if (!isOnSheet(start) || !isOnSheet(end)) return { type: 'gone' };
    return { type: 'cells', sheet: reference.sheet, start, end };
  });
}

function isOnSheet({ row, column }: Corner): boolean {
  return row >= 0 && row < limits.rows && column >= 0 && column < limits.columns;
}
