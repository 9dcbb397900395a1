import type { CellRange } from '../../base/address.ts';
import { mark } from './cell-marks.ts';
import { lineOf, type SheetLine } from './cell-place.ts';
import { type Drop, dropSide } from './drop.ts';
import { hasLine } from './selection.ts';

/** What row numbers and column letters show besides their name. */
export interface LineMarks {
  readonly range: CellRange;
  readonly dropping: Drop | null;
}

/** Marks row numbers and column letters of lines that the selection touches, of those that are selected from end to end,
 *  and where they would be let go. */
export function markLines(host: HTMLElement, marks: LineMarks): void {
  for (const element of host.querySelectorAll<HTMLElement>(lineNames)) {
    const line = lineOf(element);
    if (line) markLine(element, line, marks);
  }
}

const lineNames = '.ag-cell[col-id="row"], .ag-header-cell[col-id^="c"]';

export function markLine(element: HTMLElement, line: SheetLine, { range, dropping }: LineMarks): void {
  mark(element, 'data-reached', line.at >= range.from[line.axis] && line.at <= range.to[line.axis]);
  mark(element, 'data-whole-line', hasLine(range, line));
  mark(element, 'data-drop', dropSide(dropping, { [line.axis]: line.at }) ?? false);
}
