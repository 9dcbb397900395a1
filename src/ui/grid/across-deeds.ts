import { type CellRange, writeAddress } from '../../base/address.ts';
import { isEmptyCell, mayGoAcross } from '../../workbook/across.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { DressCommand } from '../../workbook/command/dress.ts';
import { isFormula, type Sheet } from '../../workbook/document.ts';
import { isWhole } from './selection.ts';

/** What can be done about a heading or words that go across the columns beside them. */
export interface AcrossDeed {
  readonly says: string;
  readonly command: DressCommand;
}

/** For cells of one row, the first with words and the others empty; or for one cell that goes across already. */
export function acrossDeeds(sheet: Sheet, range: CellRange): readonly AcrossDeed[] {
  const { from, to } = range;
  const head = cellAt(sheet, from);
  if (from.row !== to.row || isWhole(range, 'row') || !head || !mayGoAcross(head)) return [];
  const columns = to.column - from.column + 1;
  const dress = (across: number | null): DressCommand => ({
    type: 'dress',
    sheet: sheet.id,
    addresses: [from],
    dress: { across },
  });
  const others = Array.from({ length: columns - 1 }, (_, at) => ({
    row: from.row,
    column: from.column + at + 1,
  }));
  const isRoom = others.every((address) => isEmptyCell(cellAt(sheet, address)));
  const hasWords = head.content !== null && !isFormula(head.content);
  const place = writeAddress(from);
  return [
    ...(columns > 1 && isRoom && hasWords && head.across !== columns
      ? [{ says: `Let ${place} go across to ${writeAddress(to)}`, command: dress(columns) }]
      : []),
    ...(head.across ? [{ says: `Let ${place} stand in its own column`, command: dress(null) }] : []),
  ];
}
