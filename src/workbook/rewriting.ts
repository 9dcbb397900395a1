import { cellsOf } from './cells.ts';
import type { Change } from './difference.ts';
import { isFormula, type Workbook } from './document.ts';

/** The changes that rewrite every formula of a workbook by a rule. The rule gets the formula and the name of its sheet;
 *  formulas that it leaves as they are make no change. */
export function rewrittenFormulas(
  workbook: Workbook,
  rule: (formula: string, ownSheet: string) => string,
): readonly Change[] {
  const changes: Change[] = [];
  for (const sheet of workbook.sheets) {
    for (const { address, cell } of cellsOf(sheet)) {
      if (!isFormula(cell.content)) continue;
      const formula = rule(cell.content.formula, sheet.name);
      if (formula === cell.content.formula) continue;
      const after = { ...cell, content: { formula } };
      changes.push({ type: 'cell', sheet: sheet.id, address, before: cell, after });
    }
  }
  return changes;
}
