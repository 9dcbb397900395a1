import { done, failed, type Outcome } from '../../base/outcome.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Command, CommandFault } from '../../workbook/commands.ts';
import type { Difference } from '../../workbook/difference.ts';
import { isFormula, type Sheet, type Workbook } from '../../workbook/document.ts';
import { rowsAround } from '../../workbook/table-rows.ts';
import { tried } from '../trial.ts';
import { type AllowanceLine, allowanceLine, type LinePlace, linesRepeating } from './line.ts';

/** A line goes. One that the table has ready to be filled in becomes free again, with what hangs on it; any other is taken
 *  out with its row. Null where there is no such line. */
export function takeOutLine(
  workbook: Workbook,
  place: LinePlace,
): Outcome<{ readonly workbook: Workbook; readonly difference: Difference } | null, CommandFault> {
  const line = allowanceLine(workbook, place);
  if (!line) return done(null);
  const { sheet, key } = line;
  const isForm = cellAt(sheet, key)?.role === 'given';
  const command: Command = isForm
    ? { type: 'clear', sheet: sheet.id, addresses: filledIn(line) }
    : { type: 'take_out_line', sheet: sheet.id, address: key };
  const outcome = tried(workbook, [command]);
  return outcome.ok ? outcome : failed(outcome.fault);
}

function filledIn(line: AllowanceLine) {
  const { sheet, row, key } = line;
  const range = rowsAround(sheet, key);
  const own = givens(sheet, row).filter(
    ({ column }) => !range || (column >= range.from.column && column <= range.to.column),
  );
  return [...own, ...linesRepeating(line).flatMap((one) => givens(sheet, one.row))];
}

function givens(sheet: Sheet, row: number) {
  return (sheet.rows[row] ?? []).flatMap((cell, column) =>
    cell?.role === 'given' && !isFormula(cell.content) ? [{ row, column }] : [],
  );
}
