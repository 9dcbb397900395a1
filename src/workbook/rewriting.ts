import { cellsOf } from './cells.ts';
import type { Change } from './difference.ts';
import { isFormula, type Workbook } from './document.ts';

/** The changes that rewrite every formula of a workbook by a rule. The rule gets the formula and the name of its sheet;
 *  formulas that it leaves as they are make no change. */
export function rewrittenFormulas(
  workbook: Workbook,
  rule: (formula: string, ownSheet: string) => string,
): readonly Change[] {
  return workbook.sheets.flatMap((sheet) =>
    [...cellsOf(sheet)].flatMap(({ address, cell }): readonly Change[] => {
      if (!isFormula(cell.content)) return [];
      const formula = rule(cell.content.formula, sheet.name);
      if (formula === cell.content.formula) return [];
      return [
        { type: 'cell', sheet: sheet.id, address, before: cell, after: { ...cell, content: { formula } } },
      ];
    }),
  );
}
