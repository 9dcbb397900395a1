import { type CellAddress, writeAddress } from '../base/address.ts';
import { done, failed, type Outcome } from '../base/outcome.ts';
import { cellAt, sheetWithId } from '../workbook/cells.ts';
import { isFormula, type Workbook } from '../workbook/document.ts';
import { readEntry } from '../workbook/entry.ts';
import { locksHold } from '../workbook/locked.ts';
import { showValue } from '../workbook/show.ts';
import { wordCommandFault } from '../workbook/wording.ts';
import { formulaRefusal } from './formula-check.ts';

/** How an entry would be read: `12′ 4 ½″`, or why it would be refused. Null where the text says it all by itself. */
export function previewEntry(
  workbook: Workbook,
  sheetId: string,
  address: CellAddress,
  typed: string,
): Outcome<string, string> | null {
  const sheet = sheetWithId(workbook, sheetId);
  if (!sheet) return null;
  const cell = cellAt(sheet, address);
  if (cell?.locked && locksHold(workbook)) {
    const place = `${sheet.name}!${writeAddress(address)}`;
    return failed(wordCommandFault({ code: 'locked_cells', place, count: 1 }));
  }
  if (typed.trim() === '') return null;
  const entry = readEntry(typed, cell);
  if (!entry.ok) return failed(wordCommandFault(entry.fault));
  const { content, unit = cell?.unit } = entry.value;
  if (isFormula(content)) {
    const refusal = formulaRefusal(workbook, content.formula);
    return refusal === null ? null : failed(refusal);
  }
  if (typeof content !== 'number' || !unit) return null;
  const tape = { type: 'tape', denominator: 64, round: 'nearest', feet: true } as const;
  const isLength = unit === 'in' || unit === 'ft';
  return done(showValue(content, unit, isLength ? tape : cell?.format).text);
}
