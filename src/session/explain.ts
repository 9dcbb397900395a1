import { type CellAddress, writeAddress } from '../base/address.ts';
import type { Calculator } from '../engine/calculator.ts';
import { parseFormula } from '../formula/parse.ts';
import { cellAt, sheetWithId } from '../workbook/cells.ts';
import { readCheck } from '../workbook/check.ts';
import { isFormula, type Sheet, type Workbook } from '../workbook/document.ts';
import { labelOf } from '../workbook/label.ts';
import { showValue } from '../workbook/show.ts';
import { shownValue } from '../workbook/standing.ts';
import type { Values } from '../workbook/values.ts';
import type { Ask, Say } from './ask.ts';
import { exactly } from './exactly.ts';
import type { Explanation } from './explanation.ts';
import { linksFrom, linkToPlace } from './links.ts';
import { sumOf } from './sum.ts';
import { workThrough } from './work-through.ts';

/** What can be said of a cell at once, from what stands in the workbook: everything but its working. */
export function glance(
  workbook: Workbook,
  values: Values,
  sheetId: string,
  address: CellAddress,
): Explanation {
  const sheet = sheetWithId(workbook, sheetId);
  const cell = sheet ? cellAt(sheet, address) : null;
  const value = sheet ? shownValue(sheet, address, cell, values) : null;
  const shown = showValue(value, cell?.unit, cell?.format);
  return {
    sheetId,
    address,
    place: `${sheet?.name ?? ''}!${writeAddress(address)}`,
    label: sheet ? labelOf(sheet, address, values) : '',
    role: cell?.role ?? 'empty',
    value,
    shown,
    unit: cell?.unit ?? null,
    exactly: exactly(value, cell),
    question: cell?.question ?? null,
    note: cell?.note ?? null,
    verdict: cell?.role === 'check' ? readCheck(value) : null,
    formula: cell && isFormula(cell.content) ? cell.content.formula : null,
    sum: null,
    decisions: [],
    calls: [],
    comesFrom: [],
    usedBy: [],
  };
}

/** The whole working of a cell: its formula taken apart, and each trade function in it asked once more with the values
 *  that it has now. The calculator must have taken in everything that was done. */
export async function explain(
  workbook: Workbook,
  values: Values,
  calculator: Calculator,
  sheet: Sheet,
  address: CellAddress,
): Promise<Explanation> {
  const plain = glance(workbook, values, sheet.id, address);
  const users = await calculator.dependents({ ...address, sheet: sheet.name });
  const usedBy = users.flatMap((user) => linkToPlace(workbook, values, user) ?? []);
  if (plain.formula === null) return { ...plain, usedBy };
  const { comesFrom, ...working } = await explainFormula(workbook, values, calculator, sheet, plain.formula);
  return { ...plain, ...working, comesFrom, usedBy };
}

/** The working of a formula that need not stand in any cell. */
export async function explainFormula(
  workbook: Workbook,
  values: Values,
  calculator: Calculator,
  sheet: Sheet,
  formula: string,
): Promise<Pick<Explanation, 'calls' | 'decisions' | 'sum' | 'comesFrom'>> {
  const parsed = parseFormula(formula);
  if (!parsed.ok) return { calls: [], decisions: [], sum: null, comesFrom: [] };
  const say: Say = ({ from, to }) => formula.slice(from, to);
  const ask: Ask = (parts) => calculator.evaluate(sheet.name, parts.map(say));
  const { calls, decisions } = await workThrough(parsed.value, say, ask);
  return {
    calls,
    decisions,
    sum: calls.length === 0 ? await sumOf(parsed.value, formula, ask) : null,
    comesFrom: linksFrom(workbook, values, sheet, parsed.value),
  };
}
