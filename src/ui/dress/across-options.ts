import { type CellAddress, columnName } from '../../base/address.ts';
import { isEmptyCell } from '../../workbook/across.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';
import type { Shared } from '../../workbook/shared-dress.ts';
import type { Option } from './dress-words.ts';

const mostOffered = 12;

/** Over how many columns a cell can go from where it stands: up to the next one that is filled. What it does now is offered
 *  in any case. */
export function acrossOptions(
  sheet: Sheet,
  { row, column }: CellAddress,
  now: Shared<number | null>,
): readonly Option<number | null>[] {
  let room = 1;
  while (room < mostOffered && isEmptyCell(cellAt(sheet, { row, column: column + room }))) room += 1;
  const wide = Array.from({ length: room - 1 }, (_, at) => at + 2);
  const own = now === 'mixed' ? null : now.all;
  if (own !== null && !wide.includes(own)) wide.push(own);
  return [
    { value: null, says: 'its own column' },
    ...wide.map((columns) => ({
      value: columns,
      says: `${columns} columns, ${columnName(column)} to ${columnName(column + columns - 1)}`,
    })),
  ];
}
