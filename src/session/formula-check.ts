import { tradeFunctions } from '../catalogue/list.ts';
import { builtins } from '../formula/builtins.ts';
import { checkFormula } from '../formula/check.ts';
import { wordFormulaFault } from '../formula/wording.ts';
import type { Difference } from '../workbook/difference.ts';
import { isFormula, type Workbook } from '../workbook/document.ts';

const functionNames = [...tradeFunctions, ...builtins].map((one) => one.name);

/** Why a formula cannot stand in this workbook, in a sentence; null when it can. */
export function formulaRefusal(workbook: Workbook, formula: string): string | null {
  const outcome = checkFormula(formula, {
    functions: functionNames,
    names: Object.keys(workbook.names),
    sheets: workbook.sheets.map((sheet) => sheet.name),
  });
  return outcome.ok ? null : wordFormulaFault(outcome.fault, formula);
}

/** The same for every formula that a difference brings in. */
export function refuseFormula(workbook: Workbook, difference: Difference): string | null {
  for (const change of difference) {
    if (change.type !== 'cell' || !change.after || !isFormula(change.after.content)) continue;
    const refusal = formulaRefusal(workbook, change.after.content.formula);
    if (refusal !== null) return refusal;
  }
  return null;
}
